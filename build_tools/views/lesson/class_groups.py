"""A class in groups as near as can be to the size the author prefers."""

from __future__ import annotations

from build_tools.views.lesson.showing import GROUP_SIZES


def group_size(grouping: str, pupils: int) -> int:
    """How many pupils a step's grouping puts together in a class of `pupils`."""
    if grouping == "whole class":
        return max(1, pupils)
    if grouping == "half class":
        return max(1, -(-pupils // 2))
    return GROUP_SIZES[grouping]


def groups(pupils: int, size: int) -> tuple[int, ...]:
    """The sizes of the groups, the larger first; together they are all the pupils.

    The sizes differ by one at most. Among those the groups whose sizes together are nearest to
    `size` are taken, smaller groups in a tie. Nobody is alone unless `size` is 1, or the class.
    """
    if pupils < 1:
        return ()
    most = pupils if size == 1 else max(1, pupils // 2)
    best = _even(pupils, most)
    for count in range(most - 1, 0, -1):
        tried = _even(pupils, count)
        if _off(tried, size) < _off(best, size):
            best = tried
    return best


def _even(pupils: int, count: int) -> tuple[int, ...]:
    least, larger = divmod(pupils, count)
    return (least + 1,) * larger + (least,) * (count - larger)


def _off(sizes: tuple[int, ...], size: int) -> int:
    return sum(abs(one - size) for one in sizes)
