"""Which way each dancer of a class faces, from where they stand, in degrees."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence

from build_tools.model.dance import Standing
from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import SIDES, Area, Point, ahead, bearing, fine, metres

Way = tuple[float, float, float, float, float, float, float, float]
"""Where a dancer is at each of `_LOOKS`: x and y of each in turn."""
Three = tuple[int, int, int]
_WAYS = 8
"""How many ways a dancer thinks of, straight out from the middle of the floor the first."""
_GOES = 2.0
"""Metres that a dancer looks ahead for room; common practice, no source."""
_LOOKS = (0.25, 0.5, 0.75, 1.0)
"""The parts of that way at which they look where the others have got to."""
_CLEAR = 1.6
"""Metres from anybody that are room enough: more is no better."""
_AT_A_WALL = 0.8
"""A wall may be so much nearer than a dancer."""
_PAST_THE_BORDER = 0.4
"""But less where the way ends past the border that is kept free along it: who picks a way towards
empty floor picks none up to a wall while another is as free."""
_ROUNDS = 4
_WAYS_APART = 360 / _WAYS
FACES = 1.5 * _WAYS_APART
"""Who looks a wall's way, or to either side of it by less than so many degrees, faces it; common
practice, no source. So of the ways a dancer thinks of three at most face one wall."""
_SLIGHT = 1e-6
_SQUARE = 0.05
"""How far from a right angle still counts as one: about three degrees."""


def facings(
    facing: str,
    places: Sequence[Point],
    together: Together,
    centres: Sequence[Point],
    area: Area,
    nobody_faces: str | None = None,
    each_group_one_way: bool = False,
) -> list[float]:
    """The way each dancer faces, by number; `centres` are what each has for a centre.

    Where they face different ways `nobody_faces` is a side that is left out, and with
    `each_group_one_way` those of a group face the side towards which it has most floor.
    """
    if facing in SIDES:
        return [SIDES[facing]] * len(places)
    if facing == "mixed" and each_group_one_way:
        return _as_groups(places, together, area, nobody_faces)
    if facing == "mixed":
        return _with_room(places, area, SIDES.get(nobody_faces or ""))
    if facing == "partner":
        partner, threes = partners(together), in_threes(together)
        looks = [
            looked_at(n, partner[n], threes.get(n), places.__getitem__) for n in range(len(places))
        ]
        return [
            0.0 if _there(place, look) else bearing(place, look)
            for place, look in zip(places, looks, strict=True)
        ]
    turned = 180.0 if facing == "outwards" else 0.0
    return [
        turned if _there(place, centre) else (bearing(place, centre) + turned) % 360
        for place, centre in zip(places, centres, strict=True)
    ]


def facings_of(
    standing: Standing,
    places: Sequence[Point],
    together: Together,
    centres: Sequence[Point],
    area: Area,
) -> list[float]:
    """The same as a unit says it of how dancers stand."""
    return facings(
        standing.facing,
        places,
        together,
        centres,
        area,
        standing.nobody_faces,
        standing.each_group_one_way,
    )


def _as_groups(
    places: Sequence[Point], together: Together, area: Area, nobody_faces: str | None
) -> list[float]:
    """One of the four sides for each group, that with the most floor as far as another group.

    Of sides with as much floor each group in turn takes the next, so that not all look one way.
    """
    middles = [
        tuple(sum(places[one][axis] for one in group) / len(group) for axis in (0, 1))
        for group in together
    ]
    sides = [way for side, way in SIDES.items() if side != nobody_faces]
    found = [0.0] * len(places)
    for n, group in enumerate(together):
        others = [
            (x - middles[n][0], y - middles[n][1]) for k, (x, y) in enumerate(middles) if k != n
        ]
        best = -math.inf
        for k in range(len(sides)):
            way = sides[(n + k) % len(sides)]
            floor = _floor_ahead(middles[n], way, others, area)
            if floor > best + _SLIGHT:
                best = floor
                for one in group:
                    found[one] = way
    return found


def _floor_ahead(here: Sequence[float], way: float, others: Sequence[Point], area: Area) -> float:
    """Metres to the wall that way, or to the nearest of `others` who are more that way than aside.

    `others` are told from here.
    """
    dx, dy = ahead(way)
    wall = (area.right - here[0]) * max(dx, 0) + (here[0] - area.left) * max(-dx, 0)
    wall += (area.back - here[1]) * max(dy, 0) + (here[1] - area.front) * max(-dy, 0)
    before = [
        x * dx + y * dy for x, y in others if x * dx + y * dy > abs(x * dy - y * dx) - _SLIGHT
    ]
    return fine(min([wall, *(one for one in before if one > _SLIGHT)]))


def _there(place: Point, other: Point) -> bool:
    """Whether two points are the same but for the last places of a sum."""
    return metres(place, other) < _SLIGHT


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


def in_threes(together: Together) -> dict[int, Three]:
    """The last three of each odd group: who was there first, the partner of both, the odd one."""
    odd = [group[-3:] for group in together if len(group) > 2 and len(group) % 2]
    return {
        one: (first, shared, over) for first, shared, over in odd for one in (first, shared, over)
    }


def looked_at(dancer: int, partner: int, three: Three | None, at: Callable[[int], Point]) -> Point:
    """Where a dancer has their partner before them; `at` is where each stands.

    Two who share a partner that stands off, level between them, look straight over, shoulder to
    shoulder, and the partner looks between them. Else the odd one goes with the first.
    """
    if three is None:
        return at(partner)
    first, shared, over = (at(one) for one in three)
    x, y = (first[0] + over[0]) / 2, (first[1] + over[1]) / 2
    level = abs(metres(first, shared) - metres(over, shared)) < _SLIGHT
    if level and metres((x, y), shared) > metres(first, over) / 2 + _SLIGHT:
        if dancer == three[1]:
            return (x, y)
        here = at(dancer)
        return (shared[0] + here[0] - x, shared[1] + here[1] - y)
    return straight_across(over, shared, first) if dancer == three[2] else at(partner)


def straight_across(here: Point, partner: Point, beside: Point) -> Point:
    """Where who shares the partner of one who stands at `beside` has that partner before them.

    Who stands squarely beside the other looks and goes straight across as they do, to the empty
    place next to the partner of both, not on a slant; there is no across where both are in one.
    """
    if _there(beside, partner):
        return partner
    across = (partner[0] - beside[0], partner[1] - beside[1])
    aside = (here[0] - beside[0], here[1] - beside[1])
    slant = abs(across[0] * aside[0] + across[1] * aside[1])
    if slant >= _SQUARE * math.hypot(*across) * math.hypot(*aside):
        return partner
    return (partner[0] + aside[0], partner[1] + aside[1])


def _with_room(places: Sequence[Point], area: Area, barred: float | None) -> list[float]:
    """A way for each dancer on which nobody comes near who goes a way of their own meanwhile.

    One after another looks at where the others are going, several times round, as pupils do who
    look up before they set off: so the first to choose choose again, unless they have room. Ways
    are reckoned from the middle of the floor, so a hall that is turned or mirrored turns or
    mirrors them. Nobody takes a way that faces the side at `barred` degrees.
    """
    reach = 2 * _GOES + _CLEAR
    near = [
        [n for far, n in sorted(_others(at, places)) if far < reach] for at in range(len(places))
    ]
    ways = [_ways_of(n, place, area.middle, barred) for n, place in enumerate(places)]
    gone = [[_gone(here, way) for way in its] for here, its in zip(places, ways, strict=True)]
    walls = [[_to_a_wall(way, area) for way in of] for of in gone]
    going = [_standing(here) for here in places]
    chosen = [0] * len(places)
    for _ in range(_ROUNDS):
        before = list(chosen)
        for at in range(len(places)):
            others = [going[n] for n in near[at]]
            chosen[at] = _clearest(gone[at], walls[at], others, chosen[at])
            going[at] = gone[at][chosen[at]]
        if chosen == before:
            break
    return [its[way] for its, way in zip(ways, chosen, strict=True)]


def _others(dancer: int, places: Sequence[Point]) -> Iterator[tuple[float, int]]:
    here = places[dancer]
    return ((fine(metres(here, other)), n) for n, other in enumerate(places) if n != dancer)


def _ways_of(dancer: int, place: Point, middle: Point, barred: float | None) -> tuple[float, ...]:
    """The ways a dancer thinks of, in order: each dancer begins with another."""
    out = 0.0 if _there(middle, place) else bearing(middle, place)
    round_ = 1 if fine(out % 90) % 90 < _WAYS_APART else -1
    every = ((out + round_ * _WAYS_APART * ((dancer * 3 + n) % _WAYS)) % 360 for n in range(_WAYS))
    return tuple(way for way in every if barred is None or not _faces(way, barred))


def _faces(way: float, side: float) -> bool:
    return fine(abs((way - side + 180) % 360 - 180)) < FACES


def _clearest(gone: Sequence[Way], walls: Sequence[float], others: Sequence[Way], now: int) -> int:
    """The way on which the nearest other stays furthest off; the way they have if that has room."""
    best, found = -1.0, now
    for n in range(len(gone)):
        way = (now + n) % len(gone)
        clear = _clear(gone[way], walls[way], others, best)
        if clear > best + _SLIGHT:
            best, found = clear, way
            if best >= _CLEAR**2 - _SLIGHT:
                break
    return found


def _clear(gone: Way, wall: float, others: Sequence[Way], least: float) -> float:
    """How near anybody comes, or a wall: squared metres; no better than `least` is cut short."""
    clear = min(_CLEAR, wall) ** 2
    x1, y1, x2, y2, x3, y3, x4, y4 = gone
    for ox1, oy1, ox2, oy2, ox3, oy3, ox4, oy4 in others:
        if clear <= least:
            break
        clear = min(
            clear,
            (x1 - ox1) * (x1 - ox1) + (y1 - oy1) * (y1 - oy1),
            (x2 - ox2) * (x2 - ox2) + (y2 - oy2) * (y2 - oy2),
            (x3 - ox3) * (x3 - ox3) + (y3 - oy3) * (y3 - oy3),
            (x4 - ox4) * (x4 - ox4) + (y4 - oy4) * (y4 - oy4),
        )
    return clear


def _standing(here: Point) -> Way:
    x, y = here
    return (x, y, x, y, x, y, x, y)


def _gone(here: Point, degrees: float) -> Way:
    """Where a dancer is who has gone each part of the way ahead."""
    (x, y), (dx, dy) = here, ahead(degrees)
    first, second, third, last = (_GOES * part for part in _LOOKS)
    return (
        x + dx * first,
        y + dy * first,
        x + dx * second,
        y + dy * second,
        x + dx * third,
        y + dy * third,
        x + dx * last,
        y + dy * last,
    )


def _to_a_wall(way: Way, area: Area) -> float:
    """Metres from its end to the nearest wall, as `_AT_A_WALL` reckons them."""
    x, y = way[-2:]
    wall = min(x - area.left, area.right - x, y - area.front, area.back - y)
    nearer = _AT_A_WALL if wall > -_SLIGHT else _PAST_THE_BORDER
    return max(0.0, wall + nearer)
