"""Who is with whom: every pupil once, pairs whole in fours, sizes as lessons say them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.paths.class_in_groups import class_in_groups
from build_tools.views.lesson.class_groups import class_groups

CLASS = st.integers(1, 40)
SIZES = st.lists(st.integers(1, 8), min_size=1, max_size=4)
NAMED = {1: "alone", 2: "pairs", 3: "threes", 4: "fours", 5: "fives", 6: "sixes"}


@given(CLASS, SIZES)
def test_every_dancer_is_in_one_group_of_neighbours(pupils: int, sizes: list[int]) -> None:
    for size in sizes:
        together = class_in_groups(pupils, size, sizes)
        assert [one for group in together for one in group] == list(range(pupils))


@pytest.mark.parametrize(("part", "whole"), [(2, 4), (2, 6), (3, 6), (2, 8), (4, 8)])
def test_groups_that_join_are_never_torn_apart(part: int, whole: int) -> None:
    for pupils in range(1, 41):
        parts = class_in_groups(pupils, part, (part, whole))
        joined = class_in_groups(pupils, whole, (part, whole))
        for small in parts:
            assert any(set(small) <= set(large) for large in joined), pupils


def test_the_sizes_are_those_that_lessons_say() -> None:
    for pupils in range(1, 41):
        are_those_that_lessons_say(pupils)


def are_those_that_lessons_say(pupils: int) -> None:
    for size, name in NAMED.items():
        alone = class_in_groups(pupils, size, (size,))
        assert sorted(map(len, alone), reverse=True) == list(class_groups([name], name, pupils))
    for part, whole in ((2, 4), (2, 6), (3, 6)):
        order = [NAMED[part], NAMED[whole]]
        joined = class_in_groups(pupils, whole, (part, whole))
        said = class_groups(order, order[1], pupils)
        assert sorted(map(len, joined), reverse=True) == list(said)
