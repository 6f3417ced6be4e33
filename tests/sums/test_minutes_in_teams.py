"""How long a lesson needs in teams: the page's sum is that of what is printed, and keeps laws.

That each team is to dance as much as is planned: common practice, no source.
"""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.unit import Unit
from build_tools.paths.hall import Hall
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.lesson.minutes_in_teams import minutes_in_teams
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.words.minutes_in_teams_said import minutes_in_teams_said
from tests.sums.page_facts import page_facts
from tests.support.page_script import Call, page_script
from tests.support.sound_bank import unit_named, whole_bank

UNITS = {unit.slug: unit for unit in whole_bank().units}


def for_page(unit: Unit, pupils: int, hall: Hall) -> dict[str, Any]:
    room = unit_room(unit, pupils, hall)
    teams = [list(team) for team in room.sharing.teams]
    return {"found": room.found, "tight": list(room.tight), "sharing": {"teams": teams}}


@given(st.sampled_from(sorted(UNITS)), st.integers(20, 34), st.integers(7, 18), st.integers(8, 10))
def test_page_and_print_have_the_same_minutes_and_never_fewer_than_planned(
    slug: str, pupils: int, wide: int, deep: int
) -> None:
    unit, hall = UNITS[slug], Hall(float(wide), float(deep))
    room, told = unit_room(unit, pupils, hall), for_page(unit, pupils, hall)
    calls: list[Call] = [
        ("sums.minutesInTeams", (page_facts(unit, lesson), told)) for lesson in unit.lessons
    ]
    for lesson, needs in zip(unit.lessons, page_script().answers(calls), strict=True):
        assert needs == minutes_in_teams(step_facts(unit, lesson), room)
        assert lesson.minutes <= needs <= lesson.minutes * room.turns
        assert needs == lesson.minutes or room.turns > 1


@pytest.mark.parametrize(
    ("slug", "wide", "said"),
    [("magnets", 12.0, "a lesson of 45 minutes needs about"), ("magnets", 18.0, "")],
)
def test_what_teams_do_to_the_minutes_is_said(slug: str, wide: float, said: str) -> None:
    unit = unit_named(slug)
    words = minutes_in_teams_said(unit, unit_room(unit, 30, Hall(wide, 10.0)))
    assert said in words
    assert bool(words) == bool(said)
