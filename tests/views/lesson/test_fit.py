"""Laws of fitting a lesson to its slot, and a solver of another kind that finds nothing better.

Sharing out whole seats by the smallest next step of a sum of convex costs is the greedy method of
Gross (1956, "A class of discrete-type minimization problems"; from memory). The solver here knows
nothing of it: it is HiGHS, by scipy, on one yes or no for each step and each number of minutes.
"""

from __future__ import annotations

import math
import random
from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from build_tools.views.lesson.fit import fit, fitting_least
from build_tools.views.lesson.step_facts import StepFacts
from tests.vectors.make_vectors import EQUAL, FORTY_FIVE, THIRTY, some_lesson
from tests.views.lessons_to_fit import lessons, planned

Lesson = tuple[StepFacts, ...]


def cost(lesson: Lesson, shares: tuple[int, ...]) -> Fraction:
    """The sum of m²/planned."""
    return sum(
        (Fraction(m * m, step.minutes) for m, step in zip(shares, lesson, strict=True)),
        Fraction(0),
    )


def solved(lesson: Lesson, minutes: int) -> Fraction:
    """The lowest sum of m²/planned there is, found by the solver over whole numbers.

    Costs are multiplied up to whole numbers, so that what the solver rounds can be put right.
    """
    choices = [
        (index, m)
        for index, step in enumerate(lesson)
        for m in range(fitting_least(step), minutes + 1)
    ]
    scale = math.lcm(*(step.minutes for step in lesson))
    costs = [m * m * scale // lesson[index].minutes for index, m in choices]
    one_each = [[float(index == row) for index, _ in choices] for row in range(len(lesson))]
    total = [float(m) for _, m in choices]
    found = milp(
        np.array(costs, dtype=float),
        integrality=np.ones(len(choices)),
        bounds=Bounds(0, 1),
        constraints=LinearConstraint(
            np.array([*one_each, total]),
            [1.0] * len(lesson) + [float(minutes)],
            [1.0] * len(lesson) + [float(minutes)],
        ),
        options={"mip_rel_gap": 0},
    )
    assert found.success, found.message
    return Fraction(sum(c for c, x in zip(costs, found.x, strict=True) if x > 0.5), scale)


@pytest.mark.parametrize("seed", range(12))
def test_a_solver_finds_no_lower_sum(seed: int) -> None:
    lesson = some_lesson(random.Random(seed))
    least = sum(fitting_least(step) for step in lesson)
    for minutes in {least, (least + planned(lesson)) // 2, planned(lesson), planned(lesson) + 5}:
        shares = fit(lesson, minutes)
        assert shares is not None
        assert cost(lesson, shares) == solved(lesson, minutes)


def test_no_shares_of_a_short_lesson_have_a_lower_sum() -> None:
    lesson = THIRTY[:4]
    for minutes in range(sum(fitting_least(step) for step in lesson), 24):
        shares = fit(lesson, minutes)
        assert shares is not None
        every = product(*(range(fitting_least(step), minutes + 1) for step in lesson))
        lowest = min(cost(lesson, one) for one in every if sum(one) == minutes)
        assert cost(lesson, shares) == lowest


@given(lessons(), st.integers(0, 200))
def test_the_minutes_add_up_and_no_step_is_under_its_least(lesson: Lesson, minutes: int) -> None:
    shares = fit(lesson, minutes)
    least = [fitting_least(step) for step in lesson]
    if sum(least) > minutes:
        assert shares is None
        return
    assert shares is not None
    assert sum(shares) == minutes
    assert all(share >= one for share, one in zip(shares, least, strict=True))


@given(lessons(), st.integers(0, 120))
def test_a_longer_slot_shortens_no_step(lesson: Lesson, minutes: int) -> None:
    shorter, longer = fit(lesson, minutes), fit(lesson, minutes + 1)
    if shorter is None:
        return
    assert longer is not None
    assert all(one <= other for one, other in zip(shorter, longer, strict=True))


@given(lessons())
def test_at_the_planned_length_it_is_the_plan(lesson: Lesson) -> None:
    assert fit(lesson, planned(lesson)) == tuple(step.minutes for step in lesson)


def test_a_tie_goes_to_the_earlier_step() -> None:
    assert fit(EQUAL, 12) == (3, 3, 2, 2, 2)


def test_moving_into_groups_takes_a_minute_more_at_the_least() -> None:
    fours = FORTY_FIVE[4]
    assert (fours.least, fours.regroups, fitting_least(fours)) == (4, True, 5)
    half_a_minute = Fraction(1, 2)
    assert fitting_least(fours) == math.ceil(fours.least + half_a_minute)


def test_a_lesson_without_steps_cannot_be_fitted() -> None:
    assert fit((), 30) is None
