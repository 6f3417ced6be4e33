"""Who is with whom: the class in groups, the same dancers together through the whole dance.

Dancers are numbered from 0, and neighbours in number are together: where a dance has pairs and
fours, a four is two pairs. Sizes are those that lessons say (`movement/class_groups.py`).
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from build_tools.movement.class_groups import groups, joined_in_order

Together = tuple[tuple[int, ...], ...]
"""The dancers of each group, in the order of their places in it."""


def class_in_groups(pupils: int, size: int, sizes: Iterable[int]) -> Together:
    """The class in groups of `size`; `sizes` are all that the dance has, 1 for alone.

    A group is made of whole smaller groups of the dance where its size is a multiple of theirs.
    """
    return _numbered(_sizes(pupils, size, tuple(sorted(set(sizes)))))


def _sizes(pupils: int, size: int, sizes: tuple[int, ...]) -> tuple[int, ...]:
    smaller = [one for one in sizes if 1 < one < size and size % one == 0]
    if not smaller:
        return tuple(sorted(groups(pupils, size), key=lambda one: one == size))
    usual = smaller[-1]
    return joined_in_order(_sizes(pupils, usual, sizes), usual, size)


@lru_cache(maxsize=256)
def _numbered(sizes: tuple[int, ...]) -> Together:
    found, first = [], 0
    for size in sizes:
        found.append(tuple(range(first, first + size)))
        first += size
    return tuple(found)
