"""What a page is given: small, always the same, and true to a centimetre."""

from __future__ import annotations

import json
import math
from typing import Any

from hypothesis import given

from build_tools.model.dance import Dance
from build_tools.paths.for_pages import page_data, paths_for_page
from build_tools.paths.hall import Hall, metres
from build_tools.paths.whole import paths_of
from tests.paths.dances import pool
from tests.paths.strategies import dances, halls, pupils
from tests.support.sound_bank import every_unit

LARGEST = 40_000
"""Bytes for a class of 30 and a dance of three minutes."""
A_CENTIMETRE = 0.01


def replayed(data: dict[str, Any], dancer: int) -> tuple[float, float]:
    """Where a dancer is when all their moves are done, in metres."""
    x, y, _, _, way = data["dancers"][dancer]
    for number in data["ways"][way]:
        right, back = (data["moves"][number] + [0, 0])[2:4]
        x, y = x + right, y + back
    return x / 1000, y / 1000


def test_a_dance_of_three_minutes_and_thirty_dancers_is_small() -> None:
    for unit in every_unit():
        assert len(paths_for_page(paths_of(unit.dance)).encode()) < LARGEST
    assert len(paths_for_page(paths_of(pool())).encode()) < LARGEST / 2


@given(dances(), pupils, halls)
def test_nobody_is_a_centimetre_off_at_the_end(dance: Dance, many: int, hall: Hall) -> None:
    paths = paths_of(dance, many, hall)
    data = json.loads(paths_for_page(paths))
    for dancer in range(many):
        end = paths.at(dancer, math.inf)
        assert metres(replayed(data, dancer), (end.x, end.y)) < A_CENTIMETRE


def test_roles_are_told_for_everybody_and_parts_follow_one_another() -> None:
    data = page_data(paths_of(pool(), 9))
    (crabs,) = [part for part in data["parts"] if part.get("letter") == "C"]
    assert crabs["roles"] == ["ones", "twos"]
    assert crabs["who"] == [0, 1, 0, 0, 1, 0, 1, 0, 1], "one over does what the first does"
    assert [part.get("letter") for part in data["parts"]] == [
        "A", None, "B", None, "C", None, "D", None, "A",
    ]  # fmt: skip
    assert data["names"] == {"left": "sea", "right": "beach"}
