"""Turns are drawn the way they are danced: to the right is clockwise, seen from above.

That a turn to the right is clockwise from above is common practice, no source: a dancer who faces
north and turns a quarter to the right faces east.
"""

from __future__ import annotations

import math
import re
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.pose import Pose
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import figure_of
from build_tools.views.diagrams.body_lines import View
from build_tools.views.diagrams.body_turns import FLAT, ring
from build_tools.views.diagrams.marks import marks
from tests.support.sound_bank import whole_bank

FROM_BEHIND = View(0.0)


def points(drawn: str) -> list[tuple[float, float]]:
    """The corners of the arrow: a path that begins with one absolute place, its head after it."""
    found = re.search(r'd="M([^la]+)l([^M]+)M', drawn)
    assert found
    numbers = [[float(n) for n in re.findall(r"-?\d+\.?\d*", one)] for one in found.groups()]
    (x, y), ways = numbers[0], numbers[1]
    corners = [(x, y)]
    for dx, dy in zip(ways[::2], ways[1::2], strict=True):
        x, y = x + dx, y + dy
        corners.append((x, y))
    return corners


@pytest.mark.parametrize(("degrees", "way"), [(360, -1), (-360, 1), (180, -1), (-180, 1)])
def test_the_arrow_round_a_body_passes_the_near_side_as_the_body_does(
    degrees: float, way: int
) -> None:
    """Seen from behind, the heel is the near side: it goes where the arrow goes past it."""
    corners = points(ring(0, 0, 30, degrees, feel=()))
    near = max(range(1, len(corners)), key=lambda n: corners[n][1])
    assert (corners[near][0] - corners[near - 1][0]) * way > 0
    feet = [
        FROM_BEHIND.at(skeleton(replace(Pose(), turned=turned)).right_leg.toe)
        for turned in (0.0, math.copysign(30.0, degrees))
    ]
    assert (feet[1][0] - feet[0][0]) * -way > 0, "the toe, on the far side, goes the other way"


@given(st.sampled_from((90, 120, 180, 270, 360)), st.booleans(), st.floats(20, 60))
def test_the_arrow_is_as_long_a_part_of_the_round_as_the_turn(
    degrees: int, left: bool, wide: float
) -> None:
    """From where the dancer faced, on the far side, to where they face at last; once round ends
    short of its start by the room of its head."""
    told = -degrees if left else degrees
    corners = points(ring(0, 0, wide, told, feel=()))
    angles = [math.degrees(math.atan2(x, -y / FLAT)) for x, y in corners]
    gone = sum((b - a + 180) % 360 - 180 for a, b in pairwise(angles))
    assert abs(angles[0]) < 3
    assert gone == pytest.approx(math.copysign(min(degrees, 340), told), abs=6)


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
