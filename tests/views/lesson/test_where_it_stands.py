"""Where pupils are in a step: on the spots of the dance as long as nothing sends them elsewhere.

Three teachers read steps "all at once" on marks that were for one team. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.where_it_stands import on_spots, parts_placed
from tests.support.sound_bank import unit_named


@pytest.fixture(scope="module")
def rope() -> Unit:
    return unit_named("rope-bridge")


def changed(lesson: Lesson, number: int, **fields: Any) -> Lesson:
    steps = list(lesson.steps)
    steps[number - 1] = replace(steps[number - 1], **fields)
    return replace(lesson, steps=tuple(steps))


def standing(lesson: Lesson) -> list[int]:
    return [n for n in range(1, len(lesson.steps) + 1) if on_spots(lesson, n - 1)]


def test_they_stay_on_their_marks_till_the_lesson_winds_down(rope: Unit) -> None:
    """Sent to marks in step 2; who watches whom in step 6 is told anew, on the same marks."""
    assert standing(rope.lessons[0]) == [2, 3, 4, 5, 6]


@pytest.mark.parametrize(
    ("fields", "left"),
    [
        ({"place": "Anywhere, an arm's length from your partner"}, [2, 3]),
        ({"into": "Find another pair."}, [2, 3]),
        ({"grouping": "fours"}, [2, 3]),
        ({"phase": "explore"}, [2, 3]),
        ({"develops": ()}, [2, 3]),
    ],
)
def test_till_they_are_sent_elsewhere(rope: Unit, fields: Any, left: list[int]) -> None:
    """Step 4 leads away, so steps 5 and 6, which say nothing of places, are there too."""
    assert standing(changed(rope.lessons[0], 4, **fields)) == left


def test_on_the_spot_is_wherever_one_is(rope: Unit) -> None:
    lesson = rope.lessons[0]
    for place in ("On the spot, each alone", "Turn on one spot"):
        assert standing(changed(lesson, 2, into=None, place=place)) == [3, 4, 5, 6]
    assert 2 in standing(changed(lesson, 2, into=None, place="On your own spot"))


def test_what_is_tried_on_marks_needs_the_room_of_what_comes_next(rope: Unit) -> None:
    lesson = rope.lessons[0]
    placed = [parts_placed(rope, lesson, n) for n in range(len(lesson.steps))]
    assert placed == [(), *[("A", "A'")] * 5, ()]
    moved = changed(lesson, 2, into="Turn to the nearest person.")
    assert parts_placed(rope, moved, 1) == ()
