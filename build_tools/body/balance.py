"""Where the body's weight is, and whether it is over what stands on the floor."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from build_tools.body import seats
from build_tools.body.legs import Leg
from build_tools.body.segments import LENGTHS, MASSES
from build_tools.body.skeleton import SEATED, ArmJoints, Skeleton
from build_tools.body.space import Frame, Vector

ON_FLOOR = 0.012
"""What is no higher than this part of height is on the floor."""
_HAND_OR_KNEE = 0.065
"""Half a hand's or a knee's thickness, with some for the bend of the wrist."""
Spot = tuple[float, float]
"""A place on the floor: to the right and forwards."""


def centre_of_mass(weighed: Iterable[tuple[float, Vector]]) -> Vector:
    """The middle of some masses, each at its place."""
    whole, x, y, z = 0.0, 0.0, 0.0, 0.0
    for mass, place in weighed:
        whole += mass
        x, y, z = x + mass * place.x, y + mass * place.y, z + mass * place.z
    return Vector(x / whole, y / whole, z / whole)


def weighed(body: Skeleton) -> list[tuple[float, Vector]]:
    """Each segment's part of the mass, and its middle."""
    return [
        _part("head", body.crown, body.chin),
        _part("upper_trunk", body.neck, body.breast),
        _part("middle_trunk", body.breast, body.loin),
        _part("lower_trunk", body.loin, body.pelvis),
        *(one for arm in (body.right_arm, body.left_arm) for one in _arm(arm)),
        *(one for side in (body.right_leg, body.left_leg) for one in _leg(side)),
    ]


def body_centre(body: Skeleton) -> Vector:
    """The body's centre of mass."""
    return centre_of_mass(weighed(body))


def standing_on(body: Skeleton) -> tuple[Spot, ...]:
    """The spots of the floor that carry the body: of feet, of knees and hands where it is on
    them, of the legs or wheels of what it sits on."""
    if body.pose.base in SEATED:
        return _seat_spots(body.pose.base, body.facing)
    spots = [
        spot for side in (body.right_leg, body.left_leg) for spot in _foot_spots(side, body.facing)
    ]
    low = [body.right_leg.knee, body.left_leg.knee]
    low += [body.right_arm.wrist, body.left_arm.wrist, body.right_arm.tip, body.left_arm.tip]
    spots += [(one.x, one.z) for one in low if one.y <= _HAND_OR_KNEE]
    return tuple(spots)


def over_base(body: Skeleton) -> float:
    """How far inside the base the centre of mass is, in parts of height; outside it is less
    than 0, and -1 where nothing is on the floor."""
    centre = body_centre(body)
    return inside((centre.x, centre.z), standing_on(body))


def inside(spot: Spot, spots: Sequence[Spot]) -> float:
    """How far inside the smallest area around `spots` a spot is; outside it is less than 0."""
    ring = _ring(spots)
    if len(ring) < 3:
        return -1.0
    return min(
        _turn(a, b, spot) / math.dist(a, b) for a, b in zip(ring, [*ring[1:], ring[0]], strict=True)
    )


def base_middle(spots: Sequence[Spot]) -> Spot:
    """The middle of the area around some spots, by its corners."""
    ring = _ring(spots)
    return (sum(x for x, _ in ring) / len(ring), sum(z for _, z in ring) / len(ring))


def _ring(spots: Sequence[Spot]) -> list[Spot]:
    """The corners of the smallest area around spots, anticlockwise (Andrew 1979, from memory)."""
    ordered = sorted(set(spots))
    if len(ordered) < 3:
        return ordered

    def chain(points: Iterable[Spot]) -> list[Spot]:
        kept: list[Spot] = []
        for point in points:
            while len(kept) > 1 and _turn(kept[-2], kept[-1], point) <= 1e-12:
                kept.pop()
            kept.append(point)
        return kept[:-1]

    return chain(ordered) + chain(reversed(ordered))


def _turn(a: Spot, b: Spot, c: Spot) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _part(name: str, first: Vector, last: Vector) -> tuple[float, Vector]:
    mass = MASSES[name]
    return mass.part, first.plus(last.minus(first), mass.middle)


def _arm(arm: ArmJoints) -> list[tuple[float, Vector]]:
    return [
        _part("upper_arm", arm.shoulder, arm.elbow),
        _part("forearm", arm.elbow, arm.wrist),
        _part("hand", arm.wrist, arm.tip),
    ]


def _leg(leg: Leg) -> list[tuple[float, Vector]]:
    return [
        _part("thigh", leg.hip, leg.knee),
        _part("shank", leg.knee, leg.ankle),
        _part("foot", leg.heel, leg.toe),
    ]


def _foot_spots(leg: Leg, facing: Frame) -> list[Spot]:
    """The corners of what of a foot is on the floor: all of it, or from its ball on."""
    if leg.toe.y > ON_FLOOR:
        return []
    ball = leg.heel.plus(leg.toe.minus(leg.heel), 0.75)
    back = leg.heel if leg.heel.y <= ON_FLOOR else Vector(ball.x, 0, ball.z)
    half = LENGTHS.foot * 0.2
    side = facing.right
    return [
        (end.x + side.x * way * half, end.z + side.z * way * half)
        for end in (back, leg.toe)
        for way in (1, -1)
    ]


def _seat_spots(base: str, facing: Frame) -> tuple[Spot, ...]:
    wide = seats.TRACK if base == "wheels" else seats.SEAT_WIDTH
    front, behind = (
        (seats.CASTOR_AT, seats.AXLE)
        if base == "wheels"
        else (seats.SEAT_BEFORE, seats.SEAT_BEHIND)
    )
    return tuple(
        (
            facing.right.x * side * wide + facing.forwards.x * along,
            facing.right.z * side * wide + facing.forwards.z * along,
        )
        for along in (behind, front)
        for side in (-1, 1)
    )
