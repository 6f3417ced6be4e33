"""The size of words on paper: twelve points for a short lesson, never under eleven.

Twelve points for print that all can read: RNIB, "Clear print guidelines" (12 point minimum);
two sides and never under eleven: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.lesson import Lesson
from build_tools.views.lesson.paper_size import paper_size, words_of_room
from tests.support.sound_bank import real_bank, real_unit


def longer(lesson: Lesson, by: int) -> Lesson:
    return replace(lesson, not_dancing=f"{lesson.not_dancing} {'word ' * by}".strip())


@given(st.integers(0, 400))
def test_more_words_are_never_printed_larger(more: int) -> None:
    unit = real_unit()
    lesson = unit.lessons[-1]
    grown = longer(lesson, more)
    with_it = replace(unit, lessons=(*unit.lessons[:-1], grown))
    assert words_of_room(with_it, grown) == words_of_room(unit, lesson) + more
    assert float(paper_size(with_it, grown)) <= float(paper_size(unit, lesson))
    assert paper_size(with_it, grown) in {"12", "11.5", "11"}


def test_a_short_lesson_has_twelve_points_and_a_long_one_eleven() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[0], steps=unit.lessons[0].steps[:2])
    assert paper_size(replace(unit, lessons=(lesson,)), lesson) == "12"
    grown = longer(lesson, 900)
    assert paper_size(replace(unit, lessons=(grown,)), grown) == "11"


def test_what_is_said_aloud_takes_more_room_than_what_is_read() -> None:
    unit = real_unit()
    lesson = unit.lessons[0]
    step = lesson.steps[0]
    spoken = replace(lesson, steps=(replace(step, say=f"{step.say} word"), *lesson.steps[1:]))
    grown = longer(lesson, 1)
    said = words_of_room(replace(unit, lessons=(spoken, *unit.lessons[1:])), spoken)
    assert said > words_of_room(replace(unit, lessons=(grown, *unit.lessons[1:])), grown)


def test_the_bank_uses_more_than_one_size() -> None:
    sizes = {paper_size(u, lesson) for u in real_bank().units for lesson in u.lessons}
    assert {"11", "12"} <= sizes
