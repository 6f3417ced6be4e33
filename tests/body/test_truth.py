"""What is true of a body is true of every pose and every moment between, whoever dances."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given

from build_tools.body.balance import (
    ON_FLOOR,
    body_centre,
    centre_of_mass,
    inside,
    over_base,
    standing_on,
)
from build_tools.body.poses import BODIES, Moved, moved, pose_at, way_at
from build_tools.body.ranges import beyond
from build_tools.body.segments import LENGTHS, MASSES, RANGES, tables
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.body.space import Vector
from build_tools.model.dance import Action
from tests.body.strategies import actions, bodies, joined, parts, published

AIRBORNE = ("skip", "hop", "gallop", "run")
TIMES = tuple(n / 12 for n in range(13))


def joints(body: Skeleton) -> list[Vector]:
    arms = [body.right_arm, body.left_arm]
    legs = [body.right_leg, body.left_leg]
    return [
        *(body.pelvis, body.loin, body.breast, body.neck, body.head, body.crown),
        *(place for arm in arms for place in (arm.shoulder, arm.elbow, arm.wrist, arm.tip)),
        *(place for leg in legs for place in (leg.hip, leg.knee, leg.ankle, leg.heel, leg.toe)),
    ]


def lowest(body: Skeleton) -> float:
    return min(place.y for place in joints(body))


def may_leave_floor(done: Moved) -> bool:
    move = done.move
    return "jump" in move.kinds or (move.kind == "travel" and move.manner in AIRBORNE)


def hold(done: Moved, body: Skeleton, when: str) -> None:
    """The laws of any moment."""
    assert beyond(body) == (), when
    assert lowest(body) > -0.02, f"{when}: below the floor by {lowest(body):.3f}"
    if done.body == "standing" and not may_leave_floor(done):
        assert lowest(body) < ON_FLOOR, f"{when}: nothing on the floor"


def hold_throughout(done: Moved) -> None:
    for time in TIMES:
        hold(done, skeleton(pose_at(done, time)), f"{done.move} at {time:.2f}")


@pytest.mark.parametrize("body", BODIES)
def test_each_published_move_is_true_throughout(body: str) -> None:
    for action, before in published():
        hold_throughout(moved(action, before, body))


@given(joined, bodies, parts)
def test_any_move_is_true_at_any_moment(
    pair: tuple[Action, Action | None], body: str, time: float
) -> None:
    done = moved(*pair, body)
    hold(done, skeleton(pose_at(done, time)), f"{done.move} at {time:.2f}")


@given(joined, bodies)
def test_what_is_held_has_its_weight_over_what_stands_on_the_floor(
    pair: tuple[Action, Action | None], body: str
) -> None:
    done = moved(*pair, body)
    for pose in (done.start, done.end):
        assert over_base(skeleton(pose)) > 0, done.move


@given(joined)
def test_it_would_be_so_of_a_child_with_a_heavier_head(
    pair: tuple[Action, Action | None],
) -> None:
    """A child's head is up to an eighth of the body, not a fifteenth (Jensen 1986, Journal of
    Biomechanics 19; from memory): the weight stays over the base."""
    body = skeleton(moved(*pair).end)
    light = MASSES["head"].part
    heavy = centre_of_mass([(1 - light, body_centre(body)), (0.06, body.head)])
    assert inside((heavy.x, heavy.z), standing_on(body)) > -0.01


@given(joined)
def test_whoever_lands_has_knees_and_hips_bent(pair: tuple[Action, Action | None]) -> None:
    action, before = pair
    done = moved(replace(action, kind="jump", also=()), before)
    landing = skeleton(done.keys.moments[-2].pose)
    for leg in (landing.right_leg, landing.left_leg):
        assert leg.knee_bend > 50
        assert leg.flexion > 30
        assert leg.toe.y < ON_FLOOR


@given(joined)
def test_no_jump_ends_low(pair: tuple[Action, Action | None]) -> None:
    """After the feet come down the hips are never lower than a landing needs: what is low comes
    in the move after it."""
    action, before = pair
    done = moved(replace(action, kind="jump", also=()), before)
    for time in (0.66, 0.7, 0.8, 0.9, 1.0):
        assert skeleton(way_at(done, 1 - (1 - time) / action.times)).pelvis.y > 0.6 * LENGTHS.leg


@given(joined)
def test_each_jump_leaves_the_floor_once_and_comes_back(pair: tuple[Action, Action | None]) -> None:
    action, before = pair
    done = moved(replace(action, kind="jump", also=()), before)
    fine = 40 * action.times
    off = [lowest(skeleton(way_at(done, n / fine))) > ON_FLOOR for n in range(fine + 1)]
    changes = [was for was, is_ in pairwise([False, *off, False]) if was != is_]
    assert changes == [False, True] * action.times


@given(joined, bodies)
def test_each_move_begins_where_the_one_before_it_ended(
    pair: tuple[Action, Action | None], body: str
) -> None:
    action, before = pair
    done = moved(action, before, body)
    assert pose_at(done, 0) == done.start
    assert pose_at(done, 1) == done.end
    if before is not None:
        assert done.start == replace(moved(before, None, body).end, turned=0.0)


@given(actions)
def test_low_is_below_middle_is_below_high(action: Action) -> None:
    """Of one move done at each level; a jump ends standing, so only its start could be low."""
    if "jump" in (action.kind, *action.also):
        return
    heads = [
        skeleton(moved(replace(action, level=level)).end).head.y
        for level in ("low", "middle", "high")
    ]
    assert heads[0] < heads[1] + 0.01
    assert heads[1] < heads[2] + 0.03


@given(actions, bodies)
def test_left_is_right_in_a_mirror(action: Action, body: str) -> None:
    right = moved(replace(action, side="right"), None, body)
    left = moved(replace(action, side="left"), None, body)
    if action.kind not in ("travel", "turn"):
        return
    for one, other in zip(right.keys.moments, left.keys.moments, strict=True):
        seen, mirrored = skeleton(one.pose), skeleton(other.pose)
        assert seen.crown.y == pytest.approx(mirrored.crown.y, abs=1e-6)
        assert seen.crown.x == pytest.approx(-mirrored.crown.x, abs=1e-6)
        assert seen.right_arm.tip.y == pytest.approx(mirrored.left_arm.tip.y, abs=1e-6)


def test_a_published_worked_example_of_the_centre_of_mass() -> None:
    """A problem with its answer, of a university course of biomechanics (KIN 325, chapter 4): a
    gymnast's segments by Winter's masses, in per cent, at digitised places; (0.52, 1.04)."""
    masses = (8.1, 2.8, 2.2, 2.8, 2.2, 49.7, 10.0, 4.65, 1.45, 10.0, 4.65, 1.45)
    xs = (0.81, 0.58, 0.45, 0.6, 0.53, 0.57, 0.41, 0.42, 0.39, 0.36, 0.22, 0.08)
    ys = (1.28, 1.19, 1.35, 1.25, 1.37, 1.05, 0.76, 0.24, 0.24, 1.09, 1.32, 1.45)
    found = centre_of_mass(
        (mass, Vector(x, y, 0)) for mass, x, y in zip(masses, xs, ys, strict=True)
    )
    assert (round(found.x, 2), round(found.y, 2)) == (0.52, 1.04)


def test_a_standing_body_has_its_centre_where_it_was_measured() -> None:
    """Standing children of 5 to 12: 0.56 to 0.57 of height from the sole (Palmer 1944, Child
    Development 15; from memory); the masses here are of adults, in a child's lengths."""
    held = Action("stillness", Fraction(4), "wait", level="high")
    assert 0.52 < body_centre(skeleton(moved(held).end)).y < 0.57


def test_the_segments_are_a_whole_body() -> None:
    twice = ("upper_arm", "forearm", "hand", "thigh", "shank", "foot")
    whole = sum(one.part * (2 if name in twice else 1) for name, one in MASSES.items())
    assert whole == pytest.approx(1.0, abs=0.003)
    trunk = LENGTHS.pelvis + LENGTHS.waist + LENGTHS.chest
    assert LENGTHS.leg + trunk + LENGTHS.neck + LENGTHS.head == pytest.approx(1.0, abs=0.005)
    for name, table in tables().items():
        assert table["source"], name
    assert all(least < most for least, most in RANGES.values())
