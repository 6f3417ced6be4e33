"""A lesson's grouping as groups of the class, pairs and threes joining whole.

A page's script does the same sum for the class of the day, in site_overrides/sums/class-groups.js.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.movement.class_groups import groups, joined

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
    return joined(groups(pupils, joining), joining, size)


def group_size(grouping: str, pupils: int) -> int:
    """How many pupils a step's grouping puts together in a class of `pupils`."""
    if grouping == "whole class":
        return max(1, pupils)
    if grouping == "half class":
        return max(1, -(-pupils // 2))
    return GROUP_SIZES[grouping]


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
