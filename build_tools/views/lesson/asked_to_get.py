"""What a line of a lesson's list "What to get" asks for: things to print, or a sound."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """What can be printed or heard; the value is its place on the page to print."""

    PICTURES = "at-pictures"
    TEXTS = "at-texts"
    LETTERS = "at-letters"
    NUMBERS = "at-numbers"
    SIGNS = "at-signs"
    WORDS = "at-cards"
    DEVICES = "at-devices"
    SOUND = "sound"


_NAMED = (
    (Kind.LETTERS, re.compile(r"\bletter cards?\b|\bletters\b", re.IGNORECASE)),
    (Kind.NUMBERS, re.compile(r"\bnumber cards?\b|\bnumbers\b", re.IGNORECASE)),
    (Kind.SIGNS, re.compile(r"\bsigns?\b", re.IGNORECASE)),
    (Kind.PICTURES, re.compile(r"\b(?:drawings?|pictures?|photographs?|photos?)\b", re.IGNORECASE)),
    (Kind.TEXTS, re.compile(r"\b(?:poem|story|rhyme|rhythm|words of)\b", re.IGNORECASE)),
    (Kind.DEVICES, re.compile(r"\bdevice cards?\b", re.IGNORECASE)),
    (Kind.WORDS, re.compile(r"\bcards?\b", re.IGNORECASE)),
    (
        Kind.SOUND,
        re.compile(r"\b(?:drum|tambourine|shaker|claves|woodblock|bells?)\b", re.IGNORECASE),
    ),
)
_EACH = re.compile(r"\bfor (?:each|every) (\w+)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Asked:
    """One line of the list: what kinds of thing it asks for, which by name, and for whom."""

    kinds: tuple[Kind, ...]
    """In the order in which the line names them."""
    names: tuple[str, ...]
    """What stands after its colon: words, letters or numbers."""
    each: str | None
    """The group of which each gets a set: row; None where one does for the class."""


def asked(line: str) -> Asked:
    """What a line of the list asks for."""
    head, _, tail = line.partition(":")
    places = [(found.start(), kind) for kind, word in _NAMED if (found := word.search(head))]
    named = [kind for _, kind in sorted(places)]
    own_cards = {Kind.LETTERS, Kind.NUMBERS, Kind.DEVICES} & set(named)
    if own_cards and not re.search(r"\bword cards?\b", head, re.IGNORECASE):
        named = [kind for kind in named if kind is not Kind.WORDS]
    each = _EACH.search(head)
    return Asked(tuple(named), _names(tail), each[1] if each else None)


def _names(tail: str) -> tuple[str, ...]:
    """a, b and c as three; "A again" is A once more."""
    parts = re.split(r",\s*(?:and\s+)?|\s+and\s+", tail.strip().rstrip("."))
    return tuple(part.removesuffix(" again").strip() for part in parts if part.strip())
