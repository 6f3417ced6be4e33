"""What one left over does is told of the groups that the lesson really makes."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.model.unit import Unit
from build_tools.views.lesson.class_groups import GROUP_SIZES, class_groups, groupings_known
from build_tools.views.lesson.groups_told import left_over_in_words, watching_in_words
from tests.support.sound_bank import every_unit, real_unit, whole_bank

_SIZES = {name: n for n, name in enumerate(("three", "four", "five", "six", "seven"), start=3)}


def test_pairs_that_join_leave_a_pair_in_lessons_without_pairs_too() -> None:
    unit = real_unit()
    told = {
        lesson.number: left_over_in_words(unit, lesson, index) or ""
        for lesson in unit.lessons
        for index, step in enumerate(lesson.steps)
        if step.grouping == "fours" and "fours" not in {s.grouping for s in lesson.steps[:index]}
    }
    assert sorted(told) == [2, 3, 4, 5]
    # in lesson 2 the step says so itself
    assert [n for n, words in told.items() if "If a pair is left, it joins a four" in words] == [
        *(3, 4, 5),
    ]


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_only_groups_that_a_class_makes_are_told_and_each_has_something_to_do(unit: Unit) -> None:
    for lesson in unit.lessons:
        known = groupings_known(unit, lesson)
        for index, step in enumerate(lesson.steps):
            words = left_over_in_words(unit, lesson, index)
            if words is None:
                continue
            sizes = {
                size
                for pupils in range(24, 37)
                for size in class_groups(known, step.grouping, pupils)
            }
            wanted = GROUP_SIZES[step.grouping]
            for name in re.findall(r"make an? (\w+)", words):
                assert _SIZES[name] in sizes - {wanted}
            assert "pair is left" not in words or wanted + 2 in sizes
            assert ("have to make" in words) == ("yourself, or count" in words)


@pytest.mark.parametrize(("slug", "lesson", "step"), [("magnets", 3, 2), ("marble-run", 3, 4)])
def test_pairs_of_fours_that_stand_leave_nobody_over(slug: str, lesson: int, step: int) -> None:
    unit = next(one for one in whole_bank().units if one.slug == slug)
    assert unit.lessons[lesson - 1].steps[step - 1].grouping == "pairs"
    assert left_over_in_words(unit, unit.lessons[lesson - 1], step - 1) is None


@pytest.mark.parametrize(
    ("into", "task", "told"),
    [
        ("Two pairs, one behind the other. One dances; the other sits along the wall.", "", False),
        ("3 and 4 sit along the wall; 1 and 2 dance.", "", False),
        ("Two sixes together. One dances; one sits on the shore.", "", False),
        ("You at the tables, watch one dancer. You in the space, play.", "", False),
        ("Watchers sit three steps away.", "Dance.", False),
        ("Find the pair beside you.", "Watch the gap. Tell the pair what it did.", True),
        (None, "Dance it once. Hear what they saw.", True),
    ],
)
def test_who_watches_is_not_said_where_the_step_says_it(
    into: str | None, task: str, told: bool
) -> None:
    unit = next(one for one in whole_bank().units if one.slug == "magnets")
    lesson = unit.lessons[1]
    (step,) = (one for one in lesson.steps if one.phase == "look and talk")
    said = watching_in_words(lesson, replace(step, into=into, task=task, you=None))
    assert (said is not None) == told
