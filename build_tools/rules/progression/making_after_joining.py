"""Everything is made before the whole is run for the first time, except the ending.

The first run shows pupils how the dance goes. A motif or section made after it has to be squeezed
in, and every join around it is learned again. In a dance of one section, the section may grow from
lesson to lesson.

Bad:
    lesson 3: dances: [whole]
    lesson 4: makes: [gust]
Good:
    lesson 3: makes: [gust]
    lesson 4: dances: [whole]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.words_about_dance import ENDING
from build_tools.views.dance.when_made import progress, steps_in_order
from build_tools.views.dance.whole_runs import whole_runs
from build_tools.views.lesson.told_in_step import told

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "new-in-last-lesson")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each thing first made or developed after the first named whole run."""
    first = next((run.place for run in whole_runs(unit) if run.named), None)
    if first is None or len(set(unit.dance.form)) < 2:
        return
    ways = progress(unit)
    for place, lesson, step in steps_in_order(unit):
        if place <= first:
            continue
        named = (("makes", step.makes), ("develops", step.develops))
        for field, n, name in [(f, n, name) for f, ns in named for n, name in enumerate(ns)]:
            if name not in ways or ways[name].made[:1] != (place,):
                continue
            if ENDING.in_any((*told(step), name.replace("-", " "))):
                continue
            said = f"section {name}" if name in unit.dance.sections else f"`{name}`"
            yield Finding(
                lesson.file,
                ("steps", place.step, field, n),
                f"{said} is first made in {place}, after the first run of the whole ({first})",
                f"move it before {first}, or run the whole only from {place} on",
            )
