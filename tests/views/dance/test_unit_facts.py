"""What each lesson adds, what to collect, the words needed, and each motif's journey."""

from __future__ import annotations

from dataclasses import replace

from build_tools.shapes.schemas import schema
from build_tools.source.said_once.steps_in_full import AS_MADE
from build_tools.views.dance.additions import lesson_adds
from build_tools.views.dance.journey import DEEDS, journeys
from build_tools.views.lesson.collecting import Thing, things_to_collect
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.words.words_needed import words_needed
from tests.support.sound_bank import real_bank, real_unit

GROUPINGS: list[str] = schema("lesson")["properties"]["steps"]["items"]["properties"]["grouping"][
    "enum"
]


def test_everything_made_in_a_unit_is_added_by_some_lesson() -> None:
    for unit in real_bank().units:
        adds = [lesson_adds(unit, lesson) for lesson in unit.lessons]
        motifs = {name for one in adds for name in one.motifs}
        made = {n for lesson in unit.lessons for s in lesson.steps for n in s.makes}
        assert motifs == made & set(unit.dance.motifs)
        assert {n for one in adds for n in one.settled} == set(unit.dance.choices)
        assert adds[-1].shows_whole


def test_lesson_two_of_the_rock_pool_adds_the_anemone() -> None:
    unit = real_unit()
    adds = lesson_adds(unit, unit.lessons[1])
    assert adds.motifs == ("anemone",)
    assert adds.sections == ("B",)
    assert not adds.shows_whole


def test_a_thing_is_collected_once_however_it_is_written() -> None:
    unit = real_unit()
    first, second = unit.lessons[:2]
    lessons = (
        replace(first, collect=("A hand drum.", "Chalk")),
        replace(second, collect=("the  hand drum", "Chalk")),
    )
    unit = replace(unit, lessons=lessons, kit=replace(unit.kit, collect=("One hand drum",)))
    assert things_to_collect(unit) == (Thing("One hand drum", (1, 2)), Thing("Chalk", (1, 2)))


def test_the_units_list_is_the_whole_truth_where_it_covers_a_lessons_line() -> None:
    unit = real_unit()
    first, second = unit.lessons[:2]
    lessons = (
        replace(first, collect=("All word cards", "The low tide drawing")),
        replace(second, collect=("Word cards: rush, rock", "Word cards and a scarf")),
    )
    own = ("Word cards: rock, rush", "Word cards: open, shut", "Both drawings and the poem")
    unit = replace(unit, lessons=lessons, kit=replace(unit.kit, collect=own))
    assert things_to_collect(unit) == (
        Thing(own[0], (1, 2)),
        Thing(own[1], (1,)),
        Thing(own[2], (1,)),
        Thing("Word cards and a scarf", (2,)),
    )


def test_no_thing_of_the_real_units_is_collected_twice() -> None:
    for unit in real_bank().units:
        besides = [thing.what for thing in things_to_collect(unit)[len(unit.kit.collect) :]]
        asked = {thing for lesson in unit.lessons for thing in lesson.collect}
        assert set(besides) <= asked - set(unit.kit.collect)
        assert "A drum" not in besides


def test_a_word_that_a_step_teaches_is_explained() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[1], words={})
    words = {m.word: m.plain for m in words_needed(unit, lesson, real_bank().words)}
    assert words["canon"] == unit.words["canon"]
    bare = replace(unit, words={})
    words = {m.word: m.plain for m in words_needed(bare, lesson, real_bank().words)}
    assert words["canon"] == real_bank().words["canon"].plain


def test_a_motif_is_made_before_it_is_shown() -> None:
    for unit in real_bank().units:
        for journey in journeys(unit):
            lessons = [stop.lesson for stop in journey.stops]
            assert lessons == sorted(set(lessons))
            assert all(set(stop.deeds) <= set(DEEDS) and stop.deeds for stop in journey.stops)
            first = {d: [s.lesson for s in journey.stops if d in s.deeds] for d in DEEDS}
            assert first["made"]
            assert first["shown"]
            assert first["made"][0] <= first["shown"][0]


def test_every_grouping_is_said_in_words() -> None:
    groupings = [g for g in GROUPINGS if g != AS_MADE]
    said = [grouping_in_words(g) for g in groupings]
    assert len(set(said)) == len(GROUPINGS) - 1
    assert grouping_in_words("fours") == "in fours"
    assert grouping_in_words("whole class") == "the whole class together"
