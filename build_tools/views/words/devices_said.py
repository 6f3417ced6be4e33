"""The devices that pupils are taught by name, and where a text calls one by its name."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS
from build_tools.movement.devices import DEVICES
from build_tools.views.dance.when_made import StepPlace, steps_in_order

_EVERYDAY = frozenset({"mirror", "repetition", "combination", "leaving out"})
"""Names that pupils know without being taught them."""
_NAMES = frozenset({*DEVICES, *CANONS, "question and answer"}) - _EVERYDAY


@lru_cache(maxsize=4)
def first_taught(unit: Unit) -> Mapping[str, StepPlace]:
    """Each device with a name of its own that some step teaches, and the first that does."""
    found: dict[str, StepPlace] = {}
    for place, _, step in steps_in_order(unit):
        for word in step.teaches:
            if word.casefold() in _NAMES:
                found.setdefault(word.casefold(), place)
    return found


def says(device: str, text: str) -> bool:
    """Whether a text calls the device by its name."""
    low = text.lower()
    return device in low and re.search(rf"\b{re.escape(device)}s?\b", low) is not None
