"""Laws of bringing a late lesson to its end, asked of the page's own script."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from tests.sums.lessons import FORTY_FIVE, Lesson, lessons, planned
from tests.support.page_script import ask

REST = FORTY_FIVE[2:]


def catch_up(lesson: Lesson, minutes: int, before: str | None = None) -> Any:
    return ask("sums.catchUp", lesson, minutes, before)


def test_a_rest_that_is_not_late_stays_as_planned() -> None:
    assert catch_up(REST, 40)["minutes"] == [5, 7, 6, 7, 3, 4, 3]


def test_a_little_late_is_squeezed() -> None:
    found = catch_up(REST, planned(REST) - 2)
    assert sum(found["minutes"]) == planned(REST) - 2
    assert 0 not in found["minutes"]


def test_as_late_as_what_can_wait_leaves_that_first() -> None:
    found = catch_up(REST, planned(REST) - 5)
    assert found["minutes"] == [0, 7, 6, 7, 3, 4, 3]


def test_later_still_leaves_others_from_the_last_but_not_the_talk_or_the_cool_down() -> None:
    found = catch_up(REST, 9)
    kept = [bool(minutes) for minutes in found["minutes"]]
    assert kept == [False, False, False, False, False, True, True]
    assert sum(found["minutes"]) == 9


def test_too_late_for_anything_says_how_much_over() -> None:
    found = catch_up(REST, 2)
    assert found["minutes"] == [0, 0, 0, 0, 0, 3, 2]
    assert found["over"] == 3


def test_groups_that_are_still_to_be_found_are_counted_in() -> None:
    """The talk in fours needs three minutes, and one more where pupils are still in pairs."""
    assert catch_up(REST, 2, "fours")["over"] == 3
    assert catch_up(REST, 2, "pairs")["over"] == 4


@given(lessons(), st.integers(-5, 120))
def test_the_last_talk_and_the_cool_down_keep_their_least(lesson: Lesson, minutes: int) -> None:
    found = catch_up(lesson, minutes)["minutes"]
    talks = [index for index, one in enumerate(lesson) if one["phase"] == "look and talk"]
    for index in (*talks[-1:], len(lesson) - 1, 0):
        assert found[index] >= lesson[index]["least"]
    kept = [index for index, share in enumerate(found) if share]
    leasts = ask("sums.leasts", [lesson[index] for index in kept])
    assert all(found[index] >= least for index, least in zip(kept, leasts, strict=True))


@given(lessons(), st.integers(-5, 120))
def test_it_ends_in_time_or_says_how_late(lesson: Lesson, minutes: int) -> None:
    found = catch_up(lesson, minutes)
    if minutes >= planned(lesson):
        assert sum(found["minutes"]) == planned(lesson)
        assert found["over"] == 0
    else:
        assert sum(found["minutes"]) == minutes + found["over"]


@given(lessons(), st.integers(1, 120))
def test_nothing_else_is_left_while_something_can_wait(lesson: Lesson, minutes: int) -> None:
    shares = catch_up(lesson, minutes)["minutes"]
    left = [one for one, share in zip(lesson, shares, strict=True) if not share]
    talks = [one["number"] for one in lesson if one["phase"] == "look and talk"]
    if any(not one["canWait"] for one in left):
        waits = [
            one
            for one in lesson
            if one["canWait"]
            and one["phase"] not in ("warm-up", "cool-down")
            and one["number"] not in talks[-1:]
        ]
        assert all(one in left for one in waits)
