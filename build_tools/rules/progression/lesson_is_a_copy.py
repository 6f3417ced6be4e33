"""Each lesson has steps of its own.

A lesson is often begun as a copy of another. Where nearly all of its steps are still those, the
unit has a lesson more than it teaches, and a class does the same morning twice.

Bad:
    lesson 1: steps: [{does: Walk, task: Walk., …}, {does: Fold, task: Fold., …},
        {does: Sink, task: Sink., …}]
    lesson 2: steps: [{does: Walk, task: Walk., …}, {does: Fold, task: Fold., …},
        {does: Sink, task: Sink., …}]
Good:
    lesson 1: steps: [{does: Walk, task: Walk., …}, {does: Fold, task: Fold., …},
        {does: Sink, task: Sink., …}]
    lesson 2: steps: [{does: Walk, task: Walk., …}, {does: Open, task: Open., …},
        {does: Drift, task: Drift., …}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.same_words import same_step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)

_FEWEST = 3
"""A warm-up and a cool-down may well come again, and the last lessons of a unit run the same dance:
only where more than two steps in three are another lesson's is it a copy."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson most of whose steps are those of an earlier one."""
    steps = [[same_step(step) for step in lesson.steps] for lesson in unit.lessons]
    for n, (lesson, own) in enumerate(zip(unit.lessons, steps, strict=True)):
        for earlier, theirs in zip(unit.lessons[:n], steps, strict=False):
            many = sum(step in theirs for step in own)
            if many >= _FEWEST and 3 * many > 2 * len(own):
                yield Finding(
                    lesson.file,
                    ("title",),
                    f"lesson {lesson.number} is a copy of lesson {earlier.number}: {many} of its "
                    f"{len(own)} steps are the same, word for word, and the unit has "
                    f"{len(unit.lessons)} lessons with it",
                    "write in it what is new, or move its file out of the unit",
                )
                break
