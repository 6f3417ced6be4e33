"""Laws of who shows when."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.lesson.showing_plan import showing_plan, talk_seconds

SIZES = st.lists(st.integers(1, 6), max_size=40)
RUNS = st.floats(1, 300)


@given(SIZES, RUNS, st.integers(1, 30))
def test_everyone_is_seen_once(sizes: list[int], run: float, minutes: int) -> None:
    plan = showing_plan(sizes, run, minutes)
    assert sorted(place for one in plan.runs for place in one) == list(range(len(sizes)))
    assert all(plan.runs)
    assert plan.at_once == max(map(len, plan.runs), default=0)


@given(SIZES, RUNS, st.integers(1, 30))
def test_halves_show_to_each_other_wherever_there_is_time(
    sizes: list[int], run: float, minutes: int
) -> None:
    plan = showing_plan(sizes, run, minutes)
    two_runs = 2 * (run + 15) + 60
    if len(sizes) > 1 and two_runs <= minutes * 60:
        assert len(plan.runs) == 2
        assert abs(len(plan.runs[0]) - len(plan.runs[1])) <= 1
    if len(plan.runs) == 1 and len(sizes) > 1:
        assert two_runs > minutes * 60 >= plan.seconds


@given(SIZES, RUNS, st.integers(1, 30))
def test_a_plan_that_does_not_fit_says_what_it_needs(
    sizes: list[int], run: float, minutes: int
) -> None:
    plan = showing_plan(sizes, run, minutes)
    assert plan.fits == (plan.needs <= minutes)
    assert showing_plan(sizes, run, plan.needs).fits


def test_seven_groups_show_four_and_then_three() -> None:
    plan = showing_plan((4, 4, 4, 4, 4, 4, 3), 20.0, 4)
    assert plan.runs == ((0, 2, 4, 6), (1, 3, 5))
    assert plan.who == (
        "Every other group dances, four at once, and the rest watch. Then they swap, and three "
        "dance."
    )
    assert plan.where.startswith("Watchers sit")


def test_with_no_time_for_two_runs_all_dance_at_once() -> None:
    plan = showing_plan((4, 4, 4), 50.0, 2, talk=0)
    assert (len(plan.runs), plan.seconds, plan.where) == (1, 65.0, "")


def test_the_talk_waits_for_a_step_of_its_own() -> None:
    assert talk_seconds("show", "look and talk") == 0
    assert talk_seconds("show", "cool-down") == 60
    assert talk_seconds("look and talk", "look and talk") == 60
