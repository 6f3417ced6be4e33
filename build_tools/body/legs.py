"""A leg from the hip to a foot that is where it is: the knee follows, the heel lifts if it must."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

from build_tools.body.pose import Foot
from build_tools.body.segments import LENGTHS, RANGES
from build_tools.body.space import UP, Frame, Vector

_BALL = 0.75
"""How far along the foot, from the heel, it bends when the heel lifts."""
_MOST_HEEL, _HALVINGS = 88.0, 7
_HANGINGS, _CLEAR = 12, 0.25
"""A foot off the floor hangs, unless its lowest point would be below this part of its height."""
_STRAIGHT = (LENGTHS.thigh + LENGTHS.shank) * 0.999
"""A leg is never pulled quite straight."""
_TO_BALL = LENGTHS.foot * _BALL


@dataclass(frozen=True, slots=True)
class Leg:
    """One leg: its joints, and the angles of hip, knee and ankle."""

    hip: Vector
    knee: Vector
    ankle: Vector
    heel: Vector
    toe: Vector
    flexion: float
    abduction: float
    knee_bend: float
    ankle_bend: float
    """Toes drawn up; pointed toes are less than 0."""
    ankle_told: float
    """The same as the floor would have it, for a foot that is off it too."""
    short: float
    """By how much the leg is too short for where the foot is to be; 0 where it reaches."""


class _Placed(NamedTuple):
    """A foot on or off the floor, its heel lifted by so many degrees."""

    ankle: Vector
    heel: Vector
    toe: Vector
    lifted: float
    """The heel, as an angle of the foot to the floor, in radians."""


class _Bent(NamedTuple):
    """A leg from the hip to a placed foot, as far as it reaches."""

    placed: _Placed
    ankle: Vector
    knee: Vector
    thigh: Vector
    shank: Vector
    told: float
    short: float


def leg(hip: Vector, pelvis: Frame, facing: Frame, centre: Vector, foot: Foot, side: int) -> Leg:
    """The leg from `hip` to `foot`. `side` is 1 for the right; `centre` is the spot on the floor
    that feet are measured from, `facing` the way the whole body faces.

    A heel lifts as far as it must so that the ankle bends no further than ankles do.
    """
    most = RANGES["ankle"][1] + foot.pressed - 0.5
    ahead = facing.bent(turned=side * foot.out).forwards
    below = centre.plus(facing.right, side * foot.across).plus(facing.forwards, foot.along)
    pivot = Vector(below.x, foot.up, below.z).plus(ahead, _TO_BALL - LENGTHS.heel)

    def with_heel(lifted: float) -> _Bent:
        return _bent(hip, pelvis, ahead, _placed(pivot, ahead, lifted))

    found = with_heel(foot.heel)
    if found.told > most:
        low, high = foot.heel, _MOST_HEEL
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            low, high = (middle, high) if with_heel(middle).told > most else (low, middle)
        found = with_heel(high)
    return _measured(hip, pelvis, ahead, found, foot, side)


def _placed(pivot: Vector, ahead: Vector, lifted: float) -> _Placed:
    """Where heel, ankle and toes are; a lifted heel turns the foot about its ball, the pivot."""
    turn = math.radians(lifted)
    back, up = math.cos(turn), math.sin(turn)
    before = _TO_BALL - LENGTHS.heel
    heel = pivot.plus(ahead, -_TO_BALL * back).plus(UP, _TO_BALL * up)
    ankle = (
        pivot.plus(ahead, -before * back)
        .plus(UP, before * up)
        .plus(UP, LENGTHS.ankle * back)
        .plus(ahead, LENGTHS.ankle * up)
    )
    return _Placed(ankle, heel, pivot.plus(ahead, LENGTHS.foot - _TO_BALL), turn)


def _bent(hip: Vector, pelvis: Frame, ahead: Vector, placed: _Placed) -> _Bent:
    """The knee between the hip and a placed foot, and how far the floor bends the ankle."""
    way = placed.ankle.minus(hip)
    length, towards = way.length, way.unit
    far, short = min(length, _STRAIGHT), max(0.0, length - _STRAIGHT)
    ankle = hip.plus(towards, far)
    far = max(far, _CLOSEST)
    along = (LENGTHS.thigh**2 - LENGTHS.shank**2 + far**2) / (2 * far)
    off = math.sqrt(max(LENGTHS.thigh**2 - along**2, 0.0))
    pole = ahead.plus(pelvis.forwards, 0.3).plus(UP, 0.15)
    across = pole.minus(towards.times(pole.dot(towards))).unit
    knee = hip.plus(towards, along).plus(across, off)
    shank = ankle.minus(knee).unit
    sole = _sole(placed, ahead)
    told = math.degrees(math.asin(min(1.0, max(-1.0, -sole.dot(shank)))))
    return _Bent(placed, ankle, knee, knee.minus(hip).unit, shank, told, short)


def _measured(hip: Vector, pelvis: Frame, ahead: Vector, bent: _Bent, foot: Foot, side: int) -> Leg:
    """The leg with its angles; a foot off the floor hangs."""
    placed, ankle, knee, thigh, shank, told, short = bent
    local = pelvis.into(thigh)
    abduction = math.degrees(math.asin(min(1.0, max(-1.0, side * local.x))))
    flexion = math.degrees(math.atan2(local.z, -local.y))
    bend = math.degrees(math.acos(min(1.0, max(-1.0, thigh.dot(shank)))))
    if foot.up > 0:
        up_shank, heel, toe = _hung(ankle, shank, ahead, foot)
    else:
        moved = ankle.minus(placed.ankle)
        up_shank, heel, toe = told, placed.heel.plus(moved), placed.toe.plus(moved)
    return Leg(hip, knee, ankle, heel, toe, flexion, abduction, bend, up_shank, told, short)


def _hung(ankle: Vector, shank: Vector, ahead: Vector, foot: Foot) -> tuple[float, Vector, Vector]:
    """The ankle's bend, heel and toes of a foot off the floor: pointed as it hangs, but no more
    than it has room for above the floor."""
    hanging = _clamped(-(8 + 0.7 * foot.heel))
    best = (-1.0, hanging, ankle, ankle)
    for n in range(_HANGINGS + 1):
        bend = hanging + (_clamped(90) - hanging) * n / _HANGINGS
        heel, toe = _foot_at(ankle, shank, ahead, bend)
        room = min(heel.y, toe.y)
        if room >= foot.up * _CLEAR:
            return bend, heel, toe
        best = max(best, (room, bend, heel, toe))
    return best[1:]


def _clamped(bend: float) -> float:
    least, most = RANGES["ankle"]
    return min(most - 1, max(least + 1, bend))


def _foot_at(ankle: Vector, shank: Vector, ahead: Vector, bend: float) -> tuple[Vector, Vector]:
    """Heel and toes of a foot off the floor, from its ankle and how the ankle bends."""
    square = ahead.minus(shank.times(ahead.dot(shank))).unit
    angle = math.radians(bend)
    way = square.times(math.cos(angle)).plus(shank, -math.sin(angle))
    under = square.times(math.sin(angle)).plus(shank, math.cos(angle))
    sole = ankle.plus(under, LENGTHS.ankle)
    return sole.plus(way, -LENGTHS.heel), sole.plus(way, LENGTHS.foot - LENGTHS.heel)


def _sole(placed: _Placed, ahead: Vector) -> Vector:
    """Which way the stiff part of the foot points, from the heel to its ball."""
    return ahead.times(math.cos(placed.lifted)).plus(UP, -math.sin(placed.lifted))


def _closest() -> float:
    """How near the ankle comes to the hip with the knee bent as far as it goes."""
    fold = math.radians(180 - RANGES["knee"][1] + 1)
    return math.sqrt(
        LENGTHS.thigh**2 + LENGTHS.shank**2 - 2 * LENGTHS.thigh * LENGTHS.shank * math.cos(fold)
    )


_CLOSEST = _closest()
