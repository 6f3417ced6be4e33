"""Names of forms in a text: rondo, theme and variations, a dance in two parts, A B A."""

from __future__ import annotations

import re

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

RONDO = Saying(
    """
    a|an|the|our|this|as|in|like|your|what rondo
    rondo form|dance|of|about|with|on|pattern|structure|shape|in
    """
)
TERNARY = Saying("ternary")
BINARY = Saying(
    """
    binary form|dance|structure|shape
    #2 part|section ~~2 =a and =b
    """
)
CUMULATIVE = Saying("cumulative form|dance|structure")
ARCH = Saying("arch|arched form|structure\narch ~1 dance")
PALINDROME = Saying("palindrome|palindromic")
VARIATIONS = Saying(
    """
    theme and|with|plus variation
    variations on
    variations of ~3 motif|theme|idea|phrase|first
    set|series|string|chain of variations
    theme ~~6 vary|varied|variations
    one idea|motif|theme ~~8 varied|variations|vary
    """
)
VERSE_AND_CHORUS = Saying(
    """
    verse and|with chorus
    chorus and|with verse
    chorus ~6 every|each|between|after ~1 verse
    verse ~6 every|each|between|after ~1 chorus
    refrain ~6 every|each|between|after verse|episode|section
    """
)
PARTS = Saying("#2..9 part|section dance|piece|form|structure|composition|ballet")
"""A three-part dance: the number stands first."""

_LETTER = re.compile(r"[A-H]['’′]?")
_STRAIGHT = str.maketrans("’′", "''")
_LETTERS = re.compile(r"\b[A-H]['’′]?(?:[\s,–-]*[A-H]['’′]?){2,}(?!\w)")


def parts_said(text: str) -> int | None:
    """How many parts a text says the dance has: a three-part dance."""
    said = PARTS.said(text)
    return read(said.read).words[said.words[0]].number if said else None


def letters_said(text: str) -> tuple[str, ...]:
    """The letters of a form as they are written: A B A, A B A'."""
    found = _LETTERS.search(text)
    if found is None:
        return ()
    before = text[: found.start()].lower().split()[-2:]
    if {"not", "no"} & set(before):
        return ()
    letters = tuple(one.translate(_STRAIGHT) for one in _LETTER.findall(found.group()))
    met = "".join(dict.fromkeys(letter[0] for letter in letters))
    return letters if "ABCDEFGH".startswith(met) else ()
