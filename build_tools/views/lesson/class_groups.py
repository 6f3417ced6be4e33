"""A class in groups as near as can be to the size the author prefers, none of them torn apart.

A page's script does the same sum for the class of the day, in site_overrides/sums/class-groups.js.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

USUAL_CLASS = 30
"""Pupils in a class where nothing else is said; common practice, no source."""
GROUP_SIZES = {"alone": 1, "pairs": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6}


def class_groups(groupings: Sequence[str], grouping: str, pupils: int) -> tuple[int, ...]:
    """The sizes of the groups that `grouping` makes of a class, the larger first.

    `groupings` are those of all the lesson's steps: where pairs join to make fours, the fours are
    made of whole pairs.
    """
    size = group_size(grouping, pupils)
    joining = _joined_from(groupings, grouping)
    if joining is None:
        return groups(pupils, size)
    return _joined(groups(pupils, joining), joining, size)


def group_size(grouping: str, pupils: int) -> int:
    """How many pupils a step's grouping puts together in a class of `pupils`."""
    if grouping == "whole class":
        return max(1, pupils)
    if grouping == "half class":
        return max(1, -(-pupils // 2))
    return GROUP_SIZES[grouping]


@lru_cache(maxsize=512)
def groups(pupils: int, size: int) -> tuple[int, ...]:
    """The sizes of groups newly made, the larger first; together they are all the pupils.

    The sizes differ by one at most. Among those the groups whose sizes together are nearest to
    `size` are taken, smaller groups in a tie. Nobody is alone unless `size` is 1, or the class.
    """
    if pupils < 1:
        return ()
    most = pupils if size == 1 else max(1, pupils // 2)
    tried = (_even(pupils, count) for count in range(most, 0, -1))
    return min(tried, key=lambda sizes: _off(sizes, size))


def _joined_from(groupings: Sequence[str], grouping: str) -> int | None:
    """The size of what joins to make `grouping`: 2 for pairs; None where it is newly made."""
    last: int | None = None
    for one in groupings:
        size = GROUP_SIZES.get(one)
        if size is None or one == "alone":
            continue
        if one == grouping and last is not None and last < size and size % last == 0:
            return last
        last = size
    return None


def _joined(parts: Sequence[int], usual: int, size: int) -> tuple[int, ...]:
    """Groups of `size` made of whole `parts`, of which one at most is not of the `usual` size.

    Nearest to `size` together, then the worst of them nearest, then the smaller groups.
    """
    odd = sum(part for part in parts if part != usual)
    rest = sum(part == usual for part in parts)
    if not odd:
        return _together(rest, usual, size)
    tried = (
        tuple(sorted((odd + beside * usual, *_together(rest - beside, usual, size)), reverse=True))
        for beside in range(rest + 1)
    )
    return min(
        tried,
        key=lambda sizes: (
            _off(sizes, size),
            max(abs(one - size) for one in sizes),
            -len(sizes),
        ),
    )


def _together(parts: int, usual: int, size: int) -> tuple[int, ...]:
    return tuple(count * usual for count in groups(parts, size // usual))


def _even(pupils: int, count: int) -> tuple[int, ...]:
    least, larger = divmod(pupils, count)
    return (least + 1,) * larger + (least,) * (count - larger)


def _off(sizes: Sequence[int], size: int) -> int:
    return sum(abs(one - size) for one in sizes)
