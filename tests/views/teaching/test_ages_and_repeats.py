"""Ages of editions in bands, and what comes back."""

from __future__ import annotations

import pytest
from hypothesis import given

from build_tools.views.teaching.covers import Covers
from build_tools.views.teaching.editions import BANDS, OLDER, UNDATED, bands
from build_tools.views.teaching.repeats import repeats
from tests.views.teaching.made_covers import banks, bare


@pytest.mark.parametrize(
    ("issued", "name"),
    [
        ("2026-11-25", BANDS[0][1]),
        ("2026-05-26", BANDS[0][1]),
        ("2026-05-25", BANDS[1][1]),
        ("2025-11-26", BANDS[1][1]),
        ("2025-11-25", BANDS[2][1]),
        ("2024-11-25", BANDS[3][1]),
        ("2023-11-25", BANDS[4][1]),
        ("2021-11-26", BANDS[4][1]),
        ("2021-11-25", OLDER),
        ("2026-11-26", UNDATED),
        ("2026-02-30", UNDATED),
    ],
)
def test_an_edition_is_in_the_band_of_its_whole_months(issued: str, name: str) -> None:
    (found,) = bands([bare("one", issued=issued)], "2026-11-25")
    assert found.name == name


def test_the_oldest_come_first_and_every_unit_is_in_one_band() -> None:
    days = ("2026-10-01", "2020-01-01", "2019-01-01", "2030-01-01", "2025-06-01")
    units = [bare(f"u{n}", issued=day) for n, day in enumerate(days)]
    found = bands(units, "2026-11-25")
    assert [unit.slug for band in found for unit in band.units] == ["u2", "u1", "u4", "u0", "u3"]


@given(banks())
def test_what_comes_back_is_what_two_units_have_the_most_often_first(
    units: tuple[Covers, ...],
) -> None:
    found = repeats(units, lambda one: one.words["actions"], 100)
    for one in found:
        assert one.units == tuple(u for u in units if one.what in u.words["actions"])
    assert {one.what for one in found} == {
        word
        for unit in units
        for word in unit.words["actions"]
        if sum(word in other.words["actions"] for other in units) > 1
    }
    assert [len(one.units) for one in found] == sorted((len(r.units) for r in found), reverse=True)
    assert repeats(units, lambda one: one.words["actions"], 2) == found[:2]
