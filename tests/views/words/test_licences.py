"""Which licence may stand inside which.

Source: Creative Commons, Frequently Asked Questions: the adapter's licence chart ("If I derive or
adapt material offered under a Creative Commons license, which CC license(s) can I use?") and the
collection chart ("If I create a collection that includes a work offered under a CC license, which
license(s) may I choose for the collection?"); for OGL-UK-3.0: The National
Archives, Open Government Licence v3.0, "compatible with the Creative Commons Attribution License
4.0".
"""

from __future__ import annotations

import itertools
import json
from pathlib import Path

import pytest

from build_tools.views.words.licences import asks, may_adapt, may_be_changed, may_hold, wholes_for

SHARED = Path(__file__).parents[3] / "schema" / "shared.schema.json"
LICENCES = json.loads(SHARED.read_text(encoding="utf-8"))["$defs"]["licence"]["enum"]
CC0, BY, SA, NC, NC_SA, OGL, ND, NC_ND = LICENCES
CHART = {
    CC0: {CC0, BY, SA, NC, NC_SA, OGL, ND, NC_ND},
    BY: {BY, SA, NC, NC_SA, OGL, ND, NC_ND},
    SA: {SA},
    NC: {NC, NC_SA, NC_ND},
    NC_SA: {NC_SA},
    OGL: {BY, SA, NC, NC_SA, OGL, ND, NC_ND},
    ND: set(),
    NC_ND: set(),
}
"""The adapter's licence chart: the licences (green and yellow) for what is made from each."""
FOR_MONEY = {CC0, BY, SA, OGL, ND}
"""The collection chart: a collection that may be used for money holds no work under NC."""


@pytest.mark.parametrize("part", LICENCES)
def test_follows_the_chart(part: str) -> None:
    assert may_be_changed(part) is bool(CHART[part])
    for whole in LICENCES:
        assert may_adapt(whole, part) is (whole in CHART[part]), whole
        for changed in (True, False) if CHART[part] else ():
            assert may_hold(whole, part, changed) is (whole in CHART[part]), whole


@pytest.mark.parametrize(("part", "whole"), list(itertools.product((ND, NC_ND), LICENCES)))
def test_what_may_not_be_changed_stands_in_a_collection_as_it_is(part: str, whole: str) -> None:
    assert not may_hold(whole, part, changed=True)
    assert may_hold(whole, part, changed=False) is not (part == NC_ND and whole in FOR_MONEY)


@pytest.mark.parametrize("licence", LICENCES)
def test_every_licence_may_hold_its_own(licence: str) -> None:
    assert may_hold(licence, licence, changed=False)


def test_what_a_licence_asks_is_passed_on() -> None:
    """Whatever may hold the whole may hold its part too."""
    for part, whole in itertools.permutations(LICENCES, 2):
        if may_adapt(whole, part):
            assert set(wholes_for(whole)) <= set(wholes_for(part)), (part, whole)


def test_says_what_is_asked() -> None:
    assert asks(BY, NC_SA) == "that it is not used to make money"
    assert asks(BY, SA) == f"that what is made with it is shared as {SA} too"
    assert asks(NC_SA, SA) == f"that what is made with it is shared as {SA} too"
    assert asks(NC, NC_ND) == asks(CC0, ND) == "that no changed copy of it is shared"
    assert asks(CC0, BY) == "for a credit"
