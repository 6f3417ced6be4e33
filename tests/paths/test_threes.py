"""The third of a three, who shares a partner, goes straight across and never on a slant."""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_tools.body.ages import at_age
from build_tools.model.dance import Standing
from build_tools.paths.facings import facings, in_threes
from build_tools.paths.hall import Area, metres
from build_tools.paths.places import slots
from build_tools.paths.whole import paths_of
from tests.paths.dances import dance_of, section, standing

AREA = Area(-9, -5, 9, 5)


@pytest.mark.parametrize("towards", [None, "partner"])
def test_the_third_of_a_three_slides_as_the_first_does(towards: str | None) -> None:
    """Face to face, 1 with 2 and 3 behind 1: 3 looks and slides across beside 2, as 1 to 2."""
    go = {"travel": 2, "direction": "forwards", "steps": 2}
    start = standing("pairs", "partner", within="face to face", apart=5, groups_apart=3)
    dance = dance_of(
        "A",
        {"A": section(2, start, [{"what": ["go"], "as": "unison"}], groups={"size": 2})},
        {"go": [go | ({"towards": towards} if towards else {})]},
    )
    paths = paths_of(dance, 3)
    first, second, third = (
        (legs[0].x1 - legs[0].x0, legs[0].y1 - legs[0].y0) for legs in paths.legs
    )
    assert third == pytest.approx(first)
    assert second == pytest.approx((-first[0], -first[1]))
    assert abs(first[0]) > 0
    assert first[1] == pytest.approx(0)


def test_who_does_not_stand_squarely_beside_the_first_looks_at_the_partner() -> None:
    places = [(0.0, 0.0), (2.0, 0.0), (1.0, 1.7)]
    centres = [(1.0, 0.6)] * 3
    assert facings("partner", places, ((0, 1, 2),), centres, AREA)[2] == pytest.approx(
        30.4655, abs=1
    )
    assert in_threes(((0, 1), (2, 3, 4), (5, 6, 7, 8, 9), (10,))) == {
        **dict.fromkeys((2, 3, 4), (2, 3, 4)),
        **dict.fromkeys((7, 8, 9), (7, 8, 9)),
    }


def test_the_third_among_pairs_stands_near_the_first_however_far_the_partner() -> None:
    """Seven steps from bank to bank; two stand together on one of them."""
    body = at_age(10)
    one = Standing("pairs", "front", "Banks", within="face to face", apart=Fraction(7))
    first, second, third = slots(one, (3, 2, 2), AREA, body).groups[0]
    assert metres(first, second) == pytest.approx(7 * body.step)
    assert metres(first, third) == pytest.approx(2 * body.step)
    assert first[0] == third[0]
    alone = slots(one, (3,), AREA, body).groups[0]
    assert metres(alone[0], alone[2]) == pytest.approx(7 * body.step)


@pytest.mark.parametrize("side", ["front", "left"])
def test_the_third_may_stand_behind_the_first_with_the_partner_of_both_between_them(
    side: str,
) -> None:
    """After home time: "the ones one behind the other, two steps apart, with the two level between
    them, two steps to the side; when all turn, the ones are side by side"."""
    body = at_age(6.5)
    two = Fraction(2)
    one = Standing(
        "pairs",
        side,
        "Spots",
        within="side by side",
        apart=two,
        groups_apart=two,
        columns=3,
        third="behind the first",
    )
    sizes = (3, 2, 2, 2)
    found = slots(one, sizes, AREA, body).groups
    first, second, third = found[0]
    between = ((first[0] + third[0]) / 2, (first[1] + third[1]) / 2)
    assert metres(first, third) == pytest.approx(2 * body.step)
    assert metres(second, between) == pytest.approx(2 * body.step)
    # the three stands last, with nobody behind it
    ahead = 1 if side == "front" else 0
    assert third[ahead] == pytest.approx(max(place[ahead] for group in found for place in group))
    places = [place for group in found for place in group]
    together = ((0, 1, 2), (3, 4), (5, 6), (7, 8))
    ways = facings("partner", places, together, places, AREA)
    right = 90.0 if side == "front" else 0.0
    assert [round(way, 6) % 360 for way in ways[:3]] == [right, right + 180, right]
