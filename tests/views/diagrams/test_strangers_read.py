"""Figures that were read as something else by people who never danced, and what is there now."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest

from build_tools.body.poses import moved
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import figure_of
from build_tools.views.diagrams.body_lines import PLACED, View
from build_tools.views.diagrams.body_scenes import scene
from build_tools.views.diagrams.body_views import view_of

LEAN = Action(
    "gesture", Fraction(4), "lean", level="middle", direction="backwards", body_part="one arm"
)
TAUT = Action("stillness", Fraction(1), "taut", level="middle")
DRAW = Action("travel", Fraction(2), "draw", level="middle", direction="forwards", step="walk")
TIGHT = Action("stillness", Fraction(2), "tight", level="high", dynamics=("strong", "bound"))


def bodies(action: Action, before: Action | None = None, body: str = "standing") -> int:
    return sum(len(PLACED.findall(one)) for one in scene(moved(action, before, body)).pieces)


@pytest.mark.parametrize("side", ["left", "right", None])
@pytest.mark.parametrize("level", ["low", "middle"])
def test_who_leans_from_somebody_is_drawn_with_somebody(level: str, side: str | None) -> None:
    lean = Action(
        "gesture", Fraction(4), "lean", level=level, direction="backwards", body_part="one arm",
        side=side,
    )  # fmt: skip
    taut = Action("stillness", Fraction(1), "taut", level=level)
    assert (bodies(lean), bodies(taut, lean)) == (4, 2), "two at the start and two at the end"
    assert bodies(Action("gesture", Fraction(4), "lean", level=level, direction="backwards")) == 2
    pieces = scene(moved(taut, lean)).pieces
    places = [float(found["right"]) for one in pieces for found in PLACED.finditer(one)]
    body, view = skeleton(moved(lean).end), View(view_of(moved(lean)))
    arm = body.left_arm if side == "left" else body.right_arm
    reach = view.at(arm.tip)[0] - view.at(arm.shoulder)[0]
    assert 1.5 * reach < places[1] - places[0] < 2 * reach, "their hands are on one another"


def test_who_sits_leans_alone() -> None:
    """The partner stands, and is told so in words."""
    for body in ("chair", "wheels"):
        assert bodies(LEAN, None, body) == 2
        assert bodies(TAUT, LEAN, body) == 1


@pytest.mark.parametrize("way", ["forwards", "backwards"])
def test_an_arm_that_is_drawn_back_is_seen_in_front_first(way: str) -> None:
    """A hand at the hip with an arrow to it was read as a hand on the hip."""
    action = Action("travel", Fraction(2), "draw", level="middle", direction=way, step="walk")
    done = moved(action)
    arm = skeleton(done.shown).right_arm
    assert arm.elbow.z < arm.shoulder.z - 0.1, "the elbow is behind"
    assert done.shown.spread == -1, "a fist"
    passing = [one.pose for one in done.keys.moments[1:-1]]
    assert any(max(p.right_arm.raised * (p.right_arm.plane > 45),
                   p.left_arm.raised * (p.left_arm.plane > 45)) > 80 for p in passing)  # fmt: skip
    assert 'opacity=".3"' in figure_of(action).replace("0.3", ".3")


def test_what_is_tight_is_narrow_and_pressed_from_both_sides() -> None:
    tight = moved(TIGHT)
    drawn = figure_of(TIGHT)
    assert len(re.findall('class="way"', drawn)) == 2, "pressed together, and still"
    assert "way" not in "".join(
        re.findall(r"<path[^>]*way[^>]*>", figure_of(Action("stillness", Fraction(2), "rest")))[1:]
    )
    small = skeleton(moved(Action("stillness", Fraction(2), "tight", level="high", size="small",
                                  dynamics=("bound",))).end)  # fmt: skip
    wide = max(abs(arm.elbow.x) for arm in (small.right_arm, small.left_arm))
    assert wide < 0.2
    assert abs(small.right_leg.ankle.x - small.left_leg.ankle.x) < 0.08
    assert tight.end.right_arm.raised > 150


@pytest.mark.parametrize("level", ["high to low", "middle", "high"])
def test_what_settles_lets_the_head_and_arms_hang(level: str) -> None:
    """A crouch that looks ahead was read as getting ready."""
    done = moved(Action("transfer", Fraction(2), "settle", level=level, dynamics=("light",)))
    body = skeleton(done.end)
    assert done.end.trunk.nod > 25
    assert body.right_arm.tip.y < body.right_arm.shoulder.y - 0.15
    assert view_of(done) > 45, "a head that hangs is seen from the side alone"


def test_a_pop_is_small_with_the_fingers_spread_before_the_face() -> None:
    pop = Action("jump", Fraction(1), "pop", level="high", size="small", body_part="hands")
    done = moved(pop)
    peak, start = skeleton(done.shown), skeleton(done.keys.moments[0].pose)
    assert done.shown.spread == 1
    assert peak.right_arm.tip.y < peak.crown.y + 0.05, "no reach"
    large = skeleton(moved(Action("jump", Fraction(1), "leap", level="high")).keys.moments[0].pose)
    assert start.pelvis.y > large.pelvis.y + 0.05
