"""What a page is given of a dance: small, and the same for every class and hall."""

from __future__ import annotations

import json

from hypothesis import given

from build_tools.model.dance import Dance
from build_tools.paths.for_pages import page_data, paths_for_page, roles_in
from build_tools.paths.hall import Hall
from build_tools.paths.whole import paths_of
from tests.paths.dances import pool
from tests.paths.strategies import dances, halls, pupils
from tests.support.sound_bank import every_unit

LARGEST = 5_000
"""Bytes for a dance of three minutes."""


def test_a_dance_is_small_whatever_the_class() -> None:
    for unit in every_unit():
        assert len(paths_for_page(paths_of(unit.dance)).encode()) < LARGEST
    assert len(paths_for_page(paths_of(pool())).encode()) < LARGEST


@given(dances(), pupils, halls)
def test_neither_class_nor_hall_changes_what_is_written_of_the_dance(
    dance: Dance, many: int, hall: Hall
) -> None:
    """So that a page may put another class down in another hall."""
    here = json.loads(paths_for_page(paths_of(dance)))
    there = json.loads(paths_for_page(paths_of(dance, many, hall)))
    assert (there.pop("pupils"), there.pop("hall")) == (many, [hall.width, hall.depth])
    del here["pupils"], here["hall"]
    assert here == there


def test_rows_are_told_and_parts_follow_one_another() -> None:
    paths = paths_of(pool(), 9)
    data = page_data(paths)
    assert data["sections"]["C"]["rows"] == [["ones", [1]], ["twos", [2]]]
    (crabs,) = [one for one in paths.stretches if one.section and one.section.letter == "C"]
    assert roles_in(crabs) == (0, 1, 0, 0, 1, 0, 1, 0, 1), "one over does what the first does"
    assert [part.get("letter") for part in data["parts"]] == [
        "A", None, "B", None, "C", None, "D", None, "A",
    ]  # fmt: skip
    assert data["names"] == {"left": "sea", "right": "beach"}
    assert data["lined"] == ["front"]
