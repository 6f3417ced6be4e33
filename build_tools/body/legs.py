"""A leg from the hip to a foot that is where it is: the knee follows, the heel lifts if it must."""

from __future__ import annotations

import math
from dataclasses import dataclass

from build_tools.body.pose import Foot
from build_tools.body.segments import LENGTHS, RANGES
from build_tools.body.space import UP, Frame, Vector

_BALL = 0.75
"""How far along the foot, from the heel, it bends when the heel lifts."""
_MOST_HEEL, _HALVINGS = 88.0, 7
_HANGINGS, _CLEAR = 12, 0.25
"""A foot off the floor hangs, unless its lowest point would be below this part of its height."""
_REACH = 0.999
"""Of the straight leg: a leg is never pulled quite straight."""


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


@dataclass(frozen=True, slots=True)
class _Placed:
    """A foot on or off the floor, its heel lifted by so many degrees."""

    ankle: Vector
    heel: Vector
    toe: Vector
    lifted: float
    """The heel, as an angle of the foot to the floor, in radians."""


def leg(hip: Vector, pelvis: Frame, facing: Frame, centre: Vector, foot: Foot, side: int) -> Leg:
    """The leg from `hip` to `foot`. `side` is 1 for the right; `centre` is the spot on the floor
    that feet are measured from, `facing` the way the whole body faces.

    A heel lifts as far as it must so that the ankle bends no further than ankles do.
    """
    most = RANGES["ankle"][1] - 0.5

    def with_heel(lifted: float) -> Leg:
        return _leg(hip, pelvis, facing, _placed(centre, facing, foot, side, lifted), foot, side)

    found = with_heel(foot.heel)
    if found.ankle_told <= most:
        return found
    low, high = foot.heel, _MOST_HEEL
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if with_heel(middle).ankle_told > most else (low, middle)
    return with_heel(high)


def _placed(centre: Vector, facing: Frame, foot: Foot, side: int, lifted: float) -> _Placed:
    """Where heel, ankle and toes are; a lifted heel turns the foot about its ball."""
    ahead = _ahead(facing, foot, side)
    below = centre.plus(facing.right, side * foot.across).plus(facing.forwards, foot.along)
    ground = Vector(below.x, foot.up, below.z)
    long, ball = LENGTHS.foot, LENGTHS.foot * _BALL
    turn = math.radians(lifted)
    pivot = ground.plus(ahead, ball - LENGTHS.heel)
    back, up = math.cos(turn), math.sin(turn)
    heel = pivot.plus(ahead, -ball * back).plus(UP, ball * up)
    ankle = (
        pivot.plus(ahead, -(ball - LENGTHS.heel) * back)
        .plus(UP, (ball - LENGTHS.heel) * up)
        .plus(UP, LENGTHS.ankle * back)
        .plus(ahead, LENGTHS.ankle * up)
    )
    toe = pivot.plus(ahead, long - ball)
    return _Placed(ankle, heel, toe, turn)


def _ahead(facing: Frame, foot: Foot, side: int) -> Vector:
    return facing.bent(turned=side * foot.out).forwards


def _leg(hip: Vector, pelvis: Frame, facing: Frame, placed: _Placed, foot: Foot, side: int) -> Leg:
    way = placed.ankle.minus(hip)
    most = (LENGTHS.thigh + LENGTHS.shank) * _REACH
    far, short = min(way.length, most), max(0.0, way.length - most)
    ankle = hip.plus(way.unit, far)
    moved = ankle.minus(placed.ankle)
    heel, toe = placed.heel.plus(moved), placed.toe.plus(moved)
    least = _closest()
    far = max(far, least)
    along = (LENGTHS.thigh**2 - LENGTHS.shank**2 + far**2) / (2 * far)
    off = math.sqrt(max(LENGTHS.thigh**2 - along**2, 0.0))
    pole = _ahead(facing, foot, side).plus(pelvis.forwards, 0.3).plus(UP, 0.15)
    across = pole.minus(way.unit.times(pole.dot(way.unit))).unit
    knee = hip.plus(way.unit, along).plus(across, off)
    thigh, shank = knee.minus(hip).unit, ankle.minus(knee).unit
    local = pelvis.into(thigh)
    abduction = math.degrees(math.asin(min(1.0, max(-1.0, side * local.x))))
    flexion = math.degrees(math.atan2(local.z, -local.y))
    bend = math.degrees(math.acos(min(1.0, max(-1.0, thigh.dot(shank)))))
    sole = _sole(placed, _ahead(facing, foot, side))
    up_shank = math.degrees(math.asin(min(1.0, max(-1.0, -sole.dot(shank)))))
    told = up_shank
    if foot.up > 0:
        ahead = _ahead(facing, foot, side)
        up_shank, heel, toe = _hung(ankle, shank, ahead, foot)
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
