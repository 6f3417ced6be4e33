"""The first lesson tells of no lesson before it.

`story_so_far` and `never_did_last` help a teacher who was not there last week. Before lesson 1
there is no last week: the line belongs to another lesson.

Bad:
    lesson 1: story_so_far: The class made a wave and danced it slowly.
Good:
    lesson 1: classroom_first: [Look at the picture of the wave.]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of the first lesson about the one before."""
    for lesson in unit.lessons[:1]:
        for field in ("story_so_far", "never_did_last"):
            if getattr(lesson, field):
                yield Finding(
                    lesson.file,
                    (field,),
                    f"`{field}` tells of the lesson before, but lesson {lesson.number} is the "
                    "first",
                    "move the line to the lesson it was written for, or take it out",
                )
