"""What a hand or the head does is drawn at that hand or head, and hands over the body are seen."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given

from build_tools.body.balance import inside
from build_tools.body.poses import moved
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


@pytest.mark.parametrize(("counts", "ticks"), [(1, 1), (2, 2)])
def test_a_knock_has_a_tick_for_each_time(counts: int, ticks: int) -> None:
    action = Action("gesture", Fraction(counts), "knock", level="middle", body_part="hands")
    found = re.findall(r'<path d="([^"]*)" class="way"', figure_of(action))
    assert [one.count("M") for one in found] == [ticks]


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
