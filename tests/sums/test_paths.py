"""Where a page's own script puts everybody is where the model has them, at every moment."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.paths.for_pages import paths_for_page
from build_tools.paths.hall import Hall
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from tests.paths.strategies import dances, halls, pupils
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit

NEAR, TURNED, LEVEL = 0.02, 1.5, 0.02
"""Metres, degrees, and parts of the way from one level to the next."""


def assert_alike(paths: Paths, moments: list[float]) -> None:
    read = ask("paths.from", json.loads(paths_for_page(paths)))
    for moment in moments:
        shown = ask("paths.at", read, moment)
        for (x, y, facing, level), one in zip(shown, paths.everybody(moment), strict=True):
            assert x == pytest.approx(one.x, abs=NEAR)
            assert y == pytest.approx(one.y, abs=NEAR)
            assert (facing - one.facing + 180) % 360 - 180 == pytest.approx(0, abs=TURNED)
            assert level == pytest.approx(one.level, abs=LEVEL)


@given(dances(), pupils, halls, st.floats(0, 1))
def test_a_made_dance_is_where_the_model_has_it(
    dance: Dance, many: int, hall: Hall, part: float
) -> None:
    paths = paths_of(dance, many, hall)
    assert_alike(paths, [0.0, paths.lasts * part, paths.lasts])


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_a_unit_is_where_the_model_has_it_at_every_count(unit: Unit) -> None:
    paths = paths_of(unit.dance)
    assert_alike(paths, [count / 2 for count in range(0, int(paths.lasts) * 2, 7)])
