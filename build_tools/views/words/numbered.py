"""The lessons, steps and parts that a text names by number or letter."""

from __future__ import annotations

import re
from collections.abc import Container, Iterator
from functools import lru_cache

from build_tools.movement.letters import straight, unmarked

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
_L = r"[A-Z]\b(?:['’′](?!\w))?"
"""A letter; A' is a section come back changed, A's is something of A."""
_PART = re.compile(
    rf"\b(?:[Pp]arts?|[Ss]ections?)\s+({_L}(?:(?:,\s*|\s+(?:and|to)\s+|,\s*and\s+){_L})*)"
)
_LETTER = re.compile(_L)


@lru_cache(maxsize=1024)
def lessons_said(text: str) -> tuple[int, ...]:
    """The numbers of the lessons that a text names, in order: lesson 3, lessons two and four."""
    return tuple(_numbers(_LESSON, text))


def steps_said(text: str) -> tuple[int, ...]:
    """The numbers of the steps that a text names, in order."""
    return tuple(_numbers(_STEP, text))


def letters_said(text: str, known: Container[str]) -> tuple[str, ...]:
    """The letters of `known` parts that a text names: part A, parts A and B, part A'.

    Where there is no A', the mark after an A closes a quotation.
    """
    said = [
        straight(letter) for row in _PART.finditer(text) for letter in _LETTER.findall(row.group(1))
    ]
    found = (letter if letter in known else unmarked(letter) for letter in said)
    return tuple(letter for letter in found if letter in known)


def _numbers(pattern: re.Pattern[str], text: str) -> Iterator[int]:
    for row in pattern.finditer(text):
        for word in _ONE.findall(row.group(1)):
            # Patterns that look past the size of letters take an i without its dot for an i.
            said = int(word) if word.isdecimal() else _NUMBERS.get(word.casefold())
            if said is not None:
                yield said
