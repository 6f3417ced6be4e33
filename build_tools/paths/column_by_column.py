"""Groups of a column that come to stand side by side, and open out behind one another again.

Where a part has twice as many columns as the one before, those who stood one behind the other in a
column make two columns side by side, the front one at the left; where it has half as many, of two
columns the left one is in front. A place where no group stood stays empty.
`site_overrides/sums/floor-columns.js` does the same for the class and the hall of the day.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from build_tools.body.ages import AtAge
from build_tools.model.dance import Dance, Standing
from build_tools.paths.class_in_groups import Together
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import SIDES, Area, Point
from build_tools.paths.in_columns import in_columns
from build_tools.paths.model import Paths
from build_tools.paths.on_spots import in_spot
from build_tools.paths.places import Slots, kind_of, laid
from build_tools.paths.shapes_in_class import USUAL_APART, shape_in_class, stood_level
from build_tools.paths.starting import by_dancer

Cell = tuple[int, int]
"""A column from the left and a row from the front, from 0."""
_ONE = 0.2
"""Metres between two that are in one column, or in one row."""


@dataclass(frozen=True, slots=True)
class Columns:
    """Groups as they stand in columns."""

    said: int
    """How many columns the dance says."""
    together: Together
    cells: tuple[Cell, ...]
    """Where each group stands."""


def columns_of(standing: Standing, together: Together, places: Sequence[Point]) -> Columns | None:
    """Who stands in which column and row; None where that is not said, or they stand otherwise."""
    if standing.columns is None or standing.groups_apart is None or not _to_the_front(standing):
        return None
    across, along = (
        _lines([[places[one][axis] for one in group] for group in together]) for axis in (0, 1)
    )
    cells = tuple(zip(across, along, strict=True))
    return Columns(standing.columns, together, cells) if len(set(cells)) == len(cells) else None


def _to_the_front(standing: Standing) -> bool:
    return SIDES.get(standing.facing, 0.0) == 0 and not standing.free


def _lines(spans: Sequence[Sequence[float]]) -> list[int]:
    """The line in which each lies, lines being apart from one another along an axis."""
    found = [0] * len(spans)
    line, end = -1, float("-inf")
    for n in sorted(range(len(spans)), key=lambda n: min(spans[n])):
        if min(spans[n]) > end + _ONE:
            line += 1
        end = max(end, *spans[n])
        found[n] = line
    return found


def dealt_anew(before: Columns | None, standing: Standing, together: Together) -> Columns | None:
    """Where the same groups come to stand; None where columns are no columns of before."""
    if before is None or before.together != together or not _to_the_front(standing):
        return None
    said = standing.columns
    if said is None or standing.groups_apart is None:
        return None
    rows = 1 + max(row for _, row in before.cells)
    wider, fewer = _times(said, before.said), _times(before.said, said)
    if wider and rows == wider:
        return Columns(said, together, tuple((c * wider + r, 0) for c, r in before.cells))
    if fewer and rows == 1:
        return Columns(said, together, tuple((c // fewer, c % fewer) for c, _ in before.cells))
    return None


def keeps_columns(dance: Dance) -> bool:
    """Whether groups of a column come side by side in a later part: then they belong together."""
    sections = [dance.sections[letter] for letter in dance.form]
    return any(
        after.start.spot == "new place"
        and _times(after.start.columns or 0, before.start.columns or 0) > 0
        and groups_of(after).size == groups_of(before).size
        for before, after in pairwise(sections)
    )


def by_column(paths: Paths) -> tuple[tuple[int, ...], ...]:
    """The sizes of the groups of each column in which a class is put down, from the left."""
    first = paths.stretches[0]
    if first.section is None or first.start is None or not keeps_columns(paths.dance):
        return ()
    found = columns_of(first.section.start, first.together, first.start.wanted)
    if found is None:
        return ()
    return tuple(
        tuple(
            len(group)
            for (at, _), group in sorted(zip(found.cells, first.together, strict=True))
            if at == column
        )
        for column in range(1 + max(at for at, _ in found.cells))
    )


def ways_cross(before: Columns | None, now: Columns) -> tuple[Cell, ...]:
    """The column and the row of each group while rows stand behind one another."""
    deep = max(row for _, row in now.cells) > 0
    return now.cells if deep or before is None else before.cells


def _times(many: int, few: int) -> int:
    """How many times as many, where that is more than once and whole; else 0."""
    return many // few if many > few > 0 and many % few == 0 else 0


def dealt_places(
    standing: Standing, columns: Columns, usual: int, team: int, area: Area, body: AtAge
) -> tuple[tuple[Point, ...], Slots]:
    """Each dancer's place in these columns; `team` is for how many groups a team has spots."""
    found = _in_cells(standing, columns, usual, area, body, team)
    together = columns.together
    if team:
        spots = zip(together, found.groups, strict=True)
        groups = (in_spot(standing, len(one), spot, body) for one, spot in spots)
        found = replace(found, groups=tuple(groups))
    return by_dancer(found.groups, together, range(len(together))), found


def _in_cells(
    standing: Standing,
    columns: Columns,
    usual: int,
    area: Area,
    body: AtAge,
    least: int,
) -> Slots:
    """The places of the groups, in their order, with room for `usual` where nobody stands.

    There are places for `least` groups at least, so that a smaller team stands on the same spots.
    """
    rows = 1 + max(row for _, row in columns.cells)
    wide = max(1 + max(column for column, _ in columns.cells), -(-least // rows))
    sizes = [usual] * (wide * rows)
    number = [row * wide + column for column, row in columns.cells]
    if not least:
        for n, group in zip(number, columns.together, strict=True):
            sizes[n] = len(group)
    between = float(standing.apart or USUAL_APART) * body.step
    kind = kind_of(standing, tuple(sizes))
    inside = stood_level(
        kind,
        [shape_in_class(kind, one, tuple(sizes), between, body, standing.third) for one in sizes],
    )
    clear = float(standing.groups_apart or 0) * body.step
    found = laid(inside, in_columns(inside, wide, clear, between, area), area, ())
    return replace(found, groups=tuple(found.groups[n] for n in number))
