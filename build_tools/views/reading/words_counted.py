"""How many words a text has, counted fast: most texts are short and are only glanced at."""

from __future__ import annotations

import string
from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit

_JOINS = "'-"
_GAPS = str.maketrans({mark: " " for mark in f"{string.punctuation}–—…“”" if mark not in _JOINS})


def longer_than(limit: int, text: str | None) -> int:
    """The number of words in `text` if it has more than `limit`; otherwise 0.

    A word is what stands between spaces; a dash by itself is none.
    """
    if text is None or text.count(" ") + text.count("\n") < limit:
        return 0
    number = sum(any(letter.isalnum() for letter in word) for word in text.split())
    return number if number > limit else 0


def words_at_most(text: str) -> int:
    """The number of words in `text`, or a little more: a dash by itself is counted."""
    return len(text.translate(_GAPS).split())


def steps_of(unit: Unit) -> Iterator[tuple[Lesson, int, Step]]:
    """Every step with its lesson and its index from 0."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            yield lesson, n, step
