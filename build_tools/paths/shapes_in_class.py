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
_STOOD_LEVEL = ("one behind another", "file", "face to face", "back to back", "semicircle")
"""Shapes that go back from the front, in which the first of one group stands beside the next's,
and of a curve the ends; the deepest stand last, where no group is behind them."""


def shape_in_class(
    kind: str, size: int, sizes: tuple[int, ...], between: float, body: AtAge
) -> tuple[Point, ...]:
    """A group's shape; an odd one among pairs stands near those whom they dance beside.

    Partners may be seven steps apart, and nobody stands seven steps behind the one they go with:
    a third is two steps behind the first, a fifth half way between the first and the third.
    """
    near = USUAL_APART * body.step
    if kind not in ("face to face", "back to back") or between <= near:
        return shape(kind, size, between)
    if size == 3 and 2 in sizes:
        return shape(kind, size, between, near)
    if size == 5 and 4 in sizes and between >= 2 * near:
        four = shape(kind, 4, between)
        return (*four, (four[0][0], 0.0))
    return shape(kind, size, between)


def deepest_last(kind: str, inside: Sequence[tuple[Point, ...]]) -> list[int]:
    """The groups by their numbers, in the order in which they are laid from the front.

    One that goes further back than most would come near whoever is behind it.
    """
    order = list(range(len(inside)))
    if kind not in _STOOD_LEVEL:
        return order
    sizes = [len(one) for one in inside]
    usual = max(sizes, key=lambda one: (sizes.count(one), one))
    deep = [fine(max(y for _, y in one) - min(y for _, y in one)) for one in inside]
    least = deep[sizes.index(usual)]
    return sorted(order, key=lambda n: max(deep[n], least))


def stood_level(kind: str, inside: list[tuple[Point, ...]]) -> list[tuple[Point, ...]]:
    """Groups of other sizes with their first places level, as teachers stand them, not centred."""
    if kind not in _STOOD_LEVEL:
        return inside
    fronts = [min(y for _, y in one) for one in inside]
    return [
        tuple((x, y - (front - min(fronts))) for x, y in one)
        for one, front in zip(inside, fronts, strict=True)
    ]
