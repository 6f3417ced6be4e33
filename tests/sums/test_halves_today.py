"""The two halves of a class are those of the unit and its plan, and never a third kind beside them.

That a class keeps its teams, and that ones and twos are halves of each pair and not of the class:
common practice, no source.
"""

from __future__ import annotations

from typing import Any

import pytest

from build_tools.model.unit import Unit
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.lesson.class_groups import groupings_known
from build_tools.views.lesson.halves_said import halves_said
from tests.sums.test_in_turns import floor_of
from tests.support.page_script import ask
from tests.support.sound_bank import unit_named, whole_bank

FIT = {"available": 45, "changing": 0, "dancing": 28, "watching": 0, "space": "unknown"}


def halves(unit: Unit, lesson: int, pupils: int) -> Any:
    groupings = list(groupings_known(unit, unit.lessons[lesson - 1]))
    return ask("sums.floor.halves", floor_of(unit), groupings, pupils)


@pytest.mark.parametrize(
    ("slug", "lesson", "pupils", "expected"),
    [
        # an adviser counted two groups of 15, which would split a four
        ("leaving", 6, 30, [[4, 4, 4, 4], [6, 4, 4]]),
        # a teacher: in the plan the left half is three fours, and the list said four, then three
        ("magnets", 1, 28, [[4, 4, 4], [4, 4, 4, 4]]),
    ],
)
def test_halves_are_the_teams_of_the_unit(
    slug: str, lesson: int, pupils: int, expected: list[list[int]]
) -> None:
    assert halves(unit_named(slug), lesson, pupils) == expected


@pytest.mark.parametrize("unit", whole_bank().units, ids=lambda unit: str(unit.slug))
def test_halves_are_the_two_teams_of_a_hall_that_takes_half(unit: Unit) -> None:
    for pupils in (27, 30):
        found = halves(unit, len(unit.lessons), pupils)
        assert sum(map(sum, found)) == pupils
        teams = unit_room(unit, pupils).sharing.teams
        if len(teams) == 2:
            assert sorted(map(sum, found)) == sorted(map(sum, teams))


def test_whose_halves_they_are_is_read_off_the_words() -> None:
    pool, magnets, home = map(unit_named, ("rock-pool", "magnets", "after-home-time"))
    storm = [halves_said(step) for step in pool.lessons[3].steps]
    assert "teams" not in storm
    assert "teams" in [halves_said(step) for step in magnets.lessons[0].steps]
    assert "in each group" in [halves_said(step) for step in home.lessons[0].steps]
    into = [step for step in unit_named("leaving").lessons[5].steps if step.shows]
    assert {halves_said(step) for step in into} == {"teams"}


def test_no_groups_are_counted_where_each_group_is_halved() -> None:
    step = {"grouping": "half class", "halves": "in each group", "before": ["fours"]}
    assert ask("sums.groupsToday", [step], step, FIT) == ""
    teams = {**step, "halves": "teams"}
    said = ask("sums.groupsToday", [teams], teams, FIT)
    assert said == "Team 1: four fours; then team 2: three fours"
