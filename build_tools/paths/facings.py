"""Which way each dancer of a class faces, from where they stand, in degrees."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import SIDES, Area, Point, ahead, bearing, metres

Way = tuple[Point, ...]
"""Where a dancer is at each of `_LOOKS`."""
_WAYS = tuple(45.0 * n for n in range(8))
_GOES = 2.5
"""Metres that a dancer looks ahead for room; common practice, no source."""
_LOOKS = (0.25, 0.5, 0.75, 1.0)
"""The parts of that way at which they look where the others have got to."""
_CLEAR = 1.6
"""Metres from anybody that are room enough: more is no better."""
_AT_A_WALL = 0.8
"""A wall may be so much nearer than a dancer."""
_ROUNDS = 3


def facings(
    facing: str, places: Sequence[Point], together: Together, centres: Sequence[Point], area: Area
) -> list[float]:
    """The way each dancer faces, by number; `centres` are what each has for a centre."""
    if facing in SIDES:
        return [SIDES[facing]] * len(places)
    if facing == "mixed":
        return _with_room(places, area)
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


def _with_room(places: Sequence[Point], area: Area) -> list[float]:
    """A way for each dancer on which nobody comes near who goes a way of their own meanwhile.

    One after another looks at where the others are going, several times round, as pupils do who
    look up before they set off: so the first to choose choose again.
    """
    reach = 2 * _GOES + _CLEAR
    near = [
        [n for n, other in enumerate(places) if n != at and metres(here, other) < reach]
        for at, here in enumerate(places)
    ]
    gone = [[_gone(here, way) for way in _WAYS] for here in places]
    walls = [[_to_a_wall(way[-1], area) for way in of] for of in gone]
    going = [(here,) * len(_LOOKS) for here in places]
    chosen = [-1] * len(places)
    for _ in range(_ROUNDS):
        before = list(chosen)
        for at in range(len(places)):
            others = [going[n] for n in near[at]]
            chosen[at] = _clearest(at, gone[at], walls[at], others)
            going[at] = gone[at][chosen[at]]
        if chosen == before:
            break
    return [_WAYS[way] for way in chosen]


def _clearest(
    dancer: int, gone: Sequence[Way], walls: Sequence[float], others: Sequence[Way]
) -> int:
    """The way on which the nearest other stays furthest off; each starts from another."""
    best, found = -1.0, 0
    for n in range(len(_WAYS)):
        way = (dancer * 3 + n) % len(_WAYS)
        clear = _clear(gone[way], walls[way], others, best)
        if clear > best + 1e-9:
            best, found = clear, way
            if best >= _CLEAR**2:
                break
    return found


def _clear(gone: Way, wall: float, others: Sequence[Way], least: float) -> float:
    """How near anybody comes, or a wall: squared metres; no better than `least` is cut short."""
    clear = min(_CLEAR, wall) ** 2
    for other in others:
        if clear <= least:
            break
        for (x, y), (ox, oy) in zip(gone, other, strict=True):
            apart = (x - ox) * (x - ox) + (y - oy) * (y - oy)
            if apart < clear:
                clear = apart
    return clear


def _gone(here: Point, degrees: float) -> Way:
    """Where a dancer is who has gone each part of the way ahead."""
    dx, dy = ahead(degrees)
    return tuple((here[0] + dx * _GOES * part, here[1] + dy * _GOES * part) for part in _LOOKS)


def _to_a_wall(end: Point, area: Area) -> float:
    """Metres from the end of a way to the nearest wall, as `_AT_A_WALL` reckons them."""
    x, y = end
    wall = min(x - area.left, area.right - x, y - area.front, area.back - y)
    return max(0.0, wall + _AT_A_WALL)
