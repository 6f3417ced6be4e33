"""The lessons of a unit are about as long as each other.

A class has the hall in the same slot each week. One lesson much longer than the rest does not fit
it; one much shorter leaves the class standing. Where all others are as long to the minute, a lesson
that is a minute or two off is most often a slip in one of its steps.

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
_MEANT = 5
"""A lesson that is so many minutes longer or shorter, or twice as many, is meant so."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each of three lessons or more that is far from what is usual in them,
    and for the one that is a little off where all others are alike.
    """
    if len(unit.lessons) < _FEWEST:
        return
    minutes = [lesson.minutes for lesson in unit.lessons]
    usual = median_low(minutes)
    others_alike = minutes.count(usual) == len(minutes) - 1
    for lesson in unit.lessons:
        apart = lesson.minutes - usual
        adds_up = sum(step.minutes for step in lesson.steps) == lesson.minutes
        slip = others_alike and adds_up and apart % _MEANT != 0
        if abs(apart) <= _MOST_APART and not slip:
            continue
        yield Finding(
            lesson.file,
            ("minutes",),
            f"lesson {lesson.number} has {lesson.minutes} minutes, {abs(apart)} "
            f"{'more' if apart > 0 else 'fewer'} than the {usual} that are usual in this unit",
            _mend(apart, usual),
        )


def _mend(apart: int, usual: int) -> str:
    if abs(apart) <= _MOST_APART:
        return f"see whether the minutes of a step are a slip: the other lessons have {usual}"
    if apart > 0:
        return f"bring it nearer to {usual} minutes, or make two lessons of it"
    return f"bring it nearer to {usual} minutes"
