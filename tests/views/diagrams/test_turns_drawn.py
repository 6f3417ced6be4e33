"""Turns are drawn the way they are danced: to the right is clockwise, seen from above.

That a turn to the right is clockwise from above is common practice, no source: a dancer who faces
north and turns a quarter to the right faces east.
"""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.body.pose import Pose
from build_tools.body.skeleton import skeleton
from build_tools.views.diagrams.body_arrows import ring
from build_tools.views.diagrams.body_lines import View
from build_tools.views.diagrams.marks import marks
from tests.support.sound_bank import whole_bank

FROM_BEHIND = View(0.0)


def points(drawn: str) -> list[tuple[float, float]]:
    """The corners of a path that begins with one absolute place and goes on in small ways."""
    found = re.search(r'd="M([^l]+)l([^M]+)M', drawn)
    assert found
    numbers = [[float(n) for n in re.findall(r"-?\d+\.?\d*", one)] for one in found.groups()]
    (x, y), ways = numbers[0], numbers[1]
    corners = [(x, y)]
    for dx, dy in zip(ways[::2], ways[1::2], strict=True):
        x, y = x + dx, y + dy
        corners.append((x, y))
    return corners


@pytest.mark.parametrize(("left", "way"), [(False, -1), (True, 1)])
def test_the_arrow_round_a_body_passes_the_near_side_as_the_body_does(left: bool, way: int) -> None:
    """Seen from behind, the heel is the near side: it goes where the arrow goes past it."""
    corners = points(ring(0, 0, 30, left, back=False, feel=()))
    near = max(range(1, len(corners) - 1), key=lambda n: corners[n][1])
    assert (corners[near + 1][0] - corners[near - 1][0]) * way > 0
    feet = [
        FROM_BEHIND.at(skeleton(replace(Pose(), turned=turned)).right_leg.toe)
        for turned in (0.0, -30.0 if left else 30.0)
    ]
    assert (feet[1][0] - feet[0][0]) * -way > 0, "the toe, on the far side, goes the other way"


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
