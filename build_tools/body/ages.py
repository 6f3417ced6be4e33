"""How big children of an age are, how far they step and how fast they go, from published tables.

Metres, seconds, years. The numbers and their sources stand in `ages.json`; between two ages of a
table they are taken in proportion. They are middling children: half of a class is smaller.
"""

from __future__ import annotations

import json
import math
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

YOUNGEST, OLDEST = 4.0, 12.0
"""Years; a younger or older child is reckoned as one of these."""
_GRAVITY = 9.81
_HIP_ABOVE_SEAT = 0.04
"""The hip joint lies above the seat of the body by this part of height (Winter 2009: 0.53 of an
adult's height, and about 0.48 is leg below the seat; from memory, less for a child)."""


@dataclass(frozen=True, slots=True)
class AtAge:
    """A middling child of an age. Lengths in metres, speeds in metres a second."""

    age: float
    height: float
    leg: float
    """Hip joint to floor."""
    arm: float
    """Shoulder to the tip of the thumb."""
    reach: float
    """Middle of the body to the fingertips, the arm out to the side: half of the span of both
    arms, which is about the height."""
    step: float
    """One walking step, heel to other heel."""
    walking: float
    slow_walking: float
    fast_walking: float
    skipping: float
    """A skip or a gallop, and side-steps done fast."""
    running: float
    """A steady run, not a race."""
    wheeling: float
    """A child who wheels, in a dance with children who walk."""

    @property
    def small_step(self) -> float:
        """A step asked to be small."""
        return self.step * float(tables()["steps"]["small"])

    @property
    def big_step(self) -> float:
        """A step asked to be big."""
        return self.step * float(tables()["steps"]["big"])

    @property
    def side_step(self) -> float:
        """A step to the side, the other foot closing."""
        return self.step * float(tables()["steps"]["sideways"])

    @property
    def back_step(self) -> float:
        """A step backwards."""
        return self.step * float(tables()["steps"]["backwards"])


@cache
def at_age(age: float) -> AtAge:
    """A middling child of `age` years, from 4 to 12; outside of these the nearest of them."""
    known = min(max(float(age), YOUNGEST), OLDEST)
    table = tables()
    height = (
        _between(table["height"], known, "girls") + _between(table["height"], known, "boys")
    ) / 200
    leg = height * (1 - _between(table["sitting_height"], known) + _HIP_ABOVE_SEAT)
    walking = _between(table["walking_speed"], known)
    froude, pace = table["froude"], table["slow_and_fast"]
    return AtAge(
        age=known,
        height=height,
        leg=leg,
        arm=height * (table["arm"]["upper"] + table["arm"]["lower"]),
        reach=height / 2,
        step=walking * _between(table["stride_time"], known) / 2,
        walking=walking,
        slow_walking=walking * pace["slow"],
        fast_walking=walking * pace["fast"],
        skipping=math.sqrt(froude["skipping"] * _GRAVITY * leg),
        running=math.sqrt(froude["running"] * _GRAVITY * leg),
        wheeling=walking * table["wheeling"]["speed"],
    )


@cache
def tables() -> dict[str, Any]:
    """The published numbers, each with what it says and where it is from."""
    found: dict[str, Any] = json.loads(
        Path(__file__).with_name("ages.json").read_text(encoding="utf-8")
    )
    return found


def _between(table: dict[str, Any], age: float, row: str = "values") -> float:
    """The value of `row` at `age`, in proportion between the ages of the table."""
    ages, values = table["ages"], table[row]
    for young, old, first, last in zip(ages, ages[1:], values, values[1:], strict=False):
        if age <= old:
            return float(first + (last - first) * max(age - young, 0) / (old - young))
    return float(values[-1])
