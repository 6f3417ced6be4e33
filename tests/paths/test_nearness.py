"""How near dancers come, against every moment looked at with a geometry library."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from scipy.spatial.distance import pdist, squareform

from build_tools.model.dance import Dance
from build_tools.paths.hall import Hall
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.nearness import nearer_than
from build_tools.paths.whole import paths_of
from tests.paths.dances import dance_of, section, standing
from tests.paths.strategies import dances, halls

LOOKS = 16
"""Looks a count of the library's."""
A_HAND = 0.15
LIMIT = 0.6


def by_library(paths: Paths, one: StretchPaths) -> np.ndarray:
    """The least distance of each two dancers at so many looks a count, as a matrix."""
    least = np.full((paths.dancers, paths.dancers), np.inf)
    for look in range(int(one.lasts * LOOKS) + 1):
        moment = min(one.begins + look / LOOKS, one.ends)
        places = np.array([(m.x, m.y) for m in paths.everybody(moment)])
        least = np.minimum(least, squareform(pdist(places)))
    np.fill_diagonal(least, np.inf)
    return least


@settings(max_examples=20)
@given(dances(), halls)
def test_the_nearest_approach_is_that_of_the_library(dance: Dance, hall: Hall) -> None:
    """Nobody is missed, nobody is made up, and the metres are right to a hand's width."""
    paths = paths_of(dance, 8, hall)
    found = nearer_than(paths, LIMIT)
    for n, one in enumerate(paths.stretches):
        if one.section is None or not one.counted:
            continue
        least = by_library(paths, one)
        mine = {near.dancers: near.metres for near in found if near.stretch == n}
        for a in range(paths.dancers):
            for b in range(a + 1, paths.dancers):
                if (a, b) in mine:
                    assert mine[a, b] == pytest.approx(min(least[a, b], LIMIT), abs=A_HAND)
                else:
                    assert least[a, b] >= LIMIT - A_HAND


def test_who_meets_whom_and_on_which_count() -> None:
    """Four steps apart, four steps each in four counts: they meet on count 2."""
    facing = standing("pairs", "partner", within="face to face", apart=4, groups_apart=6)
    dance = dance_of(
        "A",
        {"A": section(4, facing, [{"what": ["go"], "as": "unison"}])},
        {"go": [{"travel": 4, "direction": "forwards"}]},
    )
    paths = paths_of(dance, 4)
    found = nearer_than(paths, paths.body.arm)
    assert [one.dancers for one in found] == [(0, 1), (2, 3)]
    assert all(one.count == pytest.approx(2) for one in found)
    assert all(one.metres == pytest.approx(0, abs=1e-6) for one in found)
    assert all(one.at_start == pytest.approx(4 * paths.body.step) for one in found)
