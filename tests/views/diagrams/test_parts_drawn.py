"""What a hand or the head does is drawn at that hand or head, and hands over the body are seen."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from hypothesis import given

from build_tools.body.balance import inside
from build_tools.body.poses import moved
from build_tools.body.ranges import beyond
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import figure_of
from build_tools.views.diagrams.body_lines import View, arms_over, torso
from build_tools.views.diagrams.body_views import view_of
from tests.body.strategies import bodies, joined

WAY = re.compile(r'<path d="M([\d.]+)[ -]?(-?[\d.]+)l([^M"]*)M[^"]*" class="way"')


def way(drawn: str) -> tuple[tuple[float, float], tuple[float, float]]:
    """Where the arrow starts, and how far it goes, right and down."""
    found = WAY.search(drawn)
    assert found
    steps = [float(one) for one in re.findall(r"-?\d*\.?\d+", found[3])]
    y = re.match(r"M[\d.]+ ?(-?[\d.]+)", found[0][9:])
    assert y
    return (float(found[1]), float(y[1])), (sum(steps[::2]), sum(steps[1::2]))


def gesture(word: str, **more: object) -> Action:
    return Action("gesture", Fraction(2), word, level="middle", **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(("direction", "sign"), [("forwards", 1), ("backwards", -1)])
def test_the_arrow_of_a_lean_goes_its_way_above_the_hips(direction: str, sign: int) -> None:
    action = gesture("lean", direction=direction)
    (_, y), (right, _) = way(figure_of(action))
    body = skeleton(moved(action).end)
    assert right * sign > 15
    assert y < -100 * body.neck.y


def test_the_arrow_of_a_look_up_is_before_the_face_and_goes_up() -> None:
    action = Action("gesture", Fraction(2), "look", level="low to high", body_part="head")
    (_, y), (_, down) = way(figure_of(action))
    body = skeleton(moved(action).end)
    assert y < -100 * body.breast.y
    assert down < -15
    assert body.pose.trunk.nod < -30


def test_what_pulls_an_arm_pulls_it_from_the_hand_on() -> None:
    action = gesture("tug", direction="forwards", body_part="one arm", dynamics=("strong",))
    (_, y), (right, down) = way(figure_of(action))
    body = skeleton(moved(action).end)
    assert right > 20
    assert abs(down) < 1
    hands = (-100 * body.right_arm.tip.y, -100 * body.left_arm.tip.y)
    assert min(abs(y - hand) for hand in hands) < 1


@pytest.mark.parametrize(("counts", "told"), [(1, []), (2, ["2×"])])
@pytest.mark.parametrize("direction", [None, "down"])
def test_a_knock_is_on_something_and_says_how_often(
    counts: int, told: list[str], direction: str | None
) -> None:
    """A reader who never danced clapped once, or slapped the thighs: nothing was struck."""
    action = Action(
        "gesture", Fraction(counts), "knock", level="high to middle", body_part="hands",
        direction=direction,
    )  # fmt: skip
    drawn = figure_of(action)
    assert re.findall(r"<text[^>]*>([^<]+)</text>", drawn) == told
    (_, _), (right, down) = way(drawn)
    assert (right > 10) if direction is None else (down > 10)
    done = moved(action)
    lifted, struck = (skeleton(done.keys.moments[n].pose) for n in (0, done.keys.shown))
    assert lifted.head.y > struck.head.y + 0.02, "high to half high was not to be seen"
    assert lifted.right_arm.tip.y > struck.right_arm.tip.y + 0.05
    assert struck.pose.spread == -1


def test_a_flick_is_a_closed_hand_that_opens_once_and_a_snap_an_open_one_that_shuts() -> None:
    """Fingers alone, in the colour of what moves, were read as fingers that wiggle."""
    flick = moved(Action("gesture", Fraction(2), "flick", level="high", body_part="fingers"))
    snap = moved(Action("gesture", Fraction(1), "snap", level="middle"))
    assert [one.pose.spread for one in flick.keys.moments] == [-1, 1]
    assert [one.pose.spread for one in snap.keys.moments] == [1, -1]
    for done in (flick, snap):
        first, last = (skeleton(one.pose).right_arm.tip for one in done.keys.moments)
        assert first.minus(last).length > 0.1
        assert beyond(skeleton(done.shown)) == ()


def test_who_is_pulled_by_one_arm_leans_back_with_open_hands() -> None:
    """Drawn with fists, and leaning after it, it was read as a punch."""
    action = gesture("tug", direction="forwards", body_part="one arm", dynamics=("strong",))
    body = skeleton(moved(action).end)
    assert body.neck.z < body.pelvis.z - 0.02
    assert body.pose.spread > -0.5
    assert body.right_arm.tip.z > body.pelvis.z + 0.25
    assert body.left_arm.tip.y < body.pelvis.y


def test_both_arms_go_aside_where_arms_are_told_to_and_one_where_one_is() -> None:
    """Arms that go to the left were drawn as one, from the side: behind the body."""
    both = Action(
        "gesture", Fraction(4), "give", level="middle to low", direction="sideways", side="left",
        body_part="arms",
    )  # fmt: skip
    done = moved(both)
    assert view_of(done) == 0
    body = skeleton(done.end)
    assert body.left_arm.tip.x < body.pelvis.x - 0.25
    assert body.right_arm.tip.x < body.right_arm.shoulder.x - 0.1
    _, (right, down) = way(figure_of(both))
    assert right < -5
    assert down > 5
    one = moved(Action("gesture", Fraction(2), level="middle", direction="sideways",
                       side="right", body_part="one arm"))  # fmt: skip
    assert skeleton(one.end).left_arm.tip.y < skeleton(one.end).pelvis.y


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_arrow_of_winding_back_ends_behind_where_the_arms_are(side: str) -> None:
    """Its head was before the body, and readers swung round to the front."""
    action = Action("transfer", Fraction(4), "load", level="middle to low", side=side)
    done = moved(action)
    view = View(view_of(done))
    body = skeleton(done.end)
    hands = [view.at(arm.tip)[0] for arm in (body.right_arm, body.left_arm)]
    back = view.at(body.facing.forwards.times(-1.0))[0]
    _, (right, _) = way(figure_of(action))
    assert right * back > 0
    assert max(hand * math.copysign(1, back) for hand in hands) > 15
    legs = sorted((body.right_leg, body.left_leg), key=lambda leg: leg.knee_bend)
    assert legs[1].knee_bend > legs[0].knee_bend + 20


@given(joined, bodies)
def test_a_hand_over_the_trunk_has_an_edge_of_paper(
    pair: tuple[Action, Action | None], body: str
) -> None:
    """Unless its arm hangs, or is the further one, which is drawn behind."""
    done = moved(*pair, body)
    shown, view = skeleton(done.shown), View(view_of(done))
    over = arms_over(shown, view)
    for arm in (shown.right_arm, shown.left_arm):
        hand_in = inside(view.at(arm.tip), torso(shown, view)) > 0
        if hand_in and arm.elbow.y - arm.tip.y < 0.18:
            assert any(one[3] == arm.tip for one in over)
