"""The lessons, steps and parts that a text names by number or letter."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

_NUMBERS = {
    word: n
    for n, word in enumerate(
        ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
         "twelve"), start=1
    )
}  # fmt: skip
_NUMBER = rf"(?:\d{{1,2}}|{'|'.join(_NUMBERS)})"
_ROW = rf"({_NUMBER}(?:(?:\s*,\s*|\s+(?:and|or|to)\s+|\s*,\s*(?:and|or)\s+){_NUMBER}\b)*)"
_LESSON = re.compile(rf"\blessons?\s+{_ROW}\b", re.IGNORECASE)
_STEP = re.compile(rf"\bsteps?\s+{_ROW}\b", re.IGNORECASE)
_ONE = re.compile(rf"\b{_NUMBER}\b", re.IGNORECASE)
_PART = re.compile(
    r"\b(?:[Pp]arts?|[Ss]ections?)\s+([A-Z](?:(?:,\s*|\s+(?:and|to)\s+|,\s*and\s+)[A-Z]\b)*)"
)
_LETTER = re.compile(r"\b[A-Z]\b")


@lru_cache(maxsize=1024)
def lessons_said(text: str) -> tuple[int, ...]:
    """The numbers of the lessons that a text names, in order: lesson 3, lessons two and four."""
    return tuple(_numbers(_LESSON, text))


def steps_said(text: str) -> tuple[int, ...]:
    """The numbers of the steps that a text names, in order."""
    return tuple(_numbers(_STEP, text))


def letters_said(text: str) -> tuple[str, ...]:
    """The letters of the parts that a text names: part A, parts A and B."""
    return tuple(letter for row in _PART.finditer(text) for letter in _LETTER.findall(row.group(1)))


def _numbers(pattern: re.Pattern[str], text: str) -> Iterator[int]:
    for row in pattern.finditer(text):
        for word in _ONE.findall(row.group(1)):
            # Patterns that look past the size of letters take an i without its dot for an i.
            said = int(word) if word.isdecimal() else _NUMBERS.get(word.casefold())
            if said is not None:
                yield said
