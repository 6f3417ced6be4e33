"""Which steps of a lesson are in turns in a hall, and for how long: laws over classes and halls.

That those who wait in a warm-up grow cold, and that two teams cannot stand on the same spots:
common practice, no source. The square metres for each: `recommended_metres.py`.
"""

from __future__ import annotations

import json
import os
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from build_tools.building.floor_file import floor_file
from build_tools.model.unit import Unit
from build_tools.paths.hall import Hall
from build_tools.views.dance.room_to_dance import Room, unit_room
from build_tools.views.words.room_said import room_in_words, team_in_words
from tests.sums.lessons import Step
from tests.sums.page_facts import page_facts
from tests.support.banks import THOROUGH
from tests.support.page_script import Call, ask, page_script
from tests.support.sound_bank import every_unit, whole_bank

MOST = 1000 if os.environ.get(THOROUGH) else 12
"""Classes and halls: each is a dance several times over."""
FREE = ("warm-up", "cool-down")
UNITS = {unit.slug: unit for unit in (*whole_bank().units, *every_unit())}


def floor_of(unit: Unit) -> Any:
    (written,) = floor_file(unit).values()
    return json.loads(written.decode().partition("=")[2].rstrip(";\n"))


def steps(slug: str, lesson: int) -> Any:
    unit = UNITS[slug]
    return page_facts(unit, unit.lessons[lesson - 1])


@settings(max_examples=MOST)
@given(
    st.sampled_from(sorted(UNITS)),
    st.integers(24, 36),
    st.integers(8, 20),
    st.integers(8, 12),
    st.integers(1, 12),
)
@example("magnets", 29, 12, 10, 3)
@example("leaving", 31, 15, 10, 5)
@example("through-the-gap", 30, 8, 8, 1)
def test_turns_are_of_the_parts_that_do_not_fit_and_add_up(
    slug: str, pupils: int, wide: int, deep: int, minutes: int
) -> None:
    unit = UNITS[slug]
    hall = [float(wide), float(deep)]
    data = floor_of(unit)
    room = ask("sums.floor.room", data, pupils, hall, data["least"])
    known = unit_room(unit, pupils, Hall(*hall))
    assert ask("sums.floor.roomInWords", room) == room_in_words(known)
    enough = data["least"] * pupils <= wide * deep
    lessons = [page_facts(unit, lesson) for lesson in unit.lessons]
    calls: list[Call] = [("sums.hallToday", (facts, room)) for facts in lessons]
    calls += [("sums.inTurns", (one, minutes, room)) for facts in lessons for one in facts]
    answers = iter(page_script().answers(calls))
    told = [next(answers) for _ in lessons]
    for facts, words in zip(lessons, told, strict=True):
        turns = [next(answers) for _ in facts]
        for one, turn in zip(facts, turns, strict=True):
            if turn:
                assert_sound(one, turn, known, minutes, enough=enough)
        if any(turns):
            for number, team in enumerate(known.sharing.teams, start=1):
                assert team_in_words(number, team) in words


def assert_sound(one: Step, turn: Any, room: Room, minutes: int, *, enough: bool) -> None:
    """What is said of a step in turns keeps to the law."""
    assert room.found
    assert room.sharing.dancing[0] < room.pupils
    assert turn["each"] * (room.turns if turn["teams"] else 2) <= minutes
    if one["phase"] in FREE or (one["phase"] == "explore" and not one.get("onSpots")):
        assert not turn["teams"] or not enough, "nobody sits in a warm-up"
    elif enough:
        assert set(one["parts"]) & set(room.tight) or one["grouping"] == "half class"
    if one.get("onSpots") and turn["teams"]:
        assert turn["words"].startswith("team 1, then"), "two teams on the same spots"


def test_the_whole_class_is_not_together_where_it_is_in_turns() -> None:
    turn = {"words": "team 1, then team 2, 8 minutes each", "teams": True, "each": 8}
    for grouping, groups, words in (
        ("whole class", "the whole class together", "Team 1, then team 2, 8 minutes each"),
        ("half class", "half the class at a time", "Team 1, then team 2, 8 minutes each"),
        ("fours", "six fours", "six fours; team 1, then team 2, 8 minutes each"),
    ):
        assert ask("sums.groupsInTurns", groups, {"grouping": grouping}, turn) == words
        assert ask("sums.groupsInTurns", groups, {"grouping": grouping}, None) == groups


@pytest.mark.parametrize(
    ("slug", "pupils", "hall", "lesson", "words"),
    [
        (
            "magnets", 29, [12, 10], 5,
            [None, "team 1, then team 2, 2 minutes each", "team 1, then team 2, 7 minutes each",
             "team 1, then team 2", None, None],
        ),
        (
            "seeds-on-the-move", 30, [15, 10], 3,
            [None, "24 at once, three pairs sit, others each time", None,
             "24 at once, three pairs sit, others each time",
             "24 at once, three pairs sit, others each time", None, None],
        ),
        (
            "rope-bridge", 30, [14, 10], 1,
            [None, "team 1, then team 2, 4 minutes each", "team 1, then team 2, 5 minutes each",
             "team 1, then team 2, 4 minutes each", "team 1, then team 2, 3 minutes each",
             "team 1, then team 2", None],
        ),
    ],
)  # fmt: skip
def test_the_lessons_that_teachers_read(
    slug: str, pupils: int, hall: list[int], lesson: int, words: list[str | None]
) -> None:
    data = floor_of(UNITS[slug])
    room = ask("sums.floor.room", data, pupils, hall, data["least"])
    found = [ask("sums.inTurns", one, one["minutes"], room) for one in steps(slug, lesson)]
    assert [turn and turn["words"] for turn in found] == words


@pytest.mark.parametrize(
    ("lesson", "number", "words", "said"),
    [
        (  # pairs are made here for the first time: there are no teams of them yet
            1, 2, "say “Stand on the marks I give you.” If one is left, make a three.",
            "“The eight pairs that I point to are team 1: stand on the marks I give you. Everyone "
            "else, sit along the front.” Then change. If one is left, make a three.",
        ),
        (
            1, 2, "say “Find your partner. Row by row, walk home.”",
            "“Find your partner. The eight pairs that I point to are team 1: row by row, walk "
            "home. Everyone else, sit along the front.” Then change.",
        ),
        (
            6, 2, "say “Find your partner at your gorge.”",
            "“Team 2, sit along the front. Team 1: find your partner at your gorge.” Then change.",
        ),
        (
            1, 3, "say “Stay on your marks.”",
            "“Team 2, sit along the front. Team 1: stay on your marks.” Then change.",
        ),
        (
            3, 2, "say “I point to your marks.” If one is left, make a three.",
            "“Team 2, sit along the front. Team 1: I point to your marks.” Then change. "
            "If one is left, make a three.",
        ),
        (
            1, 6, "say “The front pair dances.”",
            "“Team 2, sit along the front. Team 1, dance. Then change.”",
        ),
        (6, 4, "say “Team 2 sits.”", "say “Team 2 sits.”"),
    ],
)  # fmt: skip
def test_one_team_is_sent_to_the_spots_and_the_other_to_its_place(
    lesson: int, number: int, words: str, said: str
) -> None:
    data = floor_of(UNITS["rope-bridge"])
    room = ask("sums.floor.room", data, 30, [14, 10], data["least"])
    facts = steps("rope-bridge", lesson)
    one = facts[number - 1]
    turn = ask("sums.inTurns", one, one["minutes"], room)
    assert ask("sums.intoToday", words, facts, one, turn, room) == said
