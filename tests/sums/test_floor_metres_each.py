"""The floor for each pupil, beside the recommended figures, on the page and in the rule.

3 m² a pupil in primary and 5 m² in secondary dance: One Dance UK (before it the National Dance
Teachers Association), as restated in print. A hall of 140 m² and a classroom of 54 m²: Oxfordshire
County Council, Primary School Brief, annex 1A, January 2007.
"""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.unit import SchoolYears
from build_tools.paths.hall import KNOWN_HALLS
from build_tools.views.dance.recommended_metres import (
    HALLS,
    PRIMARY,
    SECONDARY,
    has_room_for,
    recommended_least,
)
from tests.support.page_script import ask


def floor_space(pupils: int, metres: int, least: int) -> Any:
    return ask("sums.floorSpace", pupils, metres, least)


def square_metres(space: str) -> int | None:
    halls = {name: [one.width, one.depth] for name, one in KNOWN_HALLS.items()}
    found: int | None = ask("sums.squareMetres", space, halls)
    return found


@pytest.mark.parametrize(("least", "metres"), [(PRIMARY, 90), (SECONDARY, 150)])
def test_what_a_class_of_thirty_needs(least: int, metres: int) -> None:
    """One Dance UK: 30 x 3 = 90 m², 30 x 5 = 150 m²."""
    assert [floor_space(pupils, metres, least)["enough"] for pupils in (29, 30, 31)] == [
        True,
        True,
        False,
    ]


@pytest.mark.parametrize(
    ("metres", "primary", "secondary"),
    [(140, 46, 28), (54, 18, 10), (180, 60, 36)],
)
def test_how_many_a_floor_holds(metres: int, primary: int, secondary: int) -> None:
    """One Dance UK's figures on the hall and the classroom of Oxfordshire's brief, and 180 m²."""
    for least, holds in ((PRIMARY, primary), (SECONDARY, secondary)):
        assert floor_space(30, metres, least)["holds"] == holds
        assert has_room_for(metres, least) == holds
        assert floor_space(holds, metres, least)["enough"]
        assert not floor_space(holds + 1, metres, least)["enough"]


def test_the_halls_have_their_published_sizes() -> None:
    """Oxfordshire County Council, 2007; half a hall is half of it."""
    assert {name: one.width * one.depth for name, one in KNOWN_HALLS.items()} == HALLS
    assert [square_metres(name) for name in ("full", "half", "classroom")] == [140, 70, 54]


@pytest.mark.parametrize(
    ("space", "metres"),
    [
        ("12x8m", 96),
        ("14x9s", 126),  # a big step is about a metre: common practice, no source
        ("1x1m", 1),
        ("99x99s", 9801),
        ("unknown", None),
        ("", None),
        ("12x8", None),
        ("0x8m", None),
        ("12x08m", None),
        ("100x8m", None),
        ("12x8m ", None),
        ("12x8m\n", None),
        ("toString", None),
    ],
)
def test_a_floor_may_be_paced_or_measured(space: str, metres: int | None) -> None:
    assert square_metres(space) == metres


@given(st.integers(1, 120), st.integers(1, 2000), st.sampled_from((PRIMARY, SECONDARY)))
def test_less_is_never_shown_as_enough(pupils: int, metres: int, least: int) -> None:
    found = floor_space(pupils, metres, least)
    assert found["enough"] == (found["tenths"] >= 10 * least)
    assert found["enough"] == (pupils <= found["holds"])
    assert found["holds"] == has_room_for(metres, least)


@pytest.mark.parametrize(
    ("nation", "year", "least"),
    [
        ("England", "R", 3),
        ("England", "6", 3),
        ("England", "7", 5),
        ("Northern Ireland", "7", 3),
        ("Northern Ireland", "8", 5),
        ("Scotland", "P7", 3),
        ("Scotland", "S1", 5),
    ],
)
def test_the_figure_for_the_school_years(nation: str, year: str, least: int) -> None:
    assert recommended_least((SchoolYears(nation, (year,)),)) == least
