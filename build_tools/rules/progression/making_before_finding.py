"""Pupils explore before they fix a motif.

A motif that is fixed before anyone has tried things out is the first idea that came, or the
teacher's. Finding may also be trying out inside the step itself, dancing what was learned before,
improvising, or altering what the teacher brings. A step with `phase: explore` that tells every move
and asks for nothing to be tried is no finding.

Bad:
    lesson 1, step 2: phase: warm-up, task: Walk and stop.
    step 3: phase: make, makes: [gust], task: Set it on eight counts.
Good:
    lesson 1, step 2: phase: explore, task: Find three ways to blow across the hall.
    step 3: phase: make, makes: [gust], task: Set it on eight counts.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.finding_out import SEARCHES, TELLS_EXACTLY
from build_tools.views.dance.when_made import comes_ready, steps_in_order

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Smith-Autard, Dance Composition: movement is explored and improvised first, then chosen and "
    "set as a motif"
)
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif of the pupils' made with no finding before it."""
    dance = unit.dance
    for place, lesson, step in steps_in_order(unit):
        if _finds(dance, step):
            return  # from here on, pupils have found something to make motifs from
        for n, name in enumerate(step.makes):
            if name in dance.motifs and dance.motifs[name].made_by == "pupils":
                yield Finding(
                    lesson.file,
                    ("steps", place.step, "makes", n),
                    f"pupils make `{name}` in {place}, and in no step before it do they explore",
                    f"put a step with `phase: explore` before it, in which pupils try out moves "
                    f"for `{name}`",
                )


def _finds(dance: Dance, step: Step) -> bool:
    if any(name in dance.motifs and comes_ready(dance, name) for name in step.dances):
        return True
    if any(
        name in dance.sections and dance.sections[name].kind == "improvised" for name in step.dances
    ):
        return True
    told = (step.say, step.task, *(question.question for question in step.ask))
    if step.phase == "warm-up":
        return False
    if SEARCHES.in_any(told) or step.phase == "recall":
        return True
    return step.phase == "explore" and not TELLS_EXACTLY.in_any(told)
