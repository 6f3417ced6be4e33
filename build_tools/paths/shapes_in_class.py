"""The shapes of groups that are not all of one size: how they stand beside and behind one another.

`site_overrides/sums/floor-places.js` does the same for the class of the day.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.body.ages import AtAge
from build_tools.paths.hall import Point, fine
from build_tools.paths.within_group import shape

USUAL_APART = 2
"""Steps between neighbours where a unit does not say; common practice, no source."""
_STOOD_LEVEL = (
    "one behind another",
    "file",
    "face to face",
    "back to back",
    "semicircle",
    "horseshoe",
)
"""Shapes that go back from the front, in which the first of one group stands beside the next's,
and of a curve the ends; the deepest stand last, where no group is behind them."""


def shape_in_class(
    kind: str,
    size: int,
    sizes: tuple[int, ...],
    between: float,
    body: AtAge,
    third: str | None = None,
) -> tuple[Point, ...]:
    """A group's shape; an odd one among pairs stands near those whom they dance beside.

    Partners may be seven steps apart, and nobody stands seven steps behind the one they go with:
    a third is two steps behind the first, a fifth half way between the first and the third. Where
    the dance says so, a `third` is between the other two, two steps behind their middle, or two
    steps behind the first with the second level between them.
    """
    near = USUAL_APART * body.step
    if third is not None and size == 3 and 2 in sizes:
        one, other = shape(kind, 2, between)
        x, y = (one[0] + other[0]) / 2, (one[1] + other[1]) / 2
        if third == "between":
            return (one, (x, y), other)
        if third == "behind the first":
            return ((one[0], y - near / 2), other, (one[0], y + near / 2))
        return (one, other, (x, y + near))
    if kind not in ("face to face", "back to back") or between <= near:
        return shape(kind, size, between)
    if size == 3 and 2 in sizes:
        return shape(kind, size, between, near)
    if size == 5 and 4 in sizes and between >= 2 * near:
        four = shape(kind, 4, between)
        return (*four, (four[0][0], 0.0))
    return shape(kind, size, between)


def deepest_last(
    kind: str, inside: Sequence[tuple[Point, ...]], third: str | None = None
) -> list[int]:
    """The groups by their numbers, in the order in which they are laid from the front.

    One that goes further back than most would come near whoever is behind it.
    """
    order = list(range(len(inside)))
    if kind not in _STOOD_LEVEL and third in (None, "between"):
        return order
    sizes = [len(one) for one in inside]
    usual = max(sizes, key=lambda one: (sizes.count(one), one))
    deep = [fine(max(y for _, y in one) - min(y for _, y in one)) for one in inside]
    least = deep[sizes.index(usual)]
    return sorted(order, key=lambda n: max(deep[n], least))


def larger_at(end: str, sizes: Sequence[int], columns: int) -> list[int]:
    """The groups by their numbers, row by row, those larger than most at that end of their row.

    `end` is the left or the right end of the front or of the back row.
    """
    usual = max(sizes, key=lambda one: (sizes.count(one), one))
    many, last = len(sizes), (len(sizes) - 1) // columns * columns
    row = range(last, many) if end.endswith("back row") else range(min(columns, many))
    kept = list(row) if end.startswith("left") else list(reversed(row))
    kept += [place for place in range(many) if place not in row]
    order = [-1] * many
    for n in sorted(range(many), key=lambda n: (sizes[n] <= usual, n)):
        larger = sizes[n] > usual
        place = kept[0] if larger else min(kept)
        order[place] = n
        kept.remove(place)
    return order


def last_row_beside(larger: str | None) -> str | None:
    """At which end a last row that is not full stands: not behind a larger group in the front row.

    None for in the middle, as usual.
    """
    if larger is None or not larger.endswith("front row"):
        return None
    return "right" if larger.startswith("left") else "left"


def stood_level(kind: str, inside: list[tuple[Point, ...]]) -> list[tuple[Point, ...]]:
    """Groups of other sizes with their first places level, as teachers stand them, not centred."""
    if kind not in _STOOD_LEVEL:
        return inside
    fronts = [min(y for _, y in one) for one in inside]
    return [
        tuple((x, y - (front - min(fronts))) for x, y in one)
        for one, front in zip(inside, fronts, strict=True)
    ]
