"""The third of a three, who shares a partner, goes straight across and never on a slant."""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_tools.body.ages import at_age
from build_tools.model.dance import Standing
from build_tools.paths.facings import facings, sharing
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
    assert sharing(((0, 1), (2, 3, 4), (5, 6, 7, 8, 9), (10,))) == {4: 2, 9: 7}


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
