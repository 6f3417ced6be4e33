"""Which licence may stand inside which.

Source: Creative Commons, licence compatibility chart (Frequently Asked Questions, "Can I combine
material under different Creative Commons licenses in my work?"); for OGL-UK-3.0: The National
Archives, Open Government Licence v3.0, "compatible with the Creative Commons Attribution License
4.0".
"""

from __future__ import annotations

import itertools
import json
from pathlib import Path

import pytest

from build_tools.views.licences import asks, may_hold, wholes_for

SHARED = Path(__file__).parents[2] / "schema" / "shared.schema.json"
LICENCES = json.loads(SHARED.read_text(encoding="utf-8"))["$defs"]["licence"]["enum"]
CC0, BY, SA, NC, NC_SA, OGL = LICENCES
CHART = {
    CC0: {CC0, BY, SA, NC, NC_SA, OGL},
    BY: {BY, SA, NC, NC_SA, OGL},
    SA: {SA},
    NC: {NC, NC_SA},
    NC_SA: {NC_SA},
    OGL: {BY, SA, NC, NC_SA, OGL},
}


@pytest.mark.parametrize(("part", "whole"), list(itertools.product(LICENCES, repeat=2)))
def test_follows_the_chart(part: str, whole: str) -> None:
    assert may_hold(whole, part) is (whole in CHART[part])


@pytest.mark.parametrize("licence", LICENCES)
def test_every_licence_may_hold_its_own(licence: str) -> None:
    assert may_hold(licence, licence)


@pytest.mark.parametrize(("part", "whole"), list(itertools.permutations(LICENCES, 2)))
def test_what_a_licence_asks_is_passed_on(part: str, whole: str) -> None:
    """Whatever may hold the whole may hold its part too."""
    if may_hold(whole, part):
        assert set(wholes_for(whole)) <= set(wholes_for(part))


def test_says_what_is_asked() -> None:
    assert asks(BY, NC_SA) == "that it is not used to make money"
    assert asks(BY, SA) == f"that what is made with it is shared as {SA} too"
    assert asks(NC_SA, SA) == f"that what is made with it is shared as {SA} too"
    assert asks(CC0, BY) == "for a credit"
