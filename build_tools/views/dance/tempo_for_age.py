"""Which tempo pupils of an age can keep in time with.

Source: Drake, Jones and Baruch 2000, Cognition 77: the range of tempo a child can keep widens with
age, mainly towards slower beats; the figures are common practice.
"""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit

_YOUNG = 5


@dataclass(frozen=True, slots=True)
class TempoRange:
    """From `slowest` to `fastest`, in beats a minute, for the youngest pupils, aged `age`."""

    slowest: int
    fastest: int
    age: int


def tempo_for_age(unit: Unit) -> TempoRange | None:
    """What the youngest pupils of `unit` can keep; None where no age is known."""
    span = ages(unit.years)
    if span is None:
        return None
    slowest, fastest = (100, 160) if span[0] <= _YOUNG else (60, 180)
    return TempoRange(slowest, fastest, span[0])
