"""Laws of steps: how long one is, whichever way it goes."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.ages import at_age
from build_tools.model.dance import Action, Development
from build_tools.movement.development import develop
from build_tools.paths.steps import step_length, way_long
from tests.paths.strategies import SHARED, STEPS, ages

SIZES: list[str] = SHARED["size"]["enum"]
steps = st.builds(
    Action,
    kind=st.just("travel"),
    counts=st.just(Fraction(4)),
    size=st.none() | st.sampled_from(SIZES),
    step=st.none() | st.sampled_from(STEPS),
)


@given(ages, st.integers(1, 8))
def test_as_many_small_steps_back_as_in_come_home(age: float, many: int) -> None:
    """An adviser measured partners who ended 43 cm nearer than the marks that they were to end on.

    A step that is asked to be small is small either way: common practice, no source.
    """
    there = Action("travel", Fraction(4), direction="forwards", size="small", steps=Fraction(many))
    back = replace(there, direction="backwards")
    assert way_long(there, at_age(age)) == pytest.approx(way_long(back, at_age(age)))


@given(ages, steps)
def test_no_step_back_is_longer_than_the_same_ahead(age: float, one: Action) -> None:
    body = at_age(age)
    ahead = step_length(replace(one, direction="forwards"), body)
    back = step_length(replace(one, direction="backwards"), body)
    assert back <= ahead
    assert back == ahead or back >= body.back_step - 1e-9


@given(ages, st.integers(1, 8), st.fractions(Fraction(1, 2), 8, max_denominator=4))
def test_steps_that_are_so_long_in_all_are_so_long(age: float, many: int, far: Fraction) -> None:
    """Three tiny side-steps, one step in all; made small or big, they are as long as that says."""
    body = at_age(age)
    tiny = Action(
        "travel", Fraction(4), direction="sideways", step="side-step", steps=Fraction(many),
        in_all=far, size="small",
    )  # fmt: skip
    assert way_long(tiny, body) == pytest.approx(float(far) * body.step)
    big = Development("wide", "shift", "change of size", size="big")
    (made,) = develop((tiny,), big)
    assert made.in_all is None
    assert way_long(made, body) == pytest.approx(many * step_length(made, body))


@given(ages)
def test_an_ordinary_step_back_is_shorter_than_one_ahead(age: float) -> None:
    body = at_age(age)
    one = Action("travel", Fraction(1), direction="backwards")
    assert step_length(one, body) == pytest.approx(body.back_step)
    assert body.back_step < body.step
