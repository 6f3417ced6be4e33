"""Who goes to which place, against the shortest ways that there are (scipy's solver)."""

from __future__ import annotations

import random
from collections.abc import Sequence

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linear_sum_assignment

from build_tools.paths.hall import Point, metres
from build_tools.paths.nearest_places import nearest_places

AT_WORST, USUALLY = 1.5, 1.02
"""How much longer all ways together are than they need be: never more, and on average."""
points = st.tuples(st.integers(-90, 90), st.integers(-50, 50)).map(
    lambda one: (one[0] / 10, one[1] / 10)
)


def all_ways(here: Sequence[Point], places: Sequence[Point], takes: Sequence[int]) -> float:
    return sum(metres(one, places[takes[n]]) for n, one in enumerate(here))


def shortest(here: Sequence[Point], places: Sequence[Point]) -> float:
    far = np.array([[metres(one, place) for place in places] for one in here])
    return float(far[linear_sum_assignment(far)].sum())


@given(st.lists(st.tuples(points, points), min_size=1, max_size=36))
def test_everybody_has_a_place_of_their_own_and_ways_are_short(
    pairs: list[tuple[Point, Point]],
) -> None:
    here, places = [one for one, _ in pairs], [other for _, other in pairs]
    takes = nearest_places(here, places)
    assert sorted(takes) == list(range(len(here)))
    assert all_ways(here, places, takes) <= AT_WORST * shortest(here, places) + 1e-6


def test_ways_are_nearly_the_shortest_on_average() -> None:
    rolled = random.Random(13)
    longer = []
    for _ in range(200):
        here, places = (
            [(rolled.uniform(-9, 9), rolled.uniform(-5, 5)) for _ in range(30)] for _ in range(2)
        )
        takes = nearest_places(here, places)
        longer.append(all_ways(here, places, takes) / shortest(here, places))
    assert sum(longer) / len(longer) < USUALLY


@given(st.lists(points, min_size=1, max_size=36, unique=True))
def test_who_is_in_a_place_already_stays_there(places: list[Point]) -> None:
    assert nearest_places(places, places) == list(range(len(places)))
