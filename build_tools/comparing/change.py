"""One change between two editions, and how much it weighs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import IntEnum
from typing import Any


class Weight(IntEnum):
    """How much a change matters to a school that teaches the unit already."""

    RECORD = 0
    """Nothing of the unit itself: somebody read it. It calls for no other edition."""
    WORDING = 1
    """The same lesson, said better."""
    TEACHING = 2
    """A lesson runs differently."""
    DANCE = 3
    """Pupils make or dance something else, or the unit may be used otherwise."""


@dataclass(frozen=True, slots=True)
class Change:
    """One change: a sentence without its full stop, and its weight."""

    sentence: str
    weight: Weight


@dataclass(frozen=True, slots=True)
class WrittenUnit:
    """A unit as it is written: the fields of unit.md and of each lesson, and the notes below them.

    `lessons` holds each lesson's fields and notes by its number; `media` the digest of each
    picture by its file.
    """

    fields: Mapping[str, Any]
    notes: str
    lessons: Mapping[int, tuple[Mapping[str, Any], str]]
    media: Mapping[str, str]
