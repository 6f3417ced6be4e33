"""A dancer's way as legs: each from a moment to a moment, along a line, with facing and level.

Moments run on one axis through the whole dance, a count (or a second, where nothing is counted) to
one. Between two legs a dancer stays. Metres and degrees as in `hall.py`.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from build_tools.paths.hall import Point

LOW, MIDDLE, HIGH = 0, 1, 2
LEVELS = {"low": LOW, "middle": MIDDLE, "high": HIGH}
BEND = 0.2
"""How far a curved way bulges, as a part of the way from end to end; common practice, no source."""
ZIG = 0.15
"""The same for each corner of a zigzag."""
ZIGS = 2
"""How often a zigzag goes out and back."""


class Leg(NamedTuple):
    """One piece of a dancer's way. `face` may go beyond 360 or below 0 where they turn."""

    start: float
    end: float
    x0: float
    y0: float
    x1: float
    y1: float
    face0: float
    face1: float
    level0: int
    level1: int
    bend: float = 0.0
    """How far the way bulges to the left, in metres, half way along."""
    zigzag: bool = False
    """Whether it bulges to one side and the other in turn, with corners."""


class Moment(NamedTuple):
    """A dancer at a moment."""

    x: float
    y: float
    facing: float
    level: float
    """0 low, 1 middle, 2 high, or on the way between."""


def during(leg: Leg, moment: float) -> Moment:
    """Where the dancer is at a moment of the leg; before and after it, at its ends."""
    part = _part(leg, moment)
    x, y = point_of(leg, part)
    return Moment(
        x,
        y,
        (leg.face0 + (leg.face1 - leg.face0) * part) % 360,
        leg.level0 + (leg.level1 - leg.level0) * part,
    )


def point_of(leg: Leg, part: float) -> Point:
    """The place at a part of the leg, from 0 to 1."""
    dx, dy = leg.x1 - leg.x0, leg.y1 - leg.y0
    x, y = leg.x0 + dx * part, leg.y0 + dy * part
    if not leg.bend:
        return (x, y)
    long = math.hypot(dx, dy)
    if not long:
        return (x, y)
    out = leg.bend * (_corners(part) if leg.zigzag else 4 * part * (1 - part)) / long
    return (x + dy * out, y - dx * out)


CORNERS = tuple((2 * n + 1) / (4 * ZIGS) for n in range(2 * ZIGS))
"""The parts of a zigzag at which its direction changes."""


def _corners(part: float) -> float:
    """Out to the left, over to the right and back, so often: from -1 to 1."""
    phase = part * ZIGS % 1
    if phase < 0.25:
        return 4 * phase
    return 2 - 4 * phase if phase < 0.75 else 4 * phase - 4


def _part(leg: Leg, moment: float) -> float:
    if moment >= leg.end:
        return 1.0
    if moment <= leg.start:
        return 0.0
    return (moment - leg.start) / (leg.end - leg.start)
