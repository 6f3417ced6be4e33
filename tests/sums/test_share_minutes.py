"""Laws of fitting a lesson to its slot, and a solver of another kind that finds nothing better.

They are asked of the page's own script. Sharing out whole seats by the smallest next step of a sum
of convex costs is the greedy method of Gross (1956, "A class of discrete-type minimization
problems"; from memory). The solver here knows nothing of it: it is HiGHS, by scipy, on one yes or
no for each step and each number of minutes.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from tests.sums.lessons import (
    EQUAL,
    FORTY_FIVE,
    THIRTY,
    Lesson,
    frame,
    leasts,
    lessons,
    planned,
    some_lesson,
    step,
    talks,
    wanted,
    wanting,
)
from tests.support.page_script import ask


def fit(lesson: Lesson, minutes: int) -> list[int] | None:
    found: list[int] | None = ask("sums.shareMinutes", lesson, minutes)
    return found


def cost(lesson: Lesson, shares: Sequence[int]) -> Fraction:
    """The sum of m²/wanted."""
    return sum(
        (Fraction(m * m, wanted(one)) for m, one in zip(shares, lesson, strict=True)),
        Fraction(0),
    )


def solved(lesson: Lesson, minutes: int) -> Fraction:
    """The lowest sum of m²/wanted there is, found by the solver over whole numbers.

    Costs are multiplied up to whole numbers, so that what the solver rounds can be put right.
    """
    choices = [
        (index, m) for index, least in enumerate(leasts(lesson)) for m in range(least, minutes + 1)
    ]
    scale = math.lcm(*(wanted(one) for one in lesson))
    costs = [m * m * scale // wanted(lesson[index]) for index, m in choices]
    one_each = [[float(index == row) for index, _ in choices] for row in range(len(lesson))]
    total = [float(m) for _, m in choices]
    held = [*talks(lesson), *(([n], lesson[n]["minutes"]) for n in frame(lesson))]
    sat = [([float(m * (i in places)) for i, m in choices], most) for places, most in held]
    found = milp(
        np.array(costs, dtype=float),
        integrality=np.ones(len(choices)),
        bounds=Bounds(0, 1),
        constraints=LinearConstraint(
            np.array([*one_each, total, *(row for row, _ in sat)]),
            [1.0] * len(lesson) + [float(minutes)] + [0.0] * len(sat),
            [1.0] * len(lesson) + [float(minutes)] + [float(most) for _, most in sat],
        ),
        options={"mip_rel_gap": 0},
    )
    assert found.success, found.message
    return Fraction(sum(c for c, x in zip(costs, found.x, strict=True) if x > 0.5), scale)


@pytest.mark.parametrize("seed", range(20))
def test_a_solver_finds_no_lower_sum(seed: int) -> None:
    lesson = some_lesson(seed)
    if seed % 2:
        lesson = wanting(lesson, [1 + (seed + n) % 3 for n, _ in enumerate(lesson)])
    least = sum(leasts(lesson))
    for minutes in {least, (least + planned(lesson)) // 2, planned(lesson), planned(lesson) + 15}:
        shares = fit(lesson, minutes)
        assert shares is not None
        assert cost(lesson, shares) == solved(lesson, minutes)


def test_no_shares_of_a_short_lesson_have_a_lower_sum() -> None:
    lesson = THIRTY[:4]
    for minutes in range(sum(leasts(lesson)), 24):
        shares = fit(lesson, minutes)
        assert shares is not None
        most = [one["minutes"] if n in frame(lesson) else minutes for n, one in enumerate(lesson)]
        ranges = (range(a, b + 1) for a, b in zip(leasts(lesson), most, strict=True))
        every = product(*ranges)
        lowest = min(cost(lesson, one) for one in every if sum(one) == minutes)
        assert cost(lesson, shares) == lowest


@given(lessons(), st.integers(0, 200))
def test_the_minutes_add_up_and_no_step_is_under_its_least(lesson: Lesson, minutes: int) -> None:
    shares = fit(lesson, minutes)
    least = leasts(lesson)
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
    assert fit(lesson, planned(lesson)) == [one["minutes"] for one in lesson]


@given(lessons(), st.integers(1, 60))
def test_in_a_longer_slot_nobody_warms_up_or_cools_down_for_longer(
    lesson: Lesson, more: int
) -> None:
    """A teacher had four minutes for three breaths: thirty planned minutes made into forty."""
    shares = fit(lesson, planned(lesson) + more)
    assert shares is not None
    if all(one["phase"] in ("warm-up", "cool-down") or one["sits"] is not None for one in lesson):
        return  # nothing else can be longer
    assert [shares[n] for n in frame(lesson)] == [lesson[n]["minutes"] for n in frame(lesson)]


@given(lessons(), st.data())
def test_teams_that_dance_in_turn_have_all_that_they_want_where_there_is_time(
    lesson: Lesson, data: st.DataObject
) -> None:
    """And with less time none of the others is longer than planned before they have it."""
    times = [
        data.draw(st.integers(1, 3)) if one["sits"] is None and n not in frame(lesson) else 1
        for n, one in enumerate(lesson)
    ]
    taught = wanting(lesson, times)
    wants = [wanted(one) for one in taught]
    assert fit(taught, sum(wants)) == wants
    shares = fit(taught, data.draw(st.integers(sum(leasts(taught)), sum(wants))))
    assert shares is not None
    assert all(share <= most for share, most in zip(shares, wants, strict=True))


@given(lessons(), st.integers(0, 240))
def test_nobody_sits_and_talks_for_longer_than_the_age_allows_or_the_author_plans(
    lesson: Lesson, minutes: int
) -> None:
    shares = fit(lesson, minutes)
    if shares is None:
        return
    for places, most in talks(lesson):
        assert sum(shares[place] for place in places) <= most


def test_at_sixty_minutes_the_talk_of_a_young_class_stays_at_its_limit() -> None:
    talk = step(6, "look and talk", 3, 2, "half class", sits=4)
    lesson = (*THIRTY[:5], talk, THIRTY[6])
    shares = fit(lesson, 60)
    assert shares is not None
    assert shares[5] == 4
    assert sum(shares) == 60


def test_a_tie_goes_to_the_earlier_step() -> None:
    assert fit(EQUAL, 12) == [3, 3, 2, 2, 2]


@pytest.mark.parametrize(
    ("before", "grouping", "moves"),
    [
        (None, "pairs", False),
        ("pairs", "pairs", False),
        ("pairs", "fours", True),
        ("alone", "fours", True),
        ("whole class", "half class", True),
        ("pairs", "alone", False),
        ("fours", "whole class", False),
    ],
)
def test_who_has_others_to_find(before: str | None, grouping: str, moves: bool) -> None:
    assert ask("sums.regrouped", before, grouping) is moves


def groupings_that_move(lesson: Lesson) -> list[bool]:
    befores = (None, *(one["grouping"] for one in lesson[:-1]))
    return [
        ask("sums.regrouped", before, one["grouping"])
        for before, one in zip(befores, lesson, strict=True)
    ]


@given(lessons())
def test_half_a_minute_for_each_time_of_getting_into_groups_is_held_by_the_minutes_so_far(
    lesson: Lesson,
) -> None:
    """Wherever the planned minutes leave room for it, and never by a whole minute more."""
    roomy = [{**one, "minutes": one["minutes"] + 1} for one in lesson]
    found, owed, given = leasts(roomy), Fraction(0), 0  # type: ignore[arg-type]
    for one, least, moves in zip(lesson, found, groupings_that_move(lesson), strict=True):
        owed += Fraction(1, 2) if moves else 0
        given += least - one["least"]
        assert given == math.ceil(owed)
        assert moves or least == one["least"]


@given(lessons())
def test_no_step_needs_more_than_is_planned(lesson: Lesson) -> None:
    for one, least in zip(lesson, leasts(lesson), strict=True):
        assert one["least"] <= least <= one["minutes"]


def test_a_lesson_that_just_fits_with_its_half_minutes_is_one_sitting() -> None:
    """Leasts of 31 minutes and three times half a minute: 33 hold it, 32 do not."""
    lesson = (
        step(1, "warm-up", 5, 4),
        step(2, "make", 9, 7, "pairs"),
        step(3, "develop", 10, 8, "fours"),
        step(4, "rehearse", 8, 6, "whole class"),
        step(5, "look and talk", 6, 4, "half class"),
        step(6, "cool-down", 4, 2),
    )
    assert fit(lesson, 33) is not None
    assert fit(lesson, 32) is None


def test_a_lesson_without_steps_cannot_be_fitted() -> None:
    assert fit((), 30) is None
    assert leasts(FORTY_FIVE) == [4, 3, 3, 5, 4, 5, 2, 3, 2]
