"""Who leaves the floor, or comes where watchers sit: on which count, by how much.

Only sections and joins that are counted are judged: elsewhere nobody knows the ways.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from build_tools.movement.watchers import watchers
from build_tools.paths.hall import BORDER, LINED, SIDES, Area, Point, floor
from build_tools.paths.legs import CORNERS, Leg, point_of
from build_tools.paths.model import Paths

_SLIGHT = 0.05
"""Metres that do not matter."""
_SEATED = 1.0
"""Metres from a wall with one row of watchers, legs crossed, to where somebody may land: their
floor and a foot's length more; common practice, no source."""
_SEATED_AT_AN_END = 1.5
"""Metres along a wall for those who sit at one of its ends in rows, three abreast; common practice,
no source."""
_LOOKED_AT = (0.0, 0.25, 0.5, 0.75, 1.0)


@dataclass(frozen=True, slots=True)
class Beyond:
    """A dancer over a line: out of the hall, or among the watchers."""

    dancer: int
    """From 0."""
    stretch: int
    """The number of the section or join in the paths, from 0."""
    count: float
    """Counts from its start at which they are farthest over."""
    side: str
    """front, back, left or right."""
    metres: float
    """How far over the line."""


@lru_cache(maxsize=16)
def leaving_the_hall(paths: Paths) -> tuple[Beyond, ...]:
    """Who goes through a wall: once for each dancer and stretch, where they are farthest out."""
    return _over(paths, floor(paths.hall), frozenset(SIDES))


@lru_cache(maxsize=16)
def among_the_watchers(paths: Paths) -> tuple[Beyond, ...]:
    """Who dances where watchers sit, once for each dancer and stretch, where farthest in."""
    return _over(paths, paths.area, LINED[watchers(paths.dance)])


@lru_cache(maxsize=16)
def too_near_a_wall(
    paths: Paths, *, watched: bool, at_its_ends: bool = False
) -> tuple[Beyond, ...]:
    """Who comes into the border along a wall or, `watched`, to those who watch.

    Nobody starts nearer than arms held wide reach; on their way none comes nearer than the border.
    Part of a class that watches sits in one row, where a whole class sits in two; or at the ends of
    the wall, and then all keep as far from the sides.
    """
    lined = LINED[watchers(paths.dance)] if watched else frozenset[str]()
    free = {side: _SEATED if side in lined else BORDER for side in SIDES}
    if at_its_ends and lined:
        ends = ("left", "right") if lined & {"front", "back"} else ("front", "back")
        free = {side: _SEATED_AT_AN_END if side in ends else BORDER for side in SIDES}
    wall = floor(paths.hall)
    clear = Area(
        wall.left + free["left"],
        wall.front + free["front"],
        wall.right - free["right"],
        wall.back - free["back"],
    )
    return _over(paths, clear, frozenset(SIDES))


def _over(paths: Paths, area: Area, sides: frozenset[str]) -> tuple[Beyond, ...]:
    """Who is beyond the edge of `area` on one of `sides`."""
    wide = Area(
        area.left if "left" in sides else -math.inf,
        area.front if "front" in sides else -math.inf,
        area.right if "right" in sides else math.inf,
        area.back if "back" in sides else math.inf,
    )
    if _holds(wide, _reach(paths)):
        return ()
    found: dict[tuple[int, int], Beyond] = {}
    for dancer, legs in enumerate(paths.legs):
        for leg in legs:
            if _well_inside(leg, wide):
                continue
            n = _stretch_at(paths, leg.start)
            if not paths.stretches[n].counted:
                continue
            for part in (*_LOOKED_AT, *CORNERS) if leg.bend else (0.0, 1.0):
                side, over = _beyond(wide, point_of(leg, part))
                before = found.get((n, dancer))
                if over > (before.metres if before else _SLIGHT):
                    moment = leg.start + (leg.end - leg.start) * part
                    count = moment - paths.stretches[n].begins
                    found[n, dancer] = Beyond(dancer, n, count, side, over)
    return tuple(found[key] for key in sorted(found))


@lru_cache(maxsize=16)
def _reach(paths: Paths) -> Area:
    """A part of the floor that surely holds every leg."""
    legs = [leg for one in paths.legs for leg in one]
    out = max((abs(leg.bend) for leg in legs), default=0.0)
    across = [x for leg in legs for x in (leg.x0, leg.x1)] or [0.0]
    along = [y for leg in legs for y in (leg.y0, leg.y1)] or [0.0]
    return Area(min(across) - out, min(along) - out, max(across) + out, max(along) + out)


def _holds(area: Area, other: Area) -> bool:
    return (
        area.left <= other.left
        and area.front <= other.front
        and other.right <= area.right
        and other.back <= area.back
    )


def _well_inside(leg: Leg, area: Area) -> bool:
    """Whether the whole of a leg is surely inside."""
    out = abs(leg.bend)
    return (
        area.left + out <= leg.x0 <= area.right - out
        and area.left + out <= leg.x1 <= area.right - out
        and area.front + out <= leg.y0 <= area.back - out
        and area.front + out <= leg.y1 <= area.back - out
    )


def _stretch_at(paths: Paths, moment: float) -> int:
    """The number of the stretch that is danced at a moment."""
    within = [n for n, one in enumerate(paths.stretches) if one.begins <= moment < one.ends]
    return within[0] if within else len(paths.stretches) - 1


def _beyond(area: Area, point: Point) -> tuple[str, float]:
    """On which side a point is farthest outside, and by how many metres; 0 or less inside."""
    x, y = point
    return max(
        ("front", area.front - y),
        ("back", y - area.back),
        ("left", area.left - x),
        ("right", x - area.right),
        key=lambda one: one[1],
    )
