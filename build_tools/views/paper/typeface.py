"""How wide words are in the typeface that pages are printed in, Atkinson Hyperlegible Next.

`typeface.json` holds the width of each letter in thousandths of its size, as Chromium measured it
in regular and bold; a test measures it again.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from functools import lru_cache
from pathlib import Path
from typing import NamedTuple

ENCODING = "cp1252"
"""Every letter of this set is measured; another is taken to be as wide as a question mark."""


class Run(NamedTuple):
    """Words set in one way. `size` is in sizes of the words around; `gap` follows, in the same."""

    text: str
    bold: bool = False
    size: float = 1.0
    gap: float = 0.0


_STEPS = 175
"""Widths are kept in so many steps of a letter's size, so that each is one byte."""
_CLOSER = 0.995
"""Letters beside each other stand a little closer than by themselves, over a text."""


def _widths(kind: str) -> bytes:
    measured = json.loads(Path(__file__).with_name("typeface.json").read_text(encoding="utf-8"))
    letters = (bytes((code,)).decode(ENCODING, "replace") for code in range(256))
    known = measured[kind]
    return bytes(round(known.get(letter, known["?"]) * _STEPS / 1000) for letter in letters)


_WIDTHS = {False: _widths("regular"), True: _widths("bold")}
_ONE = _CLOSER / _STEPS
_SPACES = {bold: widths[ord(" ")] * _ONE for bold, widths in _WIDTHS.items()}


@lru_cache(maxsize=16384)
def words_wide(text: str, bold: bool) -> tuple[float, ...]:
    """How wide each word is, in sizes of its letters. A line may end after a hyphen."""
    parts = text.replace("-", "- ")
    # the same bytes, which is several times as fast where it can be done
    widths = parts.encode("ascii") if parts.isascii() else parts.encode(ENCODING, "replace")
    return tuple([_word_wide(word, bold) for word in widths.split(b" ") if word])


@lru_cache(maxsize=16384)
def _word_wide(word: bytes, bold: bool) -> float:
    return sum(word.translate(_WIDTHS[bold])) * _ONE


def width(text: str, bold: bool, points: float) -> float:
    """How wide a text is on one line, in points."""
    words = words_wide(text, bold)
    return points * (sum(words) + _SPACES[bold] * (len(words) - 1))


def lines(runs: Sequence[Run], wide: float, points: float, indent: float = 0.0) -> int:
    """How many lines of `wide` points the runs take in `points`, the first shorter by `indent`."""
    count, at, end = 1, 0.0, wide - indent
    for text, bold, size, gap in runs:
        letter = points * size
        space = _SPACES[bold] * letter
        for word in words_wide(text, bold):
            long = word * letter
            if at and at + long > end:
                count, at, end = count + 1, 0.0, wide
            at += long + space
        at += gap * letter
    return count
