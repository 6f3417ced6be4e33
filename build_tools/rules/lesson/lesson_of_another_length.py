"""The lessons of a unit are about as long as each other.

A class has the hall in the same slot each week. One lesson much longer than the rest does not fit
it; one much shorter leaves the class standing.

Bad:
    lesson 1: minutes: 70
    lesson 2: minutes: 45
Good:
    lesson 1: minutes: 45
    lesson 2: minutes: 45
"""

from __future__ import annotations

from collections.abc import Iterator
from statistics import median_low

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"

_FEWEST = 3
_MOST_APART = 10


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each of three lessons or more that is far from what is usual in them."""
    if len(unit.lessons) < _FEWEST:
        return
    usual = median_low([lesson.minutes for lesson in unit.lessons])
    for lesson in unit.lessons:
        apart = lesson.minutes - usual
        if abs(apart) <= _MOST_APART:
            continue
        yield Finding(
            lesson.file,
            ("minutes",),
            f"lesson {lesson.number} has {lesson.minutes} minutes, {abs(apart)} "
            f"{'more' if apart > 0 else 'fewer'} than the {usual} that are usual in this unit",
            f"bring it nearer to {usual} minutes, or make two lessons of it"
            if apart > 0
            else f"bring it nearer to {usual} minutes",
        )
