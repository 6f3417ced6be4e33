"""A class scattered over a floor: always the same places, nobody near anybody.

The places are a Kronecker lattice by the golden ratio, a sequence of low discrepancy (Niederreiter,
Random Number Generation and Quasi-Monte Carlo Methods, 1992): its places lie nearly as far apart as
so many can.
"""

from __future__ import annotations

import math
from functools import lru_cache

from build_tools.paths.hall import Area, Point, fine, metres

_GOLDEN = (math.sqrt(5) - 1) / 2
_USUAL_SHAPE = 1.8
"""How much wider than deep a hall usually is, to put places into an order of neighbours."""


def scattered(many: int, area: Area) -> tuple[Point, ...]:
    """`many` places in `area`, one after another each near the one before.

    Of the lattice and the same turned by a quarter, the one that keeps dancers farther apart.
    """
    unit = _in_a_square(many)
    across = tuple(_laid(point, area) for point in unit)
    if many < 2:
        return across
    along = tuple(_laid((y, x), area) for x, y in unit)
    return max(across, along, key=nearest_two)


def nearest_two(points: tuple[Point, ...]) -> float:
    """Metres between the two points that are nearest to one another; no limit for one alone."""
    known = sorted(points)
    least = math.inf
    for n, one in enumerate(known):
        for other in known[n + 1 :]:
            if other[0] - one[0] >= least:
                break
            least = min(least, metres(one, other))
    return fine(least)


def spaced_out(
    points: tuple[Point, ...], near: float | None, area: Area
) -> tuple[tuple[Point, ...], float]:
    """Scattered places, drawn towards the middle where a unit says how near neighbours are.

    And by how much they are nearer than those metres where the hall has no more room.
    """
    nearest = nearest_two(points)
    if not near or nearest == math.inf:
        return points, 1.0
    closer = near / nearest
    if closer >= 1:
        return points, 1 / closer
    x0, y0 = area.middle
    return tuple((x0 + (x - x0) * closer, y0 + (y - y0) * closer) for x, y in points), 1.0


@lru_cache(maxsize=128)
def _in_a_square(many: int) -> tuple[Point, ...]:
    """The lattice in a square of one by one, in strips that are walked up and down."""
    points = [((n + 0.5) / many, (n * _GOLDEN + 0.5 / many) % 1) for n in range(many)]
    strips = max(1, math.floor(math.sqrt(many * _USUAL_SHAPE) / 2 + 0.5))
    found: list[Point] = []
    for strip in range(strips):
        inside = points[strip * many // strips : (strip + 1) * many // strips]
        found += sorted(inside, key=lambda point: point[1], reverse=bool(strip % 2))
    return tuple(found)


def _laid(point: Point, area: Area) -> Point:
    return (area.left + point[0] * area.width, area.front + point[1] * area.depth)
