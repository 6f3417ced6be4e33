"""The eight effort actions as a cube, against the published table."""

from __future__ import annotations

from itertools import combinations, pairwise, product

import pytest

from build_tools.movement.effort import (
    EFFORT_ACTIONS,
    Effort,
    distance,
    opposite,
    opposite_quality,
    qualities,
    routes,
)
from build_tools.schema_check.schemas import schema
from tests.movement.strategies import PUBLISHED

ACTIONS = sorted(EFFORT_ACTIONS)


def test_the_table_is_the_published_one() -> None:
    rows = PUBLISHED["effort_actions"]["rows"]
    assert {name: Effort(*row) for name, row in rows.items()} == EFFORT_ACTIONS


def test_each_corner_of_the_cube_has_one_action() -> None:
    corners = product(("strong", "light"), ("sudden", "sustained"), ("direct", "indirect"))
    assert set(EFFORT_ACTIONS.values()) == {Effort(*corner) for corner in corners}
    assert len(set(EFFORT_ACTIONS.values())) == len(EFFORT_ACTIONS) == 8


def test_opposites_are_the_published_pairs() -> None:
    pairs = {frozenset((a, opposite(a))) for a in ACTIONS}
    assert pairs == {frozenset(pair) for pair in PUBLISHED["effort_opposites"]["rows"]}
    assert {frozenset(p) for p in combinations(ACTIONS, 2) if distance(*p) == 3} == pairs
    assert all(opposite(opposite(a)) == a for a in ACTIONS)


def test_neighbours_are_the_edges_of_the_cube() -> None:
    # Computed: a cube has twelve edges, three at each corner.
    assert sum(distance(*pair) == 1 for pair in combinations(ACTIONS, 2)) == 12
    assert all(sum(distance(a, b) == 1 for b in ACTIONS) == 3 for a in ACTIONS)


@pytest.mark.parametrize("first", ACTIONS)
@pytest.mark.parametrize("second", ACTIONS)
def test_routes_change_one_quality_at_a_step(first: str, second: str) -> None:
    """Laban, Mastery of Movement: one quality at a time is easy, the complete contrast is not."""
    found = routes(first, second)
    assert len(set(found)) == len(found) == (1, 1, 2, 6)[distance(first, second)]
    for route in found:
        assert (route[0], route[-1]) == (first, second)
        assert len(route) == distance(first, second) + 1
        assert all(distance(a, b) == 1 for a, b in pairwise(route))


def test_qualities_are_taken_apart() -> None:
    assert qualities(("float", "bound")) == {"light", "sustained", "indirect", "bound"}
    every = {quality for name in ACTIONS for quality in qualities((name,))} | {"free", "bound"}
    assert all(opposite_quality(opposite_quality(q)) == q != opposite_quality(q) for q in every)
    words = schema("shared")["$defs"]["dynamics"]["items"]["enum"]
    assert set(words) == every | set(ACTIONS)
