"""A motif, a development or a section is made in one step.

When something is made is said once. If two steps make it, one of them is left from an earlier
plan, and the teacher of the second tells pupils to make what they have. In a dance of one section
the section may grow from lesson to lesson.

Bad:
    lesson 1: makes: [gust]
    lesson 2: makes: [gust]
Good:
    lesson 1: makes: [gust]
    lesson 2: dances: [gust]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import StepPlace, steps_in_order

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "lesson-is-a-copy")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each name in `makes` or `develops` that an earlier step has there."""
    sections = unit.dance.sections
    first: dict[str, StepPlace] = {}
    for place, lesson, step in steps_in_order(unit):
        for field, names in (("makes", step.makes), ("develops", step.develops)):
            for n, name in enumerate(names):
                if name not in first:
                    first[name] = place
                    continue
                if name in sections and len(sections) == 1:
                    continue
                said = f"section {name}" if name in sections else f"`{name}`"
                yield Finding(
                    lesson.file,
                    ("steps", place.step, field, n),
                    f"{said} is made in {first[name]} already, and made again in {place}",
                    f"write `dances: [{name}]` in the step that only goes over it",
                )
