"""Packs whose maker wanted them refused, and that are taken in without harm: why."""

from __future__ import annotations

from enum import Enum


class Reason(Enum):
    """What becomes of the harm."""

    LEFT_OUT = "what it is about comes beside the unit: it is left out, which is said"
    WRITTEN_ANEW = "the drawing is written anew of what is known, so nothing of it is left"


HARMLESS: dict[str, Reason] = {}
