"""The spots of a team: laid for the largest team, so that each team stands on the same ones.

A smaller team leaves the last spots empty. A group of one more or one fewer than most takes the
last spots of its team, in its own shape where a usual group would stand; a team with one that is
larger or smaller than that, or has its own end of a row, stands as it needs to.
`site_overrides/sums/floor-on-spots.js` does the same for the class and the hall of the day.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from build_tools.body.ages import AtAge
from build_tools.model.dance import Standing
from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import SIDES, Area, Point, turned
from build_tools.paths.in_columns import rows_of_a_class
from build_tools.paths.places import Slots, dealt, each_its_own, own_shape, slots
from build_tools.paths.starting import by_dancer, takes_of

_CLOSING_UP = ("circle", "semicircle", "horseshoe", "V", "cluster")
"""What a whole class makes and closes where fewer dance, so that nobody keeps a spot."""


def has_spots(standing: Standing, sizes: Sequence[int]) -> bool:
    """Whether groups of `sizes` that stand so have spots that stay where fewer dance."""
    own = each_its_own(standing, tuple(sizes))
    return standing.formation != "scattered" and (own or standing.formation not in _CLOSING_UP)


def on_spots(
    standing: Standing,
    together: Together,
    size: int,
    many: int,
    here: Sequence[Point],
    area: Area,
    body: AtAge,
    *,
    as_a_class: bool = False,
) -> tuple[tuple[Point, ...], Slots]:
    """Each dancer's place on the spots of `many` groups of `size`, and these places.

    `here` is where everybody is, for short ways; empty at the very start. `as_a_class` a team
    is as deep as a class, and groups of other sizes stand first and not on the last spots.
    """
    sizes = [len(group) for group in together]
    if not as_a_class:
        sizes.sort(key=lambda one: (one != size, one))
    standing, free = _as_deep(standing, size, many) if as_a_class else (standing, True)
    placed = standing.larger_groups is not None and standing.third is None
    if any(abs(one - size) > 1 or (placed and one > size) for one in sizes):
        laid = slots(standing, tuple(sizes), area, body, team=free)
        groups = laid.groups
    elif each_its_own(standing, tuple(sizes)):
        laid = slots(standing, (size,) * max(many, len(sizes)), area, body, team=free)
        spots = zip(sizes, laid.groups, strict=False)
        groups = tuple(in_spot(standing, one, spot, body) for one, spot in spots)
    else:
        laid = slots(standing, (1,) * max(many * size, sum(sizes)), area, body, team=free)
        groups = dealt([place for spot in laid.groups for place in spot], sizes)
    found = Slots(groups, laid.drawn_closer, laid.unsaid)
    return by_dancer(groups, together, takes_of(found, together, here)), found


def _as_deep(standing: Standing, size: int, many: int) -> tuple[Standing, bool]:
    """How so many groups stand in as many rows as a class; else where most floor is left free."""
    if standing.columns is None:
        return standing, True
    columns = -(-many // rows_of_a_class(standing.columns, size))
    return (standing, True) if columns < 2 else (replace(standing, columns=columns), False)


def in_spot(
    standing: Standing, many: int, spot: tuple[Point, ...], body: AtAge
) -> tuple[Point, ...]:
    """So many dancers where a usual group has `spot`, their first row level with its own."""
    if many == len(spot):
        return spot
    quarters = round(SIDES.get(standing.facing, 0.0) / 90)
    facing = [turned(point, -quarters) for point in spot]
    inside = own_shape(standing, many, len(spot), body)
    across = (min(x for x, _ in facing) + max(x for x, _ in facing)) / 2
    front = min(y for _, y in facing) - min(y for _, y in inside)
    return tuple(turned((x + across, y + front), quarters) for x, y in inside)
