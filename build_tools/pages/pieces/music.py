"""The recording that travels with a unit, as a page plays it; its credit stands with the unit."""

from __future__ import annotations

import json
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.views.lesson.played_in_step import Played, played_in_step
from build_tools.views.words.plain_words import length_in_words


@dataclass(frozen=True, slots=True)
class Music:
    """A recording to play."""

    src: str
    """Where it lies beside the page."""
    what: str
    """What it is called and how long it lasts."""


def music(unit: Unit) -> Music | None:
    """The recording of the unit's dance; None where none travels with it."""
    sound = unit.dance.sound
    item = next((item for item in unit.stimulus.items if item.file == sound.file), None)
    if sound.file is None or item is None:
        return None
    lasts = f", {length_in_words(sound.lasts)}" if sound.lasts else ""
    return Music(sound.file, f"{item.title}{lasts}")


def played_data(dance: Dance, step: Step) -> str | None:
    """What of it is played for a step, for `data-played`; None where nothing is.

    Each stretch is its start and its end in seconds, and what it starts with further on.
    """
    found = played_in_step(dance, step)
    return json.dumps([_told(one) for one in found], separators=(",", ":")) if found else None


def _told(one: Played) -> list[float | str]:
    end = () if one.end is None else (_seconds(one.end),)
    return [_seconds(one.start), *end, *([one.later] if one.later else [])]


def _seconds(value: Fraction) -> float:
    return int(value) if value.denominator == 1 else round(float(value), 2)
