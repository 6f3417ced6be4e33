"""What of a recording is played for a step, from which second to which."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.lesson import Step
from build_tools.views.dance.places_in_recording import places_in_recording, travels_with_recording
from build_tools.views.lesson.played_in_step import Played, played_in_step
from tests.support.sound_bank import unit_named, whole_bank

PEASCODS, KITE = unit_named("gathering-peascods"), unit_named("kite-and-string")
START = "0 to -"


def said(one: Played) -> str:
    end = "-" if one.end is None else str(round(one.end))
    return f"{round(one.start)} to {end}{', ' if one.later else ''}{one.later}"


def step(slug: str, lesson: int, number: int) -> Step:
    return unit_named(slug).lessons[lesson - 1].steps[number - 1]


def played(slug: str, lesson: int, number: int) -> list[str]:
    return [said(one) for one in played_in_step(unit_named(slug).dance, step(slug, lesson, number))]


@pytest.mark.parametrize(
    ("slug", "lesson", "number", "first"),
    [
        ("gathering-peascods", 1, 4, "0 to 16"),
        ("gathering-peascods", 1, 6, "0 to 16"),
        ("gathering-peascods", 2, 4, "13 to 29"),
        ("gathering-peascods", 2, 5, "13 to 29"),
        ("gathering-peascods", 3, 2, "0 to 29"),
        ("gathering-peascods", 3, 4, "26 to 47"),
        ("gathering-peascods", 3, 5, "26 to 47"),
        ("gathering-peascods", 4, 2, "26 to 47"),
        ("kite-and-string", 1, 3, "0 to 7"),
        ("kite-and-string", 1, 4, "0 to 21"),
        ("kite-and-string", 1, 5, "21 to 48"),
    ],
)
def test_it_is_the_stretch_that_the_author_found_by_ear(
    slug: str, lesson: int, number: int, first: str
) -> None:
    """A changed return to its first's music; moves alone where they come first in the dance."""
    found = played(slug, lesson, number)
    assert found[0] == first
    assert found[-1] == START, "all of it can be had besides"


def test_who_dances_it_all_can_start_at_each_section_and_hears_it_die_away() -> None:
    assert played("gathering-peascods", 4, 3) == [
        "0 to 93",
        "13 to 93, B: the inner ring",
        "26 to 93, C: meet and clap",
        "44 to 93, A: all the ring",
        "57 to 93, B': twos inside first",
        "71 to 93, C': twos begin",
    ]


@pytest.mark.parametrize(("lesson", "number"), [(1, 2), (1, 3), (2, 3), (2, 7), (3, 1), (3, 3)])
def test_a_step_without_music_plays_none(lesson: int, number: int) -> None:
    assert played("gathering-peascods", lesson, number) == []


@pytest.mark.parametrize(("lesson", "number"), [(1, 1), (1, 7), (2, 1), (4, 1), (4, 7)])
def test_what_a_class_only_moves_to_is_played_from_the_start(lesson: int, number: int) -> None:
    assert played("gathering-peascods", lesson, number) == [START]


def test_first_without_music_and_then_with_it_is_played() -> None:
    one = step("kite-and-string", 1, 5)
    assert played_in_step(KITE.dance, one)
    assert not played_in_step(KITE.dance, replace(one, you="First without music, and no more."))


def test_what_no_place_is_known_for_is_played_from_the_start() -> None:
    dance = replace(PEASCODS.dance, order_choice="waiting-arms")
    assert [said(one) for one in played_in_step(dance, PEASCODS.lessons[2].steps[3])] == [START]


def test_a_changed_return_with_music_of_its_own_is_played_there() -> None:
    dance = PEASCODS.dance
    own = replace(dance.sections["C'"], changes=("danced", "heard"))
    dance = replace(dance, sections={**dance.sections, "C'": own})
    one = replace(PEASCODS.lessons[2].steps[3], dances=())
    assert [said(each) for each in played_in_step(dance, one)] == ["71 to 93", START]


def test_sections_that_do_not_follow_one_another_are_stretches_of_their_own() -> None:
    one = replace(PEASCODS.lessons[2].steps[3], makes=(), dances=("A", "C"))
    assert [said(each) for each in played_in_step(PEASCODS.dance, one)] == [
        "0 to 16", "26 to 47", START,
    ]  # fmt: skip


def test_every_stretch_begins_and_ends_with_sections_or_is_moves_within_one() -> None:
    for unit in whole_bank().units:
        places = [place for place in places_in_recording(unit.dance) if place]
        starts, ends = (
            {p.begins for p in places},
            {p.end for p in places} | {unit.dance.sound.lasts},
        )
        for lesson in unit.lessons:
            for each in lesson.steps:
                found = played_in_step(unit.dance, each)
                assert travels_with_recording(unit.dance) or not found
                for one in found:
                    whole = one.end is None or each.counts == 8
                    assert one.start in starts, (unit.slug, lesson.number, each.does)
                    assert whole or one.end in ends, (unit.slug, lesson.number, each.does)
