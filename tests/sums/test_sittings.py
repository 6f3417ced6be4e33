"""Laws of teaching a lesson in two sittings, asked of the page's own script."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from tests.sums.lessons import FORTY_FIVE, NOTHING_TO_CUT, THIRTY, Lesson, leasts, lessons
from tests.support.page_script import ask

RECAP = 0
"""The number that stands for the recap, which is no step of the lesson."""
Parts = list[dict[str, int]]


def sittings(lesson: Lesson, minutes: int) -> Any:
    return ask("sums.sittings", lesson, minutes)


def numbers(parts: Parts) -> list[int]:
    return [part["step"] for part in parts]


def test_a_lesson_is_cut_where_both_are_most_even() -> None:
    found = sittings(FORTY_FIVE, 30)
    first, second = found["parts"]
    assert numbers(first) == [1, 2, 3, 4, 9]
    assert numbers(second) == [1, RECAP, 5, 6, 7, 8, 9]
    assert [sum(part["minutes"] for part in parts) for parts in found["parts"]] == [30, 30]
    assert found["sentence"] == "Teach it in two sittings of 30 minutes."


def test_a_first_lesson_has_nothing_to_recall() -> None:
    first, second = sittings(THIRTY, 20)["parts"]
    assert numbers(first) == [1, 2, 3, 7]
    assert numbers(second) == [1, RECAP, 4, 5, 6, 7]


def test_what_two_sittings_cannot_hold_is_said() -> None:
    found = sittings(THIRTY, 8)
    least = found["least"]
    assert found["parts"] == []
    assert found["sentence"] == f"Two sittings need at least {least} minutes to teach each time."
    assert sittings(THIRTY, least)["parts"]
    assert not sittings(THIRTY, least - 1)["parts"]


def test_one_making_step_is_never_cut_in_two() -> None:
    found = sittings(NOTHING_TO_CUT, 15)
    assert (found["parts"], found["least"]) == ([], 0)
    assert found["sentence"] == "This lesson needs at least 19 minutes to teach."


@given(lessons(), st.integers(1, 90))
def test_both_have_a_warm_up_and_a_cool_down_and_every_step_is_taught(
    lesson: Lesson, minutes: int
) -> None:
    found = sittings(lesson, minutes)
    if not found["parts"]:
        assert found["least"] == 0 or minutes < found["least"]
        return
    assert minutes >= found["least"] > 0
    by_number = {one["number"]: one for one in lesson}
    for parts in found["parts"]:
        assert sum(part["minutes"] for part in parts) == minutes
        assert by_number[parts[0]["step"]]["phase"] == "warm-up"
        assert by_number[parts[-1]["step"]]["phase"] == "cool-down"
    first, second = (set(numbers(parts)) for parts in found["parts"])
    assert first | second == {RECAP, *by_number}
    again = first & second
    assert {by_number[number]["phase"] for number in again} == {"warm-up", "cool-down"}
    assert RECAP in second


@given(lessons(), st.integers(1, 90))
def test_no_step_goes_under_its_least_and_the_last_talk_comes_second(
    lesson: Lesson, minutes: int
) -> None:
    found = sittings(lesson, minutes)
    if not found["parts"]:
        return
    for part in (part for parts in found["parts"] for part in parts):
        least = 2 if part["step"] == RECAP else lesson[part["step"] - 1]["least"]
        assert part["minutes"] >= least
    talks = [one["number"] for one in lesson if one["phase"] == "look and talk"]
    if talks:
        assert talks[-1] in numbers(found["parts"][1])
        assert talks[-1] not in numbers(found["parts"][0])


@given(lessons())
def test_two_sittings_never_need_more_than_one_and_its_repeats(lesson: Lesson) -> None:
    assert sittings(lesson, 1)["least"] <= sum(leasts(lesson)) + 2 + len(lesson)
