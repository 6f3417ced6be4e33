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
    rows = rows_of_a_class(said, usual)
    most = min(said, many)
    return [most, *(k for k in range(most - 1, 0, -1) if math.ceil(many / k) <= rows)]


def rows_of_a_class(columns: int, size: int) -> int:
    """In how many rows groups of a size stand in a usual class."""
    return math.ceil(math.ceil(USUAL_CLASS / size) / columns)


def in_columns(
    inside: Sequence[Shape],
    columns: int,
    between: float | None,
    clear: float,
    area: Area,
    last: str | None = None,
) -> tuple[Point, ...]:
    """The middles of groups, row by row from the front.

    A last row that is not full is centred, or stands at its `last` end, left or right. `between`
    are the metres between groups. Where those are not said the groups fill the floor, `clear`
    metres apart at least. Else a row is as deep as its deepest group and a column as wide as its
    widest, so that one larger group takes no more floor than it stands on.
    """
    rows = [inside[first : first + columns] for first in range(0, len(inside), columns)]
    if between is None:
        return _filling(rows, clear, area, last)
    whole = [row for row in rows if len(row) == columns]
    moved = None if last is None or len(whole) == len(rows) else _taken(rows, last)
    behind = _behind(rows, between, moved)
    lines = [[one[n] for one in whole] for n in range(columns)] if whole else []
    if moved is not None:
        for n, group in zip(moved, rows[-1], strict=True):
            lines[n].append(group)
    x, y = area.middle
    found = []
    for row, along in zip(rows, behind, strict=True):
        if len(row) == columns:
            places = _beside(lines, 0, between)
        elif moved is None:
            places = _beside([(one,) for one in row], 0, between)
        else:
            every = _beside(lines, 0, between)
            places = tuple(every[n] for n in moved)
        found += [(x + across, y + along) for across in places]
    return tuple(found)


def _taken(rows: Sequence[Sequence[Shape]], last: str) -> range:
    """The columns in which the groups of the last row stand, at its left or its right end."""
    columns, many = len(rows[0]), len(rows[-1])
    return range(many) if last == "left" else range(columns - many, columns)


def _behind(
    rows: Sequence[Sequence[Shape]], between: float, moved: range | None
) -> tuple[float, ...]:
    """Where rows lie from front to back; one that has moved along is behind its columns alone."""
    if moved is None or len(rows) == 1:
        return _beside(rows, 1, between)
    before = [*rows[:-2], [rows[-2][n] for n in moved], rows[-1]]
    found = _beside(before, 1, between)
    ends = [
        [along + point[1] for one in row for point in one]
        for row, along in zip(rows, found, strict=True)
    ]
    middle = (min(map(min, ends)) + max(map(max, ends))) / 2
    return tuple(along - middle for along in found)


def _filling(
    rows: Sequence[Sequence[Shape]], clear: float, area: Area, last: str | None
) -> tuple[Point, ...]:
    """The same where all are as far from one another as the floor allows."""
    places = [point for row in rows for one in row for point in one]
    wide, deep = (max(2 * abs(point[axis]) for point in places) for axis in (0, 1))
    across = max(area.width / len(rows[0]), wide + clear)
    along = max(area.depth / len(rows), deep + clear)
    x, y = area.middle
    found = []
    for n, row in enumerate(rows):
        aside = (len(rows[0]) - len(row)) / 2 * across
        aside *= 0 if last is None else 1 if last == "right" else -1
        found += [
            (
                x + aside + (column - (len(row) - 1) / 2) * across,
                y + (n - (len(rows) - 1) / 2) * along,
            )
            for column in range(len(row))
        ]
    return tuple(found)


def _beside(lines: Sequence[Sequence[Shape]], axis: int, between: float) -> tuple[float, ...]:
    """Where lines of groups lie along an axis, so many metres between them, round the middle."""
    least = [min(point[axis] for one in line for point in one) for line in lines]
    most = [max(point[axis] for one in line for point in one) for line in lines]
    found = [0.0]
    for (_, end), (start, _) in pairwise(zip(least, most, strict=True)):
        found.append(found[-1] + end + between - start)
    middle = (least[0] + found[-1] + most[-1]) / 2
    return tuple(one - middle for one in found)
