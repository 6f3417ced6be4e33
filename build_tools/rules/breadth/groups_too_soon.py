"""Pupils try a motif alone, in pairs or with the class before a group of four or more makes it.

In a group that has nothing yet, one pupil invents and the rest follow. Pupils who have each tried
the moves first bring something to agree on.

Bad:
    step 2: phase: warm-up, grouping: alone
    step 3: phase: make, grouping: fours, makes: [gust]
Good:
    step 2: phase: explore, grouping: alone
    step 3: phase: make, grouping: fours, makes: [gust]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.groups_first import smaller_first
from build_tools.views.dance.when_made import StepPlace, held, steps_in_order

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")

_BIG = ("fours", "fives", "sixes")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif of pupils first met by name in a group of four or more."""
    own = {name for name, motif in unit.dance.motifs.items() if motif.made_by == "pupils"}
    if not own or not any(s.grouping in _BIG for lesson in unit.lessons for s in lesson.steps):
        return
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.grouping not in _BIG or own.isdisjoint(step.makes):
                continue
            if _tried_before(lesson, index):
                continue
            met = _met_before(unit, StepPlace(lesson.number, index))
            for n, name in enumerate(step.makes):
                if name in own and name not in met:
                    yield Finding(
                        lesson.file,
                        ("steps", index, "makes", n),
                        f"step {index + 1} makes `{name}` in {step.grouping}, but no step "
                        f"before it (0 of {index}) lets pupils try it alone or in pairs",
                        "add an explore step with `grouping: alone` before it, or begin the task "
                        "with: first on your own",
                    )


def _met_before(unit: Unit, here: StepPlace) -> set[str]:
    """Every part of the dance that a step before `here` names, or that is within one."""
    found: set[str] = set()
    for place, _, step in steps_in_order(unit):
        if place < here:
            names = (*step.makes, *step.develops, *step.dances, *step.joins, *step.shows)
            found |= held(unit.dance, names)
    return found


def _tried_before(lesson: Lesson, index: int) -> bool:
    """Whether pupils explored in smaller groups before, or the task itself begins with each."""
    if any(s.phase == "explore" and s.grouping not in _BIG for s in lesson.steps[:index]):
        return True
    step = lesson.steps[index]
    return smaller_first(step.say) or smaller_first(step.task)
