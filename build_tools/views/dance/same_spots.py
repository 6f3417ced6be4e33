"""Whether the teams of a class stand on the same spots, so that one set of marks does for all.

`site_overrides/sums/floor-on-spots.js` asks the same of the class of the day.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import Point, metres
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.on_spots import has_spots

Spots = Literal["same", "but odd groups", "none"]
_HAND = 0.1
"""Metres between two marks that are one: a hand's breadth."""


def same_spots(teams: Sequence[Paths]) -> Spots:
    """Of teams as they are drawn, the largest first: all on its spots, all but groups of other
    sizes, or neither, as where a formation is scattered.

    The one over in a three stands with a pair that is on its spots, and needs none.
    """
    starts = [list(_new_places(team)) for team in teams]
    if not teams or not all(_keep(one) for team in starts for one in team):
        return "none"
    off = [
        (over, sum(not _among(place, first) for place in places))
        for team in starts
        for one, first in zip(team, starts[0], strict=True)
        for over, places in _groups(one)
    ]
    if any(over == 0 and many for over, many in off):
        return "none"
    return "but odd groups" if any(many > max(over, 0) for over, many in off) else "same"


def _new_places(paths: Paths) -> Iterator[StretchPaths]:
    return (one for one in paths.stretches if one.start and one.start.spot == "new place")


def _keep(one: StretchPaths) -> bool:
    assert one.section is not None
    return has_spots(one.section.start, [len(group) for group in one.together])


def _among(place: Point, marks: StretchPaths) -> bool:
    assert marks.start is not None
    return any(metres(place, mark) <= _HAND for mark in marks.start.wanted)


def _groups(one: StretchPaths) -> Iterator[tuple[int, list[Point]]]:
    """Of each group how many more it has than most, and its places."""
    assert one.section is not None
    assert one.start is not None
    size = groups_of(one.section).size
    for group in one.together:
        yield len(group) - size, [one.start.wanted[dancer] for dancer in group]
