"""Where a section takes all together, and whether all face one wall from first to last."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from build_tools.paths.hall import SIDES, bearing
from build_tools.paths.model import Paths, StretchPaths

_SAME_WALL = 45.0
"""Degrees to either side that still count as facing a wall; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Drift:
    """How far a section takes the middle of the class."""

    stretch: int
    """The number of the section in the paths, from 0."""
    letter: str
    metres: float
    degrees: float
    """Which way, clockwise from the front."""
    side: str
    """The side of the hall that lies most that way."""
    so_far: float
    """Metres of the middle of the class, at its end, from where the dance began."""


@lru_cache(maxsize=16)
def drifts(paths: Paths) -> tuple[Drift, ...]:
    """The drift of each counted section, in order; 0 metres where all come home."""
    found = []
    first = _middle(paths, 0.0)
    for n, one in enumerate(paths.stretches):
        if one.section is None or not one.counted:
            continue
        before, after = _middle(paths, one.begins), _middle(paths, one.ends)
        way = bearing(before, after)
        found.append(
            Drift(
                stretch=n,
                letter=one.section.letter,
                metres=round(math.dist(before, after), 6),
                degrees=way,
                side=min(SIDES, key=lambda side: _between(SIDES[side], way)),
                so_far=round(math.dist(first, after), 6),
            )
        )
    return tuple(found)


@lru_cache(maxsize=16)
def one_wall(paths: Paths) -> str | None:
    """The side of the hall that everybody faces at every count of the dance, or None.

    What nobody has written down, in a section that is made up, counts for nothing.
    """
    ways = [one.facing for one in paths.at_first]
    free = [one for one in paths.stretches if one.section and not one.counted]
    ways += [
        way
        for legs in paths.legs
        for leg in legs
        if not _in_one_of(leg.start, free)
        for way in (leg.face1, (leg.face0 + leg.face1) / 2)
    ]
    for side, degrees in SIDES.items():
        if all(_between(way, degrees) <= _SAME_WALL for way in ways):
            return side
    return None


def _in_one_of(moment: float, stretches: list[StretchPaths]) -> bool:
    return any(one.begins <= moment < one.ends for one in stretches)


def _between(one: float, other: float) -> float:
    """Degrees from one direction to another, 180 at most."""
    return abs((one - other + 180) % 360 - 180)


def _middle(paths: Paths, moment: float) -> tuple[float, float]:
    everybody = paths.everybody(moment)
    return (
        sum(one.x for one in everybody) / len(everybody),
        sum(one.y for one in everybody) / len(everybody),
    )
