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
        lesson.number: " ".join(
            left_over_in_words(unit, lesson, index) or "" for index in range(len(lesson.steps))
        )
        for lesson in unit.lessons
        if "fours" in {step.grouping for step in lesson.steps}
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
        for index in range(len(lesson.steps)):
            words = left_over_in_words(unit, lesson, index)
            if words is None:
                continue
            # who stands by their groups, and dances alone there, is told of the groups to come
            to_come = (one.grouping for one in lesson.steps[index:])
            grouping = next(one for one in to_come if GROUP_SIZES.get(one, 1) > 1)
            sizes = {
                size for pupils in range(24, 37) for size in class_groups(known, grouping, pupils)
            }
            wanted = GROUP_SIZES[grouping]
            for name in re.findall(r"make an? (\w+)", words):
                assert _SIZES[name] in sizes - {wanted}
            assert "pair is left" not in words or wanted + 2 in sizes
            assert ("have to make" in words) == ("is counted aloud, and everyone waits" in words)


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


@pytest.mark.parametrize(
    ("place", "told_in"),
    [
        ("Beside your partner, front row first", 2),
        ("In pairs of spots, a three last", 2),
        ("On your own spot, three steps from anyone", 5),
        (None, 5),
    ],
)
def test_who_is_left_is_told_where_groups_first_take_their_places(
    place: str | None, told_in: int
) -> None:
    """A teacher placed a three in step 2, and read in step 5 how it stands."""
    unit = next(one for one in whole_bank().units if one.slug == "kite-and-string")
    steps = list(unit.lessons[0].steps)
    steps[1] = replace(steps[1], place=place)
    lesson = replace(unit.lessons[0], steps=tuple(steps))
    told = [n for n in range(len(steps)) if left_over_in_words(unit, lesson, n)]
    assert [n + 1 for n in told] == [told_in]


def test_steps_on_the_floor_are_no_groups() -> None:
    """Four steps from the front are no fours."""
    unit = next(one for one in whole_bank().units if one.slug == "road-builders")
    lesson = unit.lessons[0]
    told = [n for n in range(len(lesson.steps)) if left_over_in_words(unit, lesson, n)]
    assert lesson.steps[told[0]].grouping == "fours"
