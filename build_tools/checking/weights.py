"""How heavy the pictures and recordings of units are where they are published, in words."""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.model.bank import UnitOutline
from build_tools.source.media_read import size_in_words

LIGHT = 100_000
"""Bytes of which nobody has to be told: drawings, and a small photograph."""


def weights_in_words(units: Iterable[UnitOutline]) -> str:
    """What all of them weigh, and which unit the most; empty where that is little."""
    heavy = [one for one in units if one.pictured or one.recorded]
    total = sum(map(_weight, heavy))
    if total < LIGHT:
        return ""
    most = max(heavy, key=_weight)
    parts = [
        f"{what} {size_in_words(size)}"
        for what, size in (("pictures", most.pictured), ("recordings", most.recorded))
        if size
    ]
    own = f"{most.slug}: {' and '.join(parts)}, as published"
    if len(heavy) == 1:
        return own
    return (
        f"pictures and recordings of {len(heavy)} units, as published: {size_in_words(total)}; "
        f"the most in {own.removesuffix(', as published')}"
    )


def _weight(unit: UnitOutline) -> int:
    return unit.pictured + unit.recorded
