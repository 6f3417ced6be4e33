"""What is asked of a lesson by several pages and rules, worked out once for each language."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.speaking import kept_by_language

_Answer = TypeVar("_Answer")
_KEPT = 16
"""Lessons whose answer is kept: more than a unit has."""


def once_a_lesson(
    worked_out: Callable[[Unit, Lesson], _Answer],
) -> Callable[[Unit, Lesson], _Answer]:
    """The same answers, those of a unit's own lessons kept for a while.

    A lesson is known by its unit and its place there, since it is too large to be compared; one
    that is not in its unit, as a changed one, is worked out each time.
    """

    @kept_by_language(maxsize=_KEPT)
    def kept(unit: Unit, index: int) -> _Answer:
        return worked_out(unit, unit.lessons[index])

    @wraps(worked_out)
    def asked(unit: Unit, lesson: Lesson) -> _Answer:
        index = lesson.number - 1
        if index < len(unit.lessons) and unit.lessons[index] is lesson:
            return kept(unit, index)
        return worked_out(unit, lesson)

    return asked
