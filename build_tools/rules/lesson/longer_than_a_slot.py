"""A lesson fits into a slot of the timetable, with time to change before and after.

Slots in the hall last 30 to 60 minutes, and changing takes five to ten of them. A longer lesson
has to be cut by each teacher alone, and the end is what goes.

Bad:
    minutes: 75
Good:
    minutes: 45
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"

_LONGEST = 60


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that is longer than the longest usual slot."""
    for lesson in unit.lessons:
        if lesson.minutes > _LONGEST:
            yield Finding(
                lesson.file,
                ("minutes",),
                f"the lesson has {lesson.minutes} minutes in the hall, "
                f"{lesson.minutes - _LONGEST} more than the longest usual slot of {_LONGEST}, and "
                "changing comes on top",
                "make two lessons of it, or take steps out until 50 are left",
            )
