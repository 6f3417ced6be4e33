"""A lean that shares weight is a hand's width, straight, from flat feet; alone it is a shape."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from build_tools.body.balance import over_base
from build_tools.body.moves import move_of, shares_weight
from build_tools.body.poses import Moved, moved
from build_tools.body.segments import LENGTHS
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.body.space import Vector
from build_tools.model.dance import Action
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.moves_before import moves_before
from tests.support.sound_bank import unit_named

CHILD = 140.0
"""How tall a child is, in centimetres."""


def ended(motif: str) -> dict[str, Skeleton]:
    """How the gorge's two stand at the end of each move, by its word."""
    actions = drawn_actions(unit_named("rope-bridge").dance, motif)
    return {
        action.word or "": skeleton(moved(action, before).end)
        for action, before in zip(actions, moves_before(actions), strict=True)
    }


def steep(low: Vector, high: Vector) -> float:
    """By how many degrees what goes up from `low` to `high` is tipped forwards."""
    way = high.minus(low)
    return math.degrees(math.atan2(way.z, way.y))


def hips(body: Skeleton) -> float:
    return body.pelvis.y / LENGTHS.leg


@pytest.mark.parametrize(("motif", "high"), [("span", 0.95), ("low-span", 0.81)])
def test_who_shares_weight_tips_a_hand_back_from_the_ankles(motif: str, high: float) -> None:
    """An adviser counted 23 centimetres, a bent arm above the shoulder and, low, a seat."""
    at = ended(motif)
    for word in ("lean", "taut"):
        body = at[word]
        assert 6.5 < CHILD * (at["lengthen"].head.z - body.head.z) < 8.5
        spine = [body.pelvis, body.loin, body.breast, body.neck, body.chin, body.crown]
        assert all(-5 < steep(low, top) < -4 for low, top in pairwise(spine))
        arm = body.right_arm
        assert abs(arm.tip.y - arm.shoulder.y) < 0.01
        assert body.pose.right_arm.elbow < 3
        assert hips(body) == pytest.approx(high, abs=0.02)
        assert over_base(body) > 0, "in air each stands alone"
        for leg in (body.right_leg, body.left_leg):
            assert max(abs(leg.heel.y), abs(leg.toe.y)) < 0.004, "the feet are flat"
            assert abs(abs(leg.ankle.x) - LENGTHS.hip) < 0.02, "hip-wide"


def test_who_takes_a_link_or_lengthens_it_is_upright() -> None:
    at = ended("span")
    for word in ("link", "lengthen"):
        assert 0 <= steep(at[word].pelvis, at[word].neck) + 0.01 < 3
        assert at[word].right_arm.tip.y == pytest.approx(at[word].right_arm.shoulder.y, abs=0.015)


def leant(**fields: str) -> Moved:
    action = Action("gesture", Fraction(4), "lean", level="middle")
    return moved(replace(action, **fields))  # type: ignore[arg-type]


@pytest.mark.parametrize("way", ["forwards", "backwards", "sideways"])
def test_a_lean_alone_is_as_large_as_it_was(way: str) -> None:
    done = leant(direction=way)
    body = skeleton(done.end)
    assert not shares_weight(done.move)
    off = math.hypot(body.head.x - body.pelvis.x, body.head.z - body.pelvis.z)
    assert CHILD * off > 12


def test_only_an_arm_held_out_in_front_has_somebody_to_lean_from() -> None:
    lean = leant(direction="backwards", body_part="one arm").move
    assert shares_weight(lean)
    assert not shares_weight(replace(lean, direction="forwards"))
    assert not shares_weight(replace(lean, one_side=False))
    assert not shares_weight(move_of(Action("stillness", Fraction(1), "lean", level="middle")))
