"""A changed return danced alone has the words of the lesson that made it, not the first part's."""

from __future__ import annotations

from dataclasses import replace

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.return_danced import dances_a_return
from tests.support.sound_bank import unit_named


def silent(unit: Unit, number: int) -> tuple[Unit, Lesson]:
    """The unit with no notes in one lesson, so that all words are of earlier ones."""
    lesson = replace(unit.lessons[number - 1], notes="")
    lessons = tuple(lesson if one.number == number else one for one in unit.lessons)
    return replace(unit, lessons=lessons), lesson


def again_in(unit: Unit, lesson: Lesson, step: int) -> dict[str, str]:
    return {one.word: one.means or "" for one in todays_moves(unit, lesson).steps[step - 1].again}


def test_the_words_of_a_return_are_told_where_it_alone_is_danced() -> None:
    """An adviser read "turn to your partner on the first step" where they face already."""
    unit, lesson = silent(unit_named("rope-bridge"), 6)
    assert dances_a_return(unit.dance, lesson.steps[1])
    told = again_in(unit, lesson, 2)
    assert told["edge"].endswith("you face your partner already.")
    assert "in the last throw" in told["cast"]
    assert told["watch"] == "Quite still, eyes on where it went."


def test_the_first_words_come_back_where_the_whole_is_danced() -> None:
    unit, lesson = silent(unit_named("rope-bridge"), 6)
    assert not dances_a_return(unit.dance, lesson.steps[2])
    whole = again_in(unit, lesson, 3)
    assert whole["edge"].startswith("From low, turn to your partner")
    assert "watch" not in whole, "it is the same in both, and told above"
