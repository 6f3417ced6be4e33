"""Groups in rows and columns: where the middle of each stands."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.paths.hall import Area, Point

Shape = tuple[Point, ...]
"""The places of a group round its middle."""


def columns_tried(said: int, sizes: Sequence[int]) -> list[int]:
    """In how many columns groups of `sizes` may stand where a dance says how many: that first.

    What is said is meant for a usual class. Where fewer groups dance, they may stand in fewer
    columns, as long as no more rows stand behind one another than the usual class has.
    """
    many = len(sizes)
    usual = max(sizes, key=lambda one: (sizes.count(one), one))
    rows = math.ceil(math.ceil(USUAL_CLASS / usual) / said)
    most = min(said, many)
    return [most, *(k for k in range(most - 1, 0, -1) if math.ceil(many / k) <= rows)]


def in_columns(
    inside: Sequence[Shape], columns: int, between: float | None, clear: float, area: Area
) -> tuple[Point, ...]:
    """The middles of groups, row by row from the front, the last row centred.

    `between` are the metres between groups. Where those are not said the groups fill the floor,
    `clear` metres apart at least. Else a row is as deep as its deepest group and a column as wide
    as its widest, so that one larger group takes no more floor than it stands on.
    """
    rows = [inside[first : first + columns] for first in range(0, len(inside), columns)]
    if between is None:
        return _filling(rows, clear, area)
    behind = _beside(rows, 1, between)
    whole = [row for row in rows if len(row) == columns]
    x, y = area.middle
    found = []
    for row, along in zip(rows, behind, strict=True):
        taken = list(zip(*whole, strict=True)) if len(row) == columns else [(one,) for one in row]
        found += [(x + across, y + along) for across in _beside(taken, 0, between)]
    return tuple(found)


def _filling(rows: Sequence[Sequence[Shape]], clear: float, area: Area) -> tuple[Point, ...]:
    """The same where all are as far from one another as the floor allows."""
    places = [point for row in rows for one in row for point in one]
    wide, deep = (max(2 * abs(point[axis]) for point in places) for axis in (0, 1))
    across = max(area.width / len(rows[0]), wide + clear)
    along = max(area.depth / len(rows), deep + clear)
    x, y = area.middle
    return tuple(
        (x + (column - (len(row) - 1) / 2) * across, y + (n - (len(rows) - 1) / 2) * along)
        for n, row in enumerate(rows)
        for column in range(len(row))
    )


def _beside(lines: Sequence[Sequence[Shape]], axis: int, between: float) -> tuple[float, ...]:
    """Where lines of groups lie along an axis, so many metres between them, round the middle."""
    least = [min(point[axis] for one in line for point in one) for line in lines]
    most = [max(point[axis] for one in line for point in one) for line in lines]
    found = [0.0]
    for (_, end), (start, _) in pairwise(zip(least, most, strict=True)):
        found.append(found[-1] + end + between - start)
    middle = (least[0] + found[-1] + most[-1]) / 2
    return tuple(one - middle for one in found)
