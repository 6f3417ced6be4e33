"""Words of a move hold for the move as it is danced."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.moves_met import MoveMet
from build_tools.views.lesson.notes_read import Explained, notes_read
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


def test_a_move_whose_feel_pupils_now_choose_is_the_one_told_before() -> None:
    """An adviser read the software's words for giving a stone where the author's stood above."""
    unit = next(one for one in whole_bank().units if one.slug == "road-builders")
    step = todays_moves(unit, unit.lessons[2]).steps[4]
    assert step.made == ()
    assert [(one.word, one.step) for one in step.before] == [
        ("take", 4), ("carry", 4), ("give", 4), ("stand", 4),
    ]  # fmt: skip


def everything(unit: Unit, number: int) -> str:
    """All that a lesson tells of its moves, their ways and its notes."""
    today = todays_moves(unit, unit.lessons[number - 1])
    words = [today.notes]
    for step in today.steps:
        words += step.helps
        words += [one.written for one in step.ways]
        words += [one.means or "" for one in (*step.made, *step.again)]
        words += [way or "" for one in step.danced for way in (one.seated, one.wheels)]
    return "\n".join(words)


@pytest.mark.parametrize("number", [1, 4, 5])
def test_no_words_of_notes_are_lost_whatever_lesson_makes_their_move(number: int) -> None:
    """A second line for a move, one under a heading, one of a move that is only danced again."""
    notes = (
        "- **Rush**: say one.\n- **Rush**: say two.\n\n**Sink**: say three.\n\n"
        "### Sitting, or on wheels\n\n- **Rush**: Chair: say four. Wheels: say five.\n"
        "- **Break**: say six.\n\n- **Grip**, in a three: say seven.\n- **Flick**: say eight.\n"
    )
    unit = with_notes(real_unit(), number, notes)
    said = everything(unit, number).casefold()
    for one in ("one", "two", "three", "four", "five", "six", "seven", "eight"):
        assert f"say {one}" in said, one
    assert "sitting, or on wheels" not in said, "no heading stands over nothing"


@pytest.mark.parametrize(
    ("line", "seated", "wheels"),
    [
        ("- **Rush**, sitting: say it.", True, False),
        ("- **Rush** (on wheels): say it.", False, True),
        ("- **Rush, seated:** say it.", True, False),
        ("- **Rush**: sitting, or on wheels: say it.", True, True),
    ],
)
def test_words_for_who_sits_are_not_said_to_everybody(
    line: str, seated: bool, wheels: bool
) -> None:
    (rush,) = notes_read(line)
    assert isinstance(rush, Explained)
    assert (rush.word, rush.text) == ("Rush", "")
    assert (bool(rush.seated), bool(rush.wheels)) == (seated, wheels)


def test_a_run_tells_a_move_anew_where_another_part_has_it_another_way() -> None:
    """An adviser: lesson 5 of the seeds gave part A's words for part C."""
    unit = next(one for one in whole_bank().units if one.slug == "seeds-on-the-move")
    lesson = unit.lessons[4]
    told = {m.word: m.means for step in todays_moves(unit, lesson).steps for m in step.again}
    assert told["go in C"] != told["go"]
    assert (told["go in C"] or "").startswith("Three small steps to the front")
