"""A class in groups as near as can be to a size, and groups that join whole.

Lessons say these groups in words, the dance from above stands in them, and a page's script does
the same sum for the class of the day, in site_overrides/sums/class-groups.js.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

USUAL_CLASS = 30
"""Pupils in a class where nothing else is said; common practice, no source."""


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


def joined(parts: Sequence[int], usual: int, size: int) -> tuple[int, ...]:
    """Groups of `size` made of whole `parts`, of which one at most is not of the `usual` size.

    Nearest to `size` together, then the worst of them nearest, then the smaller groups; the
    larger first.
    """
    return tuple(sorted(joined_in_order(parts, usual, size), reverse=True))


def joined_in_order(parts: Sequence[int], usual: int, size: int) -> tuple[int, ...]:
    """The same groups, the one with the odd part in it first, then the larger first."""
    odd = sum(part for part in parts if part != usual)
    rest = sum(part == usual for part in parts)
    if not odd:
        return _together(rest, usual, size)
    tried = (
        (odd + beside * usual, *_together(rest - beside, usual, size)) for beside in range(rest + 1)
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
