"""The eight effort actions as a cube, against the published table."""

from __future__ import annotations

from itertools import product

from build_tools.movement.effort import (
    EFFORT_ACTIONS,
    Effort,
    opposite_quality,
    qualities,
)
from build_tools.shapes.schemas import schema
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
    for first, second in PUBLISHED["effort_opposites"]["rows"]:
        there, back = qualities((first,)), qualities((second,))
        assert {opposite_quality(quality) for quality in there} == back


def test_qualities_are_taken_apart() -> None:
    assert qualities(("float", "bound")) == {"light", "sustained", "indirect", "bound"}
    every = {quality for name in ACTIONS for quality in qualities((name,))} | {"free", "bound"}
    assert all(opposite_quality(opposite_quality(q)) == q != opposite_quality(q) for q in every)
    words = schema("shared")["$defs"]["dynamics"]["items"]["enum"]
    assert set(words) == every | set(ACTIONS)
