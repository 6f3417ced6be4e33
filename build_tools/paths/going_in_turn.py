"""Who waits for whom on the way to new places, where the groups of a column go through one another.

All go straight and take all the time there is, unless two would meet. Then those who stand in front
go first where that lets everybody by, and those behind them wait.
`site_overrides/sums/floor-columns.js` does the same for the class and the hall of the day.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from itertools import combinations

from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import Point, fine, metres
from build_tools.paths.legs import BEND

Way = tuple[Point, Point]
Times = tuple[float, float]
"""From which part of the time to which somebody goes."""
Nearest = Callable[[int, Times, int, Times], float]
"""Metres between two, by their numbers, who go in these times, where they are nearest."""
_FIRST, _ALL, _LAST = (0.0, 0.5), (0.0, 1.0), (0.5, 1.0)
_CLEAR = (0.6, 0.5, 0.4)
"""Metres from the middle of one to that of another who pass and don't touch, shoulders being 0.3
metres wide at that age; as many as may be, common practice, no source."""
_MOMENTS = 16
"""At so many moments, and at the start, it is asked who is where."""


def times_in_columns(
    cells: Sequence[tuple[int, int]],
    together: Together,
    here: Sequence[Point],
    places: Sequence[Point],
) -> dict[int, Times]:
    """When each of those goes, straight, who would meet somebody of their column on the way.

    `cells` are the column and row of each group; the others take a slight curve and all the time.
    """
    found: dict[int, Times] = {}
    for column in sorted({column for column, _ in cells}):
        mates = sorted(
            (row, dancer)
            for (at, row), group in zip(cells, together, strict=True)
            for dancer in group
            if at == column
        )
        ways = [(here[dancer], places[dancer]) for _, dancer in mates]
        times = times_to_go(ways, [row for row, _ in mates])
        found.update(zip((dancer for _, dancer in mates), times, strict=False))
    return found


def times_to_go(ways: Sequence[Way], rows: Sequence[int]) -> tuple[Times, ...]:
    """When each goes their way, `rows` being those in which they stand, from the front.

    None are told where all go clear of one another as they would anyway.
    """
    if _clear_on_curves(ways):
        return ()
    nearest = _nearest(ways)
    for clear in _CLEAR:
        found: list[Times] = []
        if _next(nearest, rows, clear, found):
            return tuple(found)
    return ()


def _next(nearest: Nearest, rows: Sequence[int], clear: float, found: list[Times]) -> bool:
    """Whether the others can go clear of those who were `found` a time; theirs are added."""
    now = len(found)
    if now == len(rows):
        return True
    for times in (_FIRST, _ALL, _LAST) if rows[now] == 0 else (_LAST, _ALL, _FIRST):
        if all(nearest(now, times, n, other) >= clear for n, other in enumerate(found)):
            found.append(times)
            if _next(nearest, rows, clear, found):
                return True
            found.pop()
    return False


def _clear_on_curves(ways: Sequence[Way]) -> bool:
    """Whether all go clear of one another in slight curves and in all the time."""
    gone = [[_bent(way, n / _MOMENTS) for n in range(_MOMENTS + 1)] for way in ways]
    return all(
        fine(metres(a, b)) >= _CLEAR[0]
        for one, other in combinations(gone, 2)
        for a, b in zip(one, other, strict=True)
    )


def _bent(way: Way, part: float) -> Point:
    (x0, y0), (x1, y1) = way
    dx, dy = x1 - x0, y1 - y0
    out = BEND / 2 * 4 * part * (1 - part)
    return (x0 + dx * part + dy * out, y0 + dy * part - dx * out)


def _nearest(ways: Sequence[Way]) -> Nearest:
    """How near any two come: many orders are tried, and each asks of the same two again."""
    gone = [
        {t: [_at(way, t, n / _MOMENTS) for n in range(_MOMENTS + 1)] for t in (_FIRST, _ALL, _LAST)}
        for way in ways
    ]

    @cache
    def nearest(one: int, times: Times, other: int, others: Times) -> float:
        both = zip(gone[one][times], gone[other][others], strict=True)
        return min(fine(metres(a, b)) for a, b in both)

    return nearest


def _at(way: Way, times: Times, part: float) -> Point:
    """Where somebody is who goes between those times."""
    (x0, y0), (x1, y1) = way
    gone = min(1.0, max(0.0, (part - times[0]) / (times[1] - times[0])))
    return (x0 + (x1 - x0) * gone, y0 + (y1 - y0) * gone)
