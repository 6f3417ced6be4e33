"""Laws of leaving out what can wait, asked of the page's own script."""

from __future__ import annotations

from collections.abc import Sequence

from hypothesis import given
from hypothesis import strategies as st

from tests.sums.lessons import FORTY_FIVE, Lesson, Step, leasts, lessons
from tests.support.page_script import ask


def left_out(lesson: Lesson, minutes: int) -> Sequence[Step]:
    found: Sequence[Step] = ask("sums.leaveOut", lesson, minutes)
    return found


def test_the_step_that_can_wait_is_left_out_where_the_rest_then_fits() -> None:
    kept = [one for one in FORTY_FIVE if not one["canWait"]]
    just = sum(leasts(kept))
    assert [one["number"] for one in left_out(FORTY_FIVE, just)] == [3]
    assert left_out(FORTY_FIVE, just - 1) == []


def test_nothing_is_left_out_where_nothing_can_wait() -> None:
    firm = [one | {"canWait": False} for one in FORTY_FIVE]
    assert left_out(firm, 30) == []


@given(lessons(), st.integers(1, 120))
def test_only_what_can_wait_is_left_out_and_the_rest_fits(lesson: Lesson, minutes: int) -> None:
    left = left_out(lesson, minutes)
    assert all(one["canWait"] for one in left)
    kept = [one for one in lesson if one not in left]
    fits = ask("sums.shareMinutes", kept, minutes)
    assert fits is not None or not left
    waits = any(one["canWait"] for one in lesson)
    firm = [one for one in lesson if not one["canWait"]]
    assert bool(left) == (waits and ask("sums.shareMinutes", firm, minutes) is not None)
