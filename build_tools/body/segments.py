"""A child's body as segments: how long, how heavy, how far each joint moves.

Lengths are parts of standing height, masses parts of the body's mass, angles degrees. The numbers
and their sources stand in `segments.json`.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any


@dataclass(frozen=True, slots=True)
class Lengths:
    """Joint to joint; `hip` and `shoulder` are from the middle line to one side."""

    foot: float
    heel: float
    """From the ankle back."""
    ankle: float
    """Its height above the sole."""
    shank: float
    thigh: float
    hip: float
    pelvis: float
    waist: float
    chest: float
    shoulder: float
    neck: float
    head: float
    """From chin to crown."""
    upper_arm: float
    forearm: float
    hand: float

    @property
    def leg(self) -> float:
        """Hip joint to the sole of the foot, the leg straight."""
        return self.thigh + self.shank + self.ankle


@dataclass(frozen=True, slots=True)
class Mass:
    """`part` of the body's mass, its middle `middle` of the way along the segment."""

    part: float
    middle: float


@cache
def tables() -> dict[str, Any]:
    """The published numbers, each with what it says and where it is from."""
    found: dict[str, Any] = json.loads(
        Path(__file__).with_name("segments.json").read_text(encoding="utf-8")
    )
    return found


def _numbers(table: str) -> dict[str, Any]:
    return {key: value for key, value in tables()[table].items() if key not in ("says", "source")}


LENGTHS = Lengths(**_numbers("lengths"))
MASSES = {name: Mass(one["mass"], one["middle"]) for name, one in _numbers("masses").items()}
RANGES: dict[str, tuple[float, float]] = {
    name: (least, most) for name, (least, most) in _numbers("ranges").items()
}
