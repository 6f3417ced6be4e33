"""A ring goes round its middle: sideways along a curve, looking in; forwards, looking along it."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.body.ages import at_age
from build_tools.model.dance import Action
from build_tools.paths.hall import bearing, metres
from build_tools.paths.legs import MIDDLE
from build_tools.paths.walking import Dancer, do, made_ready
from tests.support.sound_bank import whole_bank

MIDDLE_OF_RING = (3.0, 4.0)
WIDE = 1.5


def round_the_middle(side: str, **more: object) -> Action:
    return Action(
        kind="travel", counts=Fraction(8), direction="sideways", side=side, pathway="curved",
        towards="centre", steps=Fraction(8), **more,  # type: ignore[arg-type]
    )  # fmt: skip


def along_the_ring(side: str, turn_by: str) -> Action:
    return Action(
        kind="travel", counts=Fraction(8), direction="forwards", side=side, pathway="curved",
        towards="centre", steps=Fraction(8), turn_by=turn_by,
    )  # fmt: skip


def on_the_ring() -> Dancer:
    """A dancer behind the middle, who looks at it."""
    return Dancer(MIDDLE_OF_RING[0], MIDDLE_OF_RING[1] + WIDE, 0.0, MIDDLE)


def gone(dancer: Dancer, *actions: Action) -> Dancer:
    start = 0.0
    for action in actions:
        end = start + float(action.counts)
        move = made_ready(action, start, end, at_age(6.5), math.inf)
        do(dancer, move, 0.0, MIDDLE_OF_RING, None)
        start = end
    return dancer


@pytest.mark.parametrize(("side", "sign"), [("left", -1), ("right", 1)])
def test_a_dancer_stays_on_the_ring_and_looks_in(side: str, sign: int) -> None:
    dancer = gone(on_the_ring(), round_the_middle(side))
    for leg in dancer.legs:
        here = (leg.x1, leg.y1)
        assert metres(here, MIDDLE_OF_RING) == pytest.approx(WIDE)
        assert leg.face1 % 360 == pytest.approx(bearing(here, MIDDLE_OF_RING), abs=1e-6)
    first = dancer.legs[0]
    assert (first.x1 - first.x0) * sign > 0, "the left is on the left of who looks in"


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("turn_by", "round_by"), [("quarter", 90), ("half", 180), ("whole", 360)])
def test_forwards_a_dancer_looks_where_the_ring_goes_and_in_at_the_end(
    side: str, turn_by: str, round_by: int
) -> None:
    dancer = gone(on_the_ring(), along_the_ring(side, turn_by))
    aside = gone(on_the_ring(), round_the_middle(side, turn_by=turn_by))
    assert [(leg.x1, leg.y1) for leg in dancer.legs] == [(leg.x1, leg.y1) for leg in aside.legs]
    for leg in dancer.legs[1:-1]:
        went = bearing((leg.x0, leg.y0), (leg.x1, leg.y1))
        off = (leg.face0 - went + 180) % 360 - 180
        assert abs(off) <= round_by / 8 / 2 + 1e-6, "no more off than half the bend of a chord"
    last = dancer.legs[-1]
    looks_in = bearing((last.x1, last.y1), MIDDLE_OF_RING)
    assert (last.face1 - looks_in + 180) % 360 - 180 == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize("left_out", ["side", "turn_by"])
def test_forwards_with_no_side_or_no_part_of_a_round_is_in_to_the_middle(left_out: str) -> None:
    action = replace(along_the_ring("left", "whole"), **{left_out: None})  # type: ignore[arg-type]
    assert not action.goes_round


def test_there_and_back_is_home() -> None:
    dancer = gone(on_the_ring(), round_the_middle("left"), round_the_middle("right"))
    assert metres((dancer.x, dancer.y), (3.0, 5.5)) < 1e-6


def test_all_the_way_round_is_home_however_wide_the_ring() -> None:
    dancer = gone(on_the_ring(), round_the_middle("left", turn_by="whole"))
    assert metres((dancer.x, dancer.y), (3.0, 5.5)) < 1e-6
    assert max(metres((leg.x1, leg.y1), (3.0, 5.5)) for leg in dancer.legs) == pytest.approx(
        2 * WIDE
    )


def test_a_published_ring_is_said_as_one() -> None:
    from build_tools.views.words.how_far import how_far_in_words

    (unit,) = (unit for unit in whole_bank().units if unit.slug == "gathering-peascods")
    action = unit.dance.motifs["ring"].actions[0]
    assert action.goes_round
    assert action.direction == "forwards"
    assert how_far_in_words(action) == "8 steps, round the middle"
    inside = unit.dance.developments["inner-ring"].added[0].action
    assert how_far_in_words(inside) == "7 steps, all the way round the middle"
