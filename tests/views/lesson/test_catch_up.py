"""Laws of bringing a late lesson to its end."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.lesson.catch_up import catch_up
from build_tools.views.lesson.fit import fitting_least
from build_tools.views.lesson.step_facts import StepFacts
from tests.vectors.make_vectors import FORTY_FIVE
from tests.views.lessons_to_fit import lessons, planned

Lesson = tuple[StepFacts, ...]
REST = FORTY_FIVE[2:]


def test_a_rest_that_is_not_late_stays_as_planned() -> None:
    assert catch_up(REST, 40).minutes == (5, 7, 6, 7, 3, 4, 3)


def test_a_little_late_is_squeezed() -> None:
    found = catch_up(REST, planned(REST) - 2)
    assert sum(found.minutes) == planned(REST) - 2
    assert 0 not in found.minutes


def test_as_late_as_what_can_wait_leaves_that_first() -> None:
    found = catch_up(REST, planned(REST) - 5)
    assert found.minutes == (0, 7, 6, 7, 3, 4, 3)


def test_later_still_leaves_others_from_the_last_but_not_the_talk_or_the_cool_down() -> None:
    found = catch_up(REST, 9)
    assert [bool(minutes) for minutes in found.minutes] == [
        *(False, False, False, False, False),
        *(True, True),
    ]
    assert sum(found.minutes) == 9


def test_too_late_for_anything_says_how_much_over() -> None:
    found = catch_up(REST, 2)
    assert found.minutes == (0, 0, 0, 0, 0, 3, 2)
    assert found.over == 3


@given(lessons(), st.integers(-5, 120))
def test_the_last_talk_and_the_cool_down_keep_their_least(lesson: Lesson, minutes: int) -> None:
    found = catch_up(lesson, minutes)
    talks = [index for index, step in enumerate(lesson) if step.phase == "look and talk"]
    for index in (*talks[-1:], len(lesson) - 1, 0):
        assert found.minutes[index] >= fitting_least(lesson[index])
    assert all(
        share == 0 or share >= fitting_least(step)
        for share, step in zip(found.minutes, lesson, strict=True)
    )


@given(lessons(), st.integers(-5, 120))
def test_it_ends_in_time_or_says_how_late(lesson: Lesson, minutes: int) -> None:
    found = catch_up(lesson, minutes)
    if minutes >= planned(lesson):
        assert sum(found.minutes) == planned(lesson)
        assert found.over == 0
    else:
        assert sum(found.minutes) == minutes + found.over


@given(lessons(), st.integers(1, 120))
def test_nothing_else_is_left_while_something_can_wait(lesson: Lesson, minutes: int) -> None:
    left = [
        step
        for step, share in zip(lesson, catch_up(lesson, minutes).minutes, strict=True)
        if not share
    ]
    talks = [step.number for step in lesson if step.phase == "look and talk"]
    if any(not step.can_wait for step in left):
        waits = [
            step
            for step in lesson
            if step.can_wait
            and step.phase not in ("warm-up", "cool-down")
            and step.number not in talks[-1:]
        ]
        assert all(step in left for step in waits)
