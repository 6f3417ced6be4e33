"""Where a class stands: formation, groups and distances as places in a hall.

What a unit does not say is drawn in the usual way, and named in `unsaid`, so that it can be asked.
Where a hall is too small for what is said, the whole is drawn closer until it fits. Groups keep
clear of one another, and who face another side than the front stand as if that were the front.
`site_overrides/sums/floor-places.js` does the same for the class and the hall of the day.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from build_tools.body.ages import AtAge
from build_tools.model.dance import Standing
from build_tools.paths.floor_left import margin, slack
from build_tools.paths.hall import SIDES, Area, Point, fine, turned
from build_tools.paths.horseshoe import along_walls
from build_tools.paths.in_columns import columns_tried, in_columns
from build_tools.paths.scatter import nearest_two, scattered, spaced_out
from build_tools.paths.shapes_in_class import (
    USUAL_APART,
    deepest_last,
    larger_at,
    last_row_beside,
    shape_in_class,
    stood_level,
)
from build_tools.paths.within_group import shape

_OWN_SHAPE = {
    **{one: one for one in ("line", "two lines", "circle", "semicircle", "horseshoe", "V")},
    "cluster": "cluster",
    "rows": "line",
    "file": "one behind another",
}
"""The shape a formation gives to dancers who make it together."""
_ONE_FOR_ALL = ("line", "two lines", "file", "circle", "semicircle", "horseshoe", "V", "cluster")
"""Formations that the whole class makes where nothing says that each group makes its own."""
FITS = 0.9
"""What is drawn closer than that stands no more as the unit says; a class finds a tenth by itself,
common practice, no source."""
_HALVINGS = 24
"""How often the largest shape that keeps groups clear is looked for by halves."""


@dataclass(frozen=True, slots=True)
class Slots:
    """Places for groups: those of each group in the order of its places, in metres.

    `drawn_closer` is 1, or by how much everything had to be drawn together to fit the hall.
    """

    groups: tuple[tuple[Point, ...], ...]
    drawn_closer: float
    unsaid: tuple[str, ...]
    """Fields of the standing that are not said and would tell."""


@lru_cache(maxsize=256)
def slots(
    standing: Standing, sizes: tuple[int, ...], area: Area, body: AtAge, *, team: bool = False
) -> Slots:
    """Places in `area` for groups of `sizes` that stand so.

    A `team` stands in the columns that leave most floor round it: a dance names those of a class.
    """
    quarters = round(SIDES.get(standing.facing, 0.0) / 90)
    found = _facing_front(standing, sizes, area.turned(-quarters), body, team)
    if quarters:
        groups = tuple(tuple(turned(point, quarters) for point in group) for group in found.groups)
        found = replace(found, groups=groups)
    marked = standing.formation != "scattered" and any(side == "front" for side, _ in standing.free)
    return _at_its_mark(found, area.front) if marked else found


def _at_its_mark(found: Slots, front: float) -> Slots:
    """The same with the first row where the dance has it from the front wall."""
    nearer = min(y for group in found.groups for _, y in group) - front
    groups = tuple(tuple((x, y - nearer) for x, y in group) for group in found.groups)
    return replace(found, groups=groups)


def own_shape(standing: Standing, size: int, usual: int, body: AtAge) -> tuple[Point, ...]:
    """The shape of a group of `size` among such of a `usual` size, as if the front were ahead."""
    between = _metres(None if standing.apart is None else float(standing.apart), body)
    kind = kind_of(standing, (usual, usual))
    return shape_in_class(kind, size, (usual,), between, body, standing.third)


def _facing_front(
    standing: Standing, sizes: tuple[int, ...], area: Area, body: AtAge, team: bool
) -> Slots:
    apart = float(standing.apart) if standing.apart is not None else None
    unsaid = () if apart is not None else ("apart",)
    if each_its_own(standing, sizes):
        between = _metres(apart, body)
        kind = kind_of(standing, sizes)
        inside = stood_level(
            kind,
            [shape_in_class(kind, size, sizes, between, body, standing.third) for size in sizes],
        )
        told = standing.within or standing.formation in (*_ONE_FOR_ALL, "rows")
        more = () if told else ("within",)
        return _of_groups(standing, inside, area, body, (*unsaid, *more), between, kind, team)
    dancers = sum(sizes)
    if standing.formation == "scattered":
        if standing.clusters:
            loose = _in_clusters(standing.clusters, dancers, _metres(apart, body), area)
            return replace(loose, groups=dealt(_points(loose), sizes))
        near = None if apart is None else apart * body.step
        points, closer = spaced_out(scattered(dancers, area), near, area)
        return Slots(dealt(points, sizes), closer, ())
    if standing.formation in ("rows", "pairs", "small groups"):
        return _of_groups(standing, [((0.0, 0.0),)] * dancers, area, body, unsaid, 0.0)
    kind = _OWN_SHAPE[standing.formation]
    if kind == "horseshoe":
        points, closer = along_walls(dancers, None if apart is None else apart * body.step, area)
        return Slots(dealt(points, sizes), closer, ())
    points, closer = _fitted(shape(kind, dancers, _for_all(kind, dancers, apart, area, body)), area)
    return Slots(dealt(points, sizes), closer, unsaid)


def each_its_own(standing: Standing, sizes: tuple[int, ...]) -> bool:
    """Whether each group makes a shape of its own, or the class one together."""
    if max(sizes, default=1) == 1:
        return False
    if standing.formation in ("pairs", "small groups", "rows"):
        return True
    if standing.formation == "scattered":
        return standing.within is not None or standing.apart is not None
    return bool(standing.within or standing.columns or standing.groups_apart is not None)


def kind_of(standing: Standing, sizes: tuple[int, ...]) -> str:
    """The shape that a group makes."""
    if standing.within is not None:
        return standing.within
    if standing.formation in _OWN_SHAPE:
        return _OWN_SHAPE[standing.formation]
    if sizes.count(2) * 2 >= len(sizes):
        return "face to face" if standing.facing in ("partner", "centre") else "side by side"
    return "square" if sizes.count(4) * 2 >= len(sizes) else "circle"


def _metres(apart: float | None, body: AtAge) -> float:
    return (USUAL_APART if apart is None else apart) * body.step


def _for_all(kind: str, dancers: int, apart: float | None, area: Area, body: AtAge) -> float:
    """Metres between neighbours in a shape of the whole class: as said, or as the hall allows."""
    if apart is not None:
        return apart * body.step
    if kind == "cluster":
        return body.step
    across = shape(kind, dancers, 1.0)
    wide = max(x for x, _ in across) - min(x for x, _ in across)
    deep = max(y for _, y in across) - min(y for _, y in across)
    room = min(area.width / wide if wide else math.inf, area.depth / deep if deep else math.inf)
    return min(room, USUAL_APART * body.step)


def _of_groups(
    standing: Standing,
    inside: Sequence[tuple[Point, ...]],
    area: Area,
    body: AtAge,
    unsaid: tuple[str, ...],
    clear: float,
    kind: str = "",
    team: bool = False,
) -> Slots:
    """Groups, each in its shape, scattered or in columns, `clear` metres from one another."""
    many = len(inside)
    if standing.formation == "scattered":
        return _apart(inside, clear, area, unsaid)
    between = None if standing.groups_apart is None else float(standing.groups_apart) * body.step
    asked = () if between is not None or many == 1 else ("groups_apart",)
    if standing.columns is not None:
        tried = columns_tried(standing.columns, [len(one) for one in inside])
    else:
        tried = sorted({-(-many // rows) for rows in range(1, many + 1)})
    unsaid = (*unsaid, *asked)
    tried_in = [_in_columns(inside, k, between, clear, area, unsaid, kind, standing) for k in tried]
    if standing.columns is not None:
        free = [margin(_points(one), area) if team else 0.0 for one in tried_in]
        return tried_in[
            max(range(len(tried_in)), key=lambda n: (fine(tried_in[n].drawn_closer), free[n]))
        ]
    return max(tried_in, key=lambda one: (nearest_two(_points(one)), slack(_points(one), area)))


def _points(one: Slots) -> tuple[Point, ...]:
    return tuple(point for group in one.groups for point in group)


def _in_columns(
    inside: Sequence[tuple[Point, ...]],
    columns: int,
    between: float | None,
    clear: float,
    area: Area,
    unsaid: tuple[str, ...],
    kind: str,
    standing: Standing,
) -> Slots:
    """Groups row by row from the front; larger ones at their end of a row, as the unit says.

    Where it does not say, what goes furthest back stands in the last row.
    """
    larger = standing.larger_groups
    order = list(range(len(inside)))
    if larger is not None:
        order = larger_at(larger, [len(one) for one in inside], columns)
    elif columns < len(inside):
        order = deepest_last(kind, inside, standing.third)
    ordered = [inside[n] for n in order]
    middles = in_columns(ordered, columns, between, clear, area, last_row_beside(larger))
    found = laid(ordered, middles, area, unsaid)
    return replace(found, groups=tuple(found.groups[order.index(n)] for n in range(len(order))))


def _apart(
    inside: Sequence[tuple[Point, ...]], clear: float, area: Area, unsaid: tuple[str, ...]
) -> Slots:
    """Scattered groups, their shapes as large as they may be and still keep clear."""
    wide = max((2 * abs(x) for one in inside for x, _ in one), default=0.0)
    deep = max((2 * abs(y) for one in inside for _, y in one), default=0.0)
    most = max((math.hypot(x, y) for one in inside for x, y in one), default=0.0)

    def middles(part: float) -> tuple[Point, ...]:
        return scattered(len(inside), _less(area, wide / 2 * part, deep / 2 * part))

    def keeps_clear(part: float) -> bool:
        fits = wide * part <= area.width and deep * part <= area.depth
        return fits and nearest_two(middles(part)) >= (2 * most + clear) * part

    low, high = (1.0, 1.0) if keeps_clear(1.0) else (0.0, 1.0)
    for _ in range(_HALVINGS if low < high else 0):
        middle = (low + high) / 2
        low, high = (middle, high) if keeps_clear(middle) else (low, middle)
    drawn = [tuple((x * low, y * low) for x, y in one) for one in inside]
    return replace(laid(drawn, middles(low), area, unsaid), drawn_closer=low)


def _in_clusters(many: int, dancers: int, between: float, area: Area) -> Slots:
    """Dancers in loose clusters of nearly a size, twice as far from one another as inside."""
    sizes = [(dancers + n) // many for n in range(many)]
    inside = [shape("cluster", size, between) for size in sizes if size]
    return _apart(inside, 2 * between, area, ())


def _less(area: Area, across: float, along: float) -> Area:
    """An area less so much on each side, nothing at least."""
    across, along = min(across, area.width / 2), min(along, area.depth / 2)
    return Area(area.left + across, area.front + along, area.right - across, area.back - along)


def laid(
    inside: Sequence[tuple[Point, ...]],
    middles: Sequence[Point],
    area: Area,
    unsaid: tuple[str, ...],
) -> Slots:
    """Groups of these shapes round these middles, drawn closer where they do not fit."""
    points = [
        (middle[0] + x, middle[1] + y)
        for group, middle in zip(inside, middles, strict=True)
        for x, y in group
    ]
    fitted, closer = _fitted(points, area, placed=True)
    return Slots(dealt(fitted, [len(group) for group in inside]), closer, unsaid)


def _fitted(
    points: Sequence[Point], area: Area, *, placed: bool = False
) -> tuple[tuple[Point, ...], float]:
    """The points in the middle of `area`, drawn closer where they do not fit; by how much."""
    x0, y0 = area.middle
    around = (x0, y0) if placed else (0.0, 0.0)
    wide = max((abs(x - around[0]) for x, _ in points), default=0.0)
    deep = max((abs(y - around[1]) for _, y in points), default=0.0)
    across = min(1.0, area.width / 2 / wide) if wide else 1.0
    along = min(1.0, area.depth / 2 / deep) if deep else 1.0
    found = tuple((x0 + (x - around[0]) * across, y0 + (y - around[1]) * along) for x, y in points)
    return found, min(across, along)


def dealt(points: Sequence[Point], sizes: Sequence[int]) -> tuple[tuple[Point, ...], ...]:
    """Places one after another to groups of these sizes."""
    found, first = [], 0
    for size in sizes:
        found.append(tuple(points[first : first + size]))
        first += size
    return tuple(found)
