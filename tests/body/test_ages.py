"""Sizes and speeds by age, against tables that were not used to make them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.ages import OLDEST, YOUNGEST, at_age, tables

AGES = st.floats(YOUNGEST, OLDEST)

# WHO growth reference 2007 at 61 months, girls and boys, as its sheets begin.
AT_61_MONTHS = (109.6016 + 110.2647) / 200


def test_a_month_after_five_a_child_is_as_tall_as_the_other_table_begins() -> None:
    assert at_age(61 / 12).height == pytest.approx(AT_61_MONTHS, abs=0.005)


@pytest.mark.parametrize(("age", "metres", "height"), [(3.5, 0.45, 1.05), (6.5, 0.573, 1.25)])
def test_steps_are_those_of_the_children_who_were_measured(
    age: float, metres: float, height: float
) -> None:
    """Hausdorff 1999 gives heights besides: their children were a little tall for their age."""
    child = at_age(age)
    measured = metres / height
    assert child.step / child.height == pytest.approx(measured, rel=0.07)


@pytest.mark.parametrize(("age", "speed"), [(4, 3.24 / 3.6), (12, 5 / 3.6)])
def test_walking_is_near_the_speed_that_costs_least(age: float, speed: float) -> None:
    """Cavagna, Franzetti and Fuchimoto 1983: 2.8 km/h at 2 years, up to 5 km/h at 12, and the
    freely chosen speed is near; in proportion between (3.24 km/h at 4)."""
    assert at_age(age).walking == pytest.approx(speed, rel=0.16)


def test_the_step_is_the_same_part_of_the_leg_from_four_on() -> None:
    """Sutherland 1997, Gait and Posture 6: constant after 4 years of age."""
    parts = [at_age(age).step / at_age(age).leg for age in range(4, 13)]
    assert parts == pytest.approx([sum(parts) / len(parts)] * len(parts), rel=0.07)


def test_a_run_below_the_speed_where_a_childs_rebound_changes() -> None:
    """Schepens, Willems and Cavagna 1998: a steady run is below about 11 km/h at every age."""
    assert all(at_age(age).running < 11 / 3.6 for age in range(4, 13))


@given(AGES, AGES)
def test_older_is_taller_and_never_slower(one: float, other: float) -> None:
    young, old = at_age(min(one, other)), at_age(max(one, other))
    assert young.height <= old.height
    assert young.leg <= old.leg
    assert young.step <= old.step
    assert young.walking <= old.walking
    assert young.running <= old.running


@given(AGES)
def test_each_way_of_going_is_faster_than_the_one_before(age: float) -> None:
    child = at_age(age)
    speeds = [child.slow_walking, child.walking, child.fast_walking, child.skipping, child.running]
    assert speeds == sorted(speeds)
    assert child.small_step < child.back_step < child.side_step < child.step < child.big_step
    assert child.big_step < child.leg * 1.3, "feet apart by more than 81 degrees at the hips"


@given(AGES)
def test_an_arm_is_shorter_than_what_it_reaches_from_the_middle(age: float) -> None:
    child = at_age(age)
    assert child.arm < child.reach < child.height
    assert child.arm < child.leg


def test_a_child_beyond_the_table_is_the_nearest_one_in_it() -> None:
    assert at_age(3) == at_age(YOUNGEST)
    assert at_age(14) == at_age(OLDEST)


def test_every_table_says_what_it_is_and_where_it_is_from() -> None:
    for name, table in tables().items():
        assert table["says"], name
        assert table["source"], name
