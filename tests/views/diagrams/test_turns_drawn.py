"""Turns are drawn the way they are danced: to the right is clockwise, seen from above.

That a turn to the right is clockwise from above is common practice, no source: a dancer who faces
north and turns a quarter to the right faces east.
"""

from __future__ import annotations

import math
import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.pose import Pose
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import figure_of
from build_tools.views.diagrams.body_lines import View
from build_tools.views.diagrams.body_turns import ring
from build_tools.views.diagrams.marks import marks
from tests.support.sound_bank import whole_bank

FROM_BEHIND = View(0.0)


ARC = re.compile(
    r'd="M(?P<x>-?[\d.]+)(?P<y>[ -][\d.]+)a(?P<wide>[\d.]+) (?P<high>[\d.]+) 0 (?P<large>[01]) '
    r"(?P<clockwise>[01])(?P<right>[ -][\d.]+)(?P<down>[ -][\d.]+)M"
)
"""The arrow: an arc (SVG 2, section 9.3.8), its head after it."""


def gone_round(drawn: str) -> float:
    """How far round its middle the arrow goes, in degrees; less than 0 is against the clock, as
    it is seen. The two flags say which of the ellipse's arcs between its ends it is."""
    found = ARC.search(drawn)
    assert found
    told = {name: float(value) for name, value in found.groupdict().items()}
    a = math.atan2(told["x"] / told["wide"], -told["y"] / told["high"])
    b = math.atan2(
        (told["x"] + told["right"]) / told["wide"], -(told["y"] + told["down"]) / told["high"]
    )
    clockwise = math.degrees(b - a) % 360
    gone = clockwise if told["clockwise"] else clockwise - 360
    assert (abs(gone) > 180) == told["large"] or abs(abs(gone) - 180) < 3
    return gone


@pytest.mark.parametrize("degrees", [360, -360, 180, -180])
def test_the_arrow_round_a_body_passes_the_near_side_as_the_body_does(degrees: float) -> None:
    """Seen from behind, the toe is on the far side: it goes where the arrow starts to go."""
    feet = [
        FROM_BEHIND.at(skeleton(replace(Pose(), turned=turned)).right_leg.toe)
        for turned in (0.0, math.copysign(30.0, degrees))
    ]
    assert (feet[1][0] - feet[0][0]) * gone_round(ring(0, 0, 30, degrees, feel=())) > 0


@given(st.sampled_from((90, 120, 180, 270, 360)), st.booleans(), st.integers(20, 60))
def test_the_arrow_is_as_long_a_part_of_the_round_as_the_turn(
    degrees: int, left: bool, wide: int
) -> None:
    """From where the dancer faced, on the far side, to where they face at last; once round ends
    short of its start by the room of its head."""
    told = -degrees if left else degrees
    drawn = ring(0, 0, wide, told, feel=())
    found = ARC.search(drawn)
    assert found
    assert float(found["x"]) == 0
    assert float(found["y"]) < 0
    assert gone_round(drawn) == pytest.approx(math.copysign(min(degrees, 340), told), abs=4)


@pytest.mark.parametrize(("turn_by", "eyes"), [("half", 1), ("quarter", 0), ("whole", 0)])
def test_who_has_turned_half_way_round_faces_the_reader(turn_by: str, eyes: int) -> None:
    drawn = figure_of(Action("turn", Fraction(2), turn_by=turn_by, side="right"))
    assert drawn.count('class="e" stroke="#fff"') == eyes


def test_the_sign_of_a_turn_goes_the_way_of_its_side() -> None:
    turns = [
        action
        for unit in whole_bank().units
        for motif in unit.dance.motifs.values()
        for action in motif.actions
        if "turn" in action.kinds
    ]
    assert {action.side for action in turns} >= {"left", "right"}
    for action in turns:
        sweep = re.search(r"A5 5 0 1 ([01])", marks(action, 0, 0))
        assert sweep
        assert sweep[1] == ("0" if action.side == "left" else "1"), action.word
