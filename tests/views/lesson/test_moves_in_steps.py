"""Words of a move hold for the move as it is danced; seated ways too."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.moves_in_steps import MoveMet, todays_moves
from build_tools.views.lesson.sitting_or_wheels import all_seated_ways
from tests.support.sound_bank import real_unit, whole_bank


def every_move() -> Iterator[tuple[Unit, Lesson, MoveMet]]:
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            for step in todays_moves(unit, lesson).steps:
                for one in (*step.made, *step.again, *step.danced):
                    yield unit, lesson, one


def test_a_move_is_not_told_to_the_other_side() -> None:
    told = 0
    for unit, lesson, one in every_move():
        if one.action is None or one.means is None or one.action.side is None:
            continue
        other = {"left": "right", "right": "left"}[one.action.side]
        words = one.means.casefold().replace(",", " ").replace(".", " ").split()
        if other in words and one.action.side not in words:
            # another part of the body may be named: "lean away, on to your right foot"
            assert one.action.kind in ("transfer", "gesture"), (unit.slug, lesson.number, one)
        told += 1
    assert told > 20


def with_notes(unit: Unit, number: int, notes: str) -> Unit:
    lessons = tuple(
        replace(one, notes=notes) if one.number == number else replace(one, notes="")
        for one in unit.lessons
    )
    return replace(unit, lessons=lessons)


def told(unit: Unit, number: int) -> dict[tuple[str, str | None], str | None]:
    """What each move danced in a lesson means, by its word and side."""
    lesson = unit.lessons[number - 1]
    return {
        (one.word, one.action.side): one.means
        for step in todays_moves(unit, lesson).steps
        for one in step.danced
        if one.action is not None
    }


def test_words_with_a_side_are_not_said_of_the_mirror() -> None:
    unit = with_notes(real_unit(), 1, "- **Rush**: Two quick side-steps to the left.\n")
    words = told(unit, 1)
    sides = {side: means for (word, side), means in words.items() if word == "rush"}
    assert set(sides) == {"left", "right"}
    later = told(unit, 5)
    assert all(
        means is None for (word, side), means in later.items() if word == "rush" and side == "right"
    )


def test_words_with_no_side_are() -> None:
    unit = with_notes(real_unit(), 1, "- **Rush**: Like water through fingers.\n")
    later = told(unit, 5)
    assert {means for (word, _), means in later.items() if word == "rush"} == {
        "Like water through fingers."
    }


def test_what_the_author_says_of_a_chair_and_wheels_is_said() -> None:
    notes = "- **Rush**: Run low. Seated: Feet patter. On wheels: Push, then roll.\n"
    unit = with_notes(real_unit(), 1, notes)
    lesson = unit.lessons[0]
    moves = todays_moves(unit, lesson).steps
    ways = all_seated_ways(unit.dance, lesson.steps, moves)
    rush = [one for way in ways for one in way.moves if one.word == "rush"]
    assert rush
    said = {(one.chair, one.wheels) for one in rush}
    assert said == {("Feet patter", "Push, then roll")}, "the page sets the full stop"
    assert all("Seated:" not in (one.means or "") for step in moves for one in step.danced)


def test_a_way_that_goes_the_other_way_is_told_again() -> None:
    unit = with_notes(real_unit(), 1, "")
    lesson = unit.lessons[0]
    ways = all_seated_ways(unit.dance, lesson.steps, todays_moves(unit, lesson).steps)
    said = " ".join(one.chair for way in ways for one in way.moves if one.word == "rush")
    assert "left" in said
    assert "right" in said


def test_a_chair_is_not_asked_to_turn_quicker_than_it_can() -> None:
    for unit in whole_bank().units:
        if not unit.dance.tempo:
            continue
        for lesson in unit.lessons:
            steps = todays_moves(unit, lesson).steps
            seconds = {
                (one.word, float(one.action.counts) * 60 / unit.dance.tempo)
                for step in steps
                for one in step.danced
                if one.action is not None and one.wheels is None
            }
            quickest = {word: min(s for w, s in seconds if w == word) for word, _ in seconds}
            for way in all_seated_ways(unit.dance, lesson.steps, steps):
                for one in way.moves:
                    if "turn to the" in one.wheels.casefold() and one.word in quickest:
                        assert max(s for w, s in seconds if w == one.word) >= 3, (unit.slug, one)
