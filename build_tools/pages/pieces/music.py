"""The recording that travels with a unit, as a page plays it; its credit stands with the unit."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.unit import Unit
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
