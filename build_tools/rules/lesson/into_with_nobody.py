"""A step in which each pupil dances alone has no words for getting into groups.

`into` is what a teacher says to get pupils into the groups of the step. Beside `grouping: alone`
one of the two is left from an earlier plan.

Bad:
    grouping: alone, into: Turn to the nearest person.
Good:
    grouping: pairs, into: Turn to the nearest person.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step of pupils alone that says how to get into groups."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.grouping == "alone" and step.into:
                yield Finding(
                    lesson.file,
                    ("steps", n, "grouping"),
                    f"`into` of step {n + 1} says how to get into groups, but each pupil is alone "
                    "in it: so it is written, or no `grouping` is and they stay as they were",
                    "write the `grouping` that `into` is for, or take `into` out",
                )
