"""How near dancers come to one another: who, on which count, by how many metres.

Between two looks everybody goes straight; curves and zigzags are looked at more often, so the
nearest moment is right to a hand's width. Only counted sections are judged: in what is made up
nobody knows the ways, and on the way to a new place everybody walks around whom they meet.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from build_tools.paths.hall import Point
from build_tools.paths.legs import CORNERS, Leg, point_of
from build_tools.paths.model import Paths

_CURVE = 4
"""In how many straight pieces a curve is looked at."""
_TOGETHER = 1e-6
_Going = tuple[float, float, float, float, int]
"""A dancer in one look: x and y, metres gone right and back, number."""


@dataclass(frozen=True, slots=True)
class Near:
    """The nearest that two dancers come to one another in a section."""

    stretch: int
    """Its number in the paths, from 0."""
    dancers: tuple[int, int]
    """By number from 0, the lower first."""
    count: float
    """Counts from its start."""
    metres: float
    at_start: float
    """Metres between the two when it starts."""


@lru_cache(maxsize=16)
def nearer_than(paths: Paths, limit: float) -> tuple[Near, ...]:
    """Who comes nearer than `limit` metres in each counted section, each pair once, nearest first.

    An arm's length (`paths.body.arm`) is the usual limit for those who do not touch by choice.
    """
    found: dict[tuple[int, int, int], tuple[float, float]] = {}
    moments = _moments(paths)
    for n, one in enumerate(paths.stretches):
        if one.section is None or not one.counted:
            continue
        between = [moment for moment in moments if one.begins < moment < one.ends]
        looks = [one.begins, *between, one.ends]
        for start, end, going in _looks(paths, looks):
            for a, b, far, part in _close(going, limit, first=start == one.begins):
                key = (n, a, b)
                if key not in found or far < found[key][0]:
                    found[key] = (far, start + (end - start) * part - one.begins)
    nearest_first = sorted(found, key=lambda key: (key[0], found[key][0], key))
    return tuple(
        Near(n, (a, b), found[n, a, b][1], found[n, a, b][0], _apart(paths, a, b, n))
        for n, a, b in nearest_first
    )


def _moments(paths: Paths) -> list[float]:
    """Every moment of the dance between which everybody goes straight or stays, in order."""
    found: set[float] = set()
    for start, end, bend, zigzag in {
        (leg.start, leg.end, bool(leg.bend), leg.zigzag) for legs in paths.legs for leg in legs
    }:
        parts = [0.0, 1.0]
        if bend:
            parts = [0.0, *CORNERS, 1.0] if zigzag else [n / _CURVE for n in range(_CURVE + 1)]
        found.update(start + (end - start) * part for part in parts)
    return sorted(found)


def _looks(paths: Paths, moments: list[float]) -> Iterator[tuple[float, float, list[_Going]]]:
    """Everybody's place and way in the time between each two moments, but the first only if all
    stay where they are.
    """
    ways = _times_of_ways(paths)
    looks = [
        (start, end)
        for n, (start, end) in enumerate(pairwise(moments))
        if not n or any(begins < end and start < ends for begins, ends in ways)
    ]
    looked_at = sorted({moment for look in looks for moment in look})
    everybody = [
        _places(legs, (first.x, first.y), looked_at)
        for legs, first in zip(paths.legs, paths.at_first, strict=True)
    ]
    places = dict(zip(looked_at, zip(*everybody, strict=True), strict=True))
    for start, end in looks:
        going = [
            (one[0], one[1], other[0] - one[0], other[1] - one[1], n)
            for n, (one, other) in enumerate(zip(places[start], places[end], strict=True))
        ]
        yield start, end, going


@lru_cache(maxsize=16)
def _times_of_ways(paths: Paths) -> frozenset[tuple[float, float]]:
    """From when to when anybody goes anywhere; most legs only turn, rise or sink."""
    return frozenset(
        (leg.start, leg.end)
        for legs in paths.legs
        for leg in legs
        if leg.bend or leg.x0 != leg.x1 or leg.y0 != leg.y1
    )


def _places(legs: tuple[Leg, ...], here: Point, moments: list[float]) -> Iterator[Point]:
    """A dancer's place at each moment, in their order."""
    n = 0
    for moment in moments:
        while n < len(legs) and legs[n].end <= moment:
            here = (legs[n].x1, legs[n].y1)
            n += 1
        if n < len(legs) and legs[n].start < moment:
            start, end = legs[n].start, legs[n].end
            yield point_of(legs[n], (moment - start) / (end - start))
        else:
            yield here


def _close(
    going: list[_Going], limit: float, *, first: bool
) -> Iterator[tuple[int, int, float, float]]:
    """Each two who come nearer than `limit` in one look: how near, and at which part of it.

    Two who go the same way stay as far apart as they were, and are looked at only at `first`.
    """
    if not first and _go_alike(going):
        return
    order = sorted((min(x, x + u), max(x, x + u), x, y, u, v, n) for x, y, u, v, n in going)
    for k, (_, most, x, y, u, v, n) in enumerate(order):
        for least, _, x2, y2, u2, v2, m in order[k + 1 :]:
            if least > most + limit:
                break
            du, dv = u2 - u, v2 - v
            dx, dy = x2 - x, y2 - y
            speed = du * du + dv * dv
            part = 0.0
            if speed > _TOGETHER:
                part = min(1.0, max(0.0, -(dx * du + dy * dv) / speed))
            elif not first:
                continue
            far = round(math.hypot(dx + du * part, dy + dv * part), 6)
            if far < limit:
                yield (n, m, far, part) if n < m else (m, n, far, part)


def _go_alike(going: list[_Going]) -> bool:
    """Whether all go the same way, which is most often no way at all."""
    _, _, right, back, _ = going[0]
    if all(u == right and v == back for _, _, u, v, _ in going):
        return True
    return len({(round(u, 6), round(v, 6)) for _, _, u, v, _ in going}) == 1


def _apart(paths: Paths, a: int, b: int, stretch: int) -> float:
    """Metres between two dancers when a stretch begins."""
    moment = paths.stretches[stretch].begins
    one, other = paths.at(a, moment), paths.at(b, moment)
    return math.hypot(one.x - other.x, one.y - other.y)
