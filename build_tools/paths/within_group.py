"""How the dancers of one group stand to one another, around the group's middle.

Metres, the front up. Place 1 is the first of the list. Partners are places 1 and 2, 3 and 4 …
"""

from __future__ import annotations

import math

from build_tools.paths.hall import Point
from build_tools.paths.horseshoe import horseshoe

_HEX = ((1.0, 0.0), (0.5, 1.0), (-0.5, 1.0), (-1.0, 0.0), (-0.5, -1.0), (0.5, -1.0))
"""Six neighbours at the same distance, in halves of a triangle's height."""
_HIGH = math.sqrt(3) / 2


def shape(kind: str, dancers: int, apart: float, behind: float | None = None) -> tuple[Point, ...]:
    """The places of `dancers` in a shape with neighbours `apart` metres from one another.

    `kind` is one of those a unit names for a group, or file, semicircle, horseshoe or V; another
    is a line.
    Of partners one pair is `behind` the other by so many metres, where that is not as far as
    partners are apart.
    """
    if dancers == 1:
        return ((0.0, 0.0),)
    if kind in ("face to face", "back to back"):
        along = apart if behind is None else behind
        return _centred([((n % 2) * apart, (n // 2) * along) for n in range(dancers)])
    if kind == "two lines":
        return _centred([((n // 2) * apart, (n % 2) * apart) for n in range(dancers)])
    if kind in ("one behind another", "file"):
        return _centred([(0.0, n * apart) for n in range(dancers)])
    if kind in ("square", "circle"):
        return _ring(dancers, apart, square=kind == "square")
    if kind == "cluster":
        return _cluster(dancers, apart)
    if kind == "diamond":
        return _diamond(dancers, apart)
    if kind == "semicircle":
        return _half_ring(dancers, apart)
    if kind == "horseshoe":
        return horseshoe(dancers, dancers * apart / 3, dancers * apart / 3)
    if kind == "V":
        return _point_first(dancers, apart)
    return _centred([(n * apart, 0.0) for n in range(dancers)])


def _centred(points: list[Point]) -> tuple[Point, ...]:
    """The same points around the middle of what they take up."""
    x = (min(p[0] for p in points) + max(p[0] for p in points)) / 2
    y = (min(p[1] for p in points) + max(p[1] for p in points)) / 2
    return tuple((p[0] - x, p[1] - y) for p in points)


def _ring(dancers: int, apart: float, *, square: bool) -> tuple[Point, ...]:
    """Round clockwise from the left of the front; a square has a side to the front."""
    if square and dancers > 4:
        wide = math.ceil(math.sqrt(dancers))
        return _centred([((n % wide) * apart, (n // wide) * apart) for n in range(dancers)])
    radius = apart / 2 / math.sin(math.pi / dancers)
    first = -90.0 if dancers == 2 else -180 / dancers
    turns = [math.radians(first + 360 * n / dancers) for n in range(dancers)]
    return tuple((radius * math.sin(turn), -radius * math.cos(turn)) for turn in turns)


def _diamond(dancers: int, apart: float) -> tuple[Point, ...]:
    """A diamond with a point to each wall, round from its front; then those inside it.

    Three are a triangle with its point to the front; up to seven are four points with the others
    inside, one behind another; from eight on all stand along its sides, the points first.
    """
    if dancers < 4:
        points = [(0.0, 0.0), (0.5, _HIGH), (-0.5, _HIGH)][:dancers]
    elif dancers < 8:
        inside = dancers - 4
        far = max(math.sqrt(0.5), (inside + 1) / 2)
        wide = _HIGH if inside == 2 else max(math.sqrt(0.5), min(1.0, float(inside)))
        points = [(0.0, -far), (wide, 0.0), (0.0, far), (-wide, 0.0)]
        points += [(0.0, n - (inside - 1) / 2) for n in range(inside)]
    else:
        points = _round_a_diamond(dancers)
    return _centred([(x * apart, y * apart) for x, y in points])


def _round_a_diamond(dancers: int) -> list[Point]:
    """The four points, then the others evenly along the sides, as many on each as may be."""
    far = math.ceil(dancers / 4) * math.sqrt(0.5)
    corners = [(0.0, -far), (far, 0.0), (0.0, far), (-far, 0.0)]
    found = list(corners)
    for side in range(4):
        (x0, y0), (x1, y1) = corners[side], corners[(side + 1) % 4]
        more = (dancers - 4 - side + 3) // 4
        parts = [(n + 1) / (more + 1) for n in range(more)]
        found += [(x0 + (x1 - x0) * part, y0 + (y1 - y0) * part) for part in parts]
    return found


def _half_ring(dancers: int, apart: float) -> tuple[Point, ...]:
    """A half circle, open to the front, from its left end round to its right."""
    radius = apart / 2 / math.sin(math.pi / 2 / (dancers - 1))
    turns = [math.pi * n / (dancers - 1) for n in range(dancers)]
    return _centred([(-radius * math.cos(turn), radius * math.sin(turn)) for turn in turns])


def _point_first(dancers: int, apart: float) -> tuple[Point, ...]:
    """A V with its point to the front: place by place along it from the left."""
    middle, slope = (dancers - 1) / 2, math.sqrt(0.5)
    across = [(n - middle) * apart * slope for n in range(dancers)]
    return _centred([(x, abs(x)) for x in across])


def _cluster(dancers: int, apart: float) -> tuple[Point, ...]:
    """One in the middle and the others in rings of six, twelve … around."""
    found: list[Point] = [(0.0, 0.0)]
    ring = 1
    while len(found) < dancers:
        for corner, (x, y) in enumerate(_HEX):
            to = _HEX[(corner + 1) % 6]
            for step in range(ring):
                part = step / ring
                found.append(
                    (
                        apart * ring * (x + (to[0] - x) * part),
                        apart * ring * _HIGH * (y + (to[1] - y) * part),
                    )
                )
        ring += 1
    return tuple(found[:dancers])
