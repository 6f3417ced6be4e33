"""How long a text says that sections are: "A is five eights; B and C are six eights each"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from build_tools.sentences.numbers import number_of

_LETTERS = r"(?:(?:parts?|sections?)\s+)?(?P<letters>(?-i:[A-H]'?(?:(?:,\s*|\s+and\s+)[A-H]'?)*))"
_SAID = re.compile(
    rf"\b{_LETTERS}\s+(?:is|are|has|have|lasts?|takes?|fills?)\s+(?:both\s+|each\s+)?"
    r"(?P<number>\d{1,3}|[a-z]+(?:-[a-z]+)?)"
    r"(?:\s+(?P<noun>counts|beats|eights|fours)\b(?P<each>\s+each)?|(?=\s*[.;,!]))",
    re.IGNORECASE,
)
_LETTER = re.compile(r"[A-H]'?")
_COUNTS = {"counts": 1, "beats": 1, "eights": 8, "fours": 4}
NOUNS = frozenset(_COUNTS)
"""Words of which every text holds one that tells how long a section is."""


@dataclass(frozen=True, slots=True)
class SectionLength:
    """The letters of sections, the counts that each has or all have together, and the words."""

    letters: tuple[str, ...]
    counts: Fraction
    each: bool
    said: str


def section_lengths_said(text: str) -> Iterator[SectionLength]:
    """Every length of a section that the text tells; "C is six" goes on in what was counted."""
    if not any(noun in text for noun in _COUNTS):
        return
    noun, end = "", 0
    for found in _SAID.finditer(text):
        if "." in text[end : found.start()]:
            noun = ""
        noun, end = (found["noun"] or noun).lower(), found.end()
        number = number_of(found["number"].lower())
        if number is None or not noun:
            continue
        letters = tuple(_LETTER.findall(found["letters"]))
        each = found["each"] is not None or len(letters) == 1
        yield SectionLength(letters, Fraction(number * _COUNTS[noun]), each, found.group())
