"""A horseshoe: along three walls of the hall, open to the side that is faced.

As far apart as the walls allow, or as a unit says, then round the middle of the floor. Nobody
stands in the very ends, where the open side begins.
`site_overrides/sums/floor-shapes.js` does the same for the class of the day.
"""

from __future__ import annotations

from build_tools.paths.hall import Area, Point


def horseshoe(dancers: int, wide: float, deep: float) -> tuple[Point, ...]:
    """Evenly along the left, the back and the right of a floor of that size, from its middle."""
    gap = (2 * deep + wide) / dancers
    found: list[Point] = []
    for n in range(dancers):
        along = (n + 0.5) * gap
        if along <= deep:
            found.append((-wide / 2, along - deep / 2))
        elif along <= deep + wide:
            found.append((along - deep - wide / 2, deep / 2))
        else:
            found.append((wide / 2, deep / 2 - (along - deep - wide)))
    return tuple(found)


def along_walls(dancers: int, apart: float | None, area: Area) -> tuple[tuple[Point, ...], float]:
    """The same in `area`, `apart` metres from one another where that is said; how much closer.

    That is 1, or by how much they are nearer than those metres where the walls are too short.
    """
    gap = (2 * area.depth + area.width) / dancers
    part = 1.0 if apart is None else min(1.0, apart / gap)
    x, y = area.middle
    places = horseshoe(dancers, area.width * part, area.depth * part)
    return tuple((x + dx, y + dy) for dx, dy in places), min(1.0, gap / (apart or gap))
