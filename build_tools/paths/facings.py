"""Which way each dancer of a class faces, from where they stand, in degrees."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import SIDES, Area, Point, ahead, bearing

_WAYS = tuple(45.0 * n for n in range(8))
_LOOKS = 4.0
"""Metres that a dancer looks ahead for room; common practice, no source."""
_ABREAST = 1.0
"""Metres to each side within which somebody ahead is in the way."""


def facings(
    facing: str, places: Sequence[Point], together: Together, centres: Sequence[Point], area: Area
) -> list[float]:
    """The way each dancer faces, by number; `centres` are what each has for a centre."""
    if facing in SIDES:
        return [SIDES[facing]] * len(places)
    if facing == "mixed":
        return [_most_room(n, places, area) for n in range(len(places))]
    if facing == "partner":
        partner = partners(together)
        return [
            bearing(place, places[partner[n]]) if partner[n] != n else 0.0
            for n, place in enumerate(places)
        ]
    turned = 180.0 if facing == "outwards" else 0.0
    return [
        (bearing(place, centre) + turned) % 360 if place != centre else turned
        for place, centre in zip(places, centres, strict=True)
    ]


def partners(together: Together) -> dict[int, int]:
    """Everybody's partner: places 1 and 2 of a group, 3 and 4 …; the odd one has place 1 or 2.

    Where all dance alone, neighbours are partners; one over has itself.
    """
    found: dict[int, int] = {}
    for group in together:
        for n, dancer in enumerate(group):
            other = n ^ 1
            found[dancer] = group[other] if other < len(group) else group[max(n - 1, 0)]
    if all(len(group) == 1 for group in together):
        many = len(together)
        found = {n: n ^ 1 if n ^ 1 < many else n for n in range(many)}
    return found


def _most_room(dancer: int, places: Sequence[Point], area: Area) -> float:
    """The way with most floor before the next dancer or wall; each starts from a way of its own."""
    here, best, way = places[dancer], -1.0, 0.0
    for n in range(8):
        degrees = _WAYS[(dancer * 3 + n) % 8]
        free = _room(here, degrees, dancer, places, area)
        if free > best + 1e-9:
            best, way = free, degrees
    return way


def _room(here: Point, degrees: float, dancer: int, places: Sequence[Point], area: Area) -> float:
    """Metres free ahead, `_LOOKS` at most."""
    dx, dy = ahead(degrees)
    free = _LOOKS
    if dx:
        free = min(free, ((area.right if dx > 0 else area.left) - here[0]) / dx)
    if dy:
        free = min(free, ((area.back if dy > 0 else area.front) - here[1]) / dy)
    for n, other in enumerate(places):
        x, y = other[0] - here[0], other[1] - here[1]
        along = x * dx + y * dy
        if n != dancer and 0 < along < free and abs(x * dy - y * dx) < _ABREAST:
            free = along
    return free
