"""A curve bulges to the side that is said; who goes to the side bulges the way they face."""

from __future__ import annotations

import math

import pytest

from build_tools.paths.hall import Point, ahead
from build_tools.paths.legs import Leg, point_of
from build_tools.paths.whole import paths_of
from tests.paths.dances import Data, dance_of, section, standing

OUT = 0.125
"""Part of the way at which a curve and a zigzag are both out to their first side."""


def leg_of(**action: object) -> Leg:
    """The leg of one dancer, facing the back, who goes so."""
    go: Data = {"travel": 4, **action}
    start = standing("line", "back", apart=2)
    dance = dance_of(
        "A", {"A": section(4, start, [{"what": ["go"], "as": "unison"}])}, {"go": [go]}
    )
    ((leg,),) = paths_of(dance, 1).legs
    return leg


def bulge(leg: Leg, towards: float) -> float:
    """Metres by which the leg bulges the way that `towards` points."""
    x, y = point_of(leg, OUT)
    straight: Point = (
        leg.x0 + (leg.x1 - leg.x0) * OUT,
        leg.y0 + (leg.y1 - leg.y0) * OUT,
    )
    way = ahead(towards)
    return (x - straight[0]) * way[0] + (y - straight[1]) * way[1]


@pytest.mark.parametrize("pathway", ["curved", "zigzag"])
@pytest.mark.parametrize("direction", ["forwards", "backwards"])
@pytest.mark.parametrize(("side", "turn"), [("left", -90.0), ("right", 90.0)])
def test_it_bulges_to_the_dancers_own_side(
    pathway: str, direction: str, side: str, turn: float
) -> None:
    leg = leg_of(pathway=pathway, direction=direction, side=side)
    assert bulge(leg, leg.face0 + turn) > 0.05
    assert bulge(leg, leg.face0) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("direction", ["sideways", "diagonal"])
def test_going_to_a_side_it_bulges_ahead(direction: str, side: str) -> None:
    assert bulge(leg_of(pathway="curved", direction=direction, side=side), 180.0) > 0.05


def legs_of(*actions: Data) -> tuple[Leg, ...]:
    """The legs of one dancer, facing the back, who does these one after another."""
    counts = 4 * len(actions)
    start = standing("line", "back", apart=2)
    parts = {"A": section(counts, start, [{"what": ["go"], "as": "unison"}])}
    (legs,) = paths_of(dance_of("A", parts, {"go": list(actions)}), 1).legs
    return legs


def aside(side: str, **more: object) -> Data:
    """Four counts to a side along a curve."""
    return {"travel": 4, "direction": "sideways", "side": side, "pathway": "curved", **more}


@pytest.mark.parametrize(("out", "home"), [("left", "right"), ("right", "left")])
def test_out_in_front_comes_home_behind(out: str, home: str) -> None:
    knock: Data = {"stillness": 4}
    legs = legs_of(aside(out), knock, aside(home), aside(out), aside(home))
    front = [bulge(leg, 180.0) > 0.05 for leg in legs]
    assert front == [True, False, True, False], "round somebody, twice"
    assert legs[1].x1 == pytest.approx(legs[0].x0)


def test_twice_the_same_way_is_no_round() -> None:
    assert all(bulge(leg, 180.0) > 0.05 for leg in legs_of(aside("left"), aside("left")))
    zigzags = legs_of(aside("left", pathway="zigzag"), aside("right", pathway="zigzag"))
    assert all(bulge(leg, 180.0) > 0.05 for leg in zigzags)


def test_a_published_shuttle_goes_over_in_front_and_under_behind() -> None:
    from build_tools.views.dance.on_the_floor import in_a_hall
    from tests.support.sound_bank import whole_bank

    (unit,) = (unit for unit in whole_bank().units if unit.slug == "weaving-shed")
    paths = in_a_hall(unit)
    (part,) = (one for one in paths.stretches if one.section and one.section.letter == "B")
    curved = [leg for leg in paths.legs[1] if leg.bend and leg.start >= part.begins]
    assert [bulge(leg, 0.0) > 0 for leg in curved[:2]] == [True, False]


def test_a_straight_way_does_not_bulge() -> None:
    leg = leg_of(pathway="straight", side="left", direction="forwards")
    assert math.isclose(bulge(leg, leg.face0 - 90), 0, abs_tol=1e-12)
