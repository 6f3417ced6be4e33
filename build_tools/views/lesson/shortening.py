"""Which steps can lose minutes once those that can wait are behind the class.

Each keeps its author's least; warm-up, looking and talking and cool-down keep all they have, as in
catching up.
"""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson

_KEEP_ALL = frozenset({"warm-up", "look and talk", "cool-down"})


@dataclass(frozen=True, slots=True)
class Shortened:
    """A step, by its number from 1, and the most minutes that it can lose."""

    step: int
    minutes: int


def can_be_shortened(lesson: Lesson) -> tuple[Shortened, ...]:
    """The steps behind the last one that can wait, in order, with what each can lose."""
    behind = max((n for n, step in enumerate(lesson.steps, start=1) if step.can_wait), default=0)
    return tuple(
        Shortened(number, step.minutes - step.least)
        for number, step in enumerate(lesson.steps, start=1)
        if number > behind and step.phase not in _KEEP_ALL and step.least < step.minutes
    )
