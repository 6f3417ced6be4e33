"""A lesson's grouping as groups of the class, pairs and threes joining whole.

A page's script does the same sum for the class of the day, in site_overrides/sums/class-groups.js.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import groups, joined
from build_tools.paths.group_sizes import groups_of

GROUP_SIZES = {"alone": 1, "pairs": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6}


def class_groups(groupings: Sequence[str], grouping: str, pupils: int) -> tuple[int, ...]:
    """The sizes of the groups that `grouping` makes of a class, the larger first.

    `groupings` are those of all the lesson's steps, as `groupings_known` has them: where pairs join
    to make fours, the fours are made of whole pairs.
    """
    size = group_size(grouping, pupils)
    joining = _joined_from(groupings, grouping)
    if joining is None:
        return groups(pupils, size)
    return joined(groups(pupils, joining), joining, size)


def groupings_known(unit: Unit, lesson: Lesson) -> tuple[str, ...]:
    """The groupings of the lesson's steps, after those that earlier lessons made.

    Fours that were two pairs each last week are the same fours today, though no step has pairs;
    and fours that were not are not made of today's pairs.
    """
    return (*made_before(unit, lesson), *(step.grouping for step in lesson.steps))


def made_before(unit: Unit, lesson: Lesson) -> tuple[str, ...]:
    """The groupings of earlier lessons in an order that says which were made by joining.

    What was newly made comes first, the larger first; then what was joined, after its parts.
    """
    found: dict[str, int | None] = {}
    for earlier in unit.lessons:
        groupings = [step.grouping for step in earlier.steps]
        for grouping in groupings if earlier.number < lesson.number else ():
            if grouping in GROUP_SIZES:
                found.setdefault(grouping, _joined_from(groupings, grouping))
    names = {size: name for name, size in GROUP_SIZES.items()}
    new = [one for one, part in found.items() if part is None and one != "alone"]
    return (
        *sorted(new, key=lambda one: -GROUP_SIZES[one]),
        *(name for to, part in found.items() if part for name in (names[part], to)),
    )


def splits_standing_groups(unit: Unit, lesson: Lesson, index: int) -> bool:
    """Whether a step's groups are parts of larger ones that stand: pairs of fours made as fours.

    Nobody is left over by it: who is over is in the five or the three that was made then.
    """
    size = GROUP_SIZES.get(lesson.steps[index].grouping, 1)
    earlier = [one for one in unit.lessons if one.number < lesson.number]
    runs = [[step.grouping for step in one.steps] for one in earlier]
    runs.append([step.grouping for step in lesson.steps[:index]])
    made: dict[str, int | None] = {}
    for groupings in runs:
        for grouping in groupings:
            if grouping in GROUP_SIZES:
                made.setdefault(grouping, _joined_from(groupings, grouping))
    return size > 1 and any(
        part is None and GROUP_SIZES[one] > size and GROUP_SIZES[one] % size == 0
        for one, part in made.items()
    )


def joined_in_lessons(unit: Unit) -> tuple[int, ...]:
    """The sizes of groups that the unit's lessons join to make the groups of its dance.

    Each size is made in the first lesson that groups pupils so: where pairs join to make fours
    there, 2 is among them, and the dance from above has its odd ones where the words put them.
    """
    found: dict[int, int | None] = {}
    for lesson in unit.lessons:
        groupings = [step.grouping for step in lesson.steps]
        for grouping in groupings:
            if grouping in GROUP_SIZES:
                found.setdefault(GROUP_SIZES[grouping], _joined_from(groupings, grouping))
    danced = {groups_of(section).size for section in unit.dance.sections.values()}
    return tuple(sorted({part for size, part in found.items() if part and size in danced}))


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
        if one == grouping:
            return last if last is not None and last < size and size % last == 0 else None
        last = size
    return None
