"""The top of a lesson's print: what stands beside its drawing, however many rows that has."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.diagrams.strip import TALL, StripSize
from build_tools.views.paper.paper_size import LEAST, SETTINGS
from build_tools.views.paper.printed import PrintedLesson
from build_tools.views.paper.sheet import BESIDE_PICTURE, words_high
from build_tools.views.paper.sides import laid_out, sides
from build_tools.views.paper.top_of_lesson import top_high
from build_tools.views.paper.what_is_printed import printed_lesson
from tests.support.sound_bank import real_unit, whole_bank

SETTING = SETTINGS[LEAST]
TOP_AND_TWO_STEPS = 6
ROW = 154


def drawn(rows: int) -> PrintedLesson:
    """A lesson of the bank with a drawing of so many rows."""
    unit = real_unit()
    return replace(printed_lesson(unit, unit.lessons[1]), picture=StripSize(ROW * rows, rows))


def test_the_first_two_steps_of_every_lesson_are_on_side_one() -> None:
    """Of a drawing of four rows half a side was white beside it, and the second step over."""
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            parts = laid_out(printed_lesson(unit, lesson), SETTING)
            assert sides(parts[:TOP_AND_TWO_STEPS]) == 1, (unit.slug, lesson.number)


@given(st.integers(TALL, 5))
def test_one_row_more_is_no_higher_than_that_row(rows: int) -> None:
    lower, higher = (top_high(drawn(many), SETTING) for many in (rows, rows + 1))
    row = top_high(drawn(20), SETTING) - top_high(drawn(19), SETTING)
    assert lower <= higher <= lower + row + 1e-6


def test_words_before_they_move_stand_beside_a_tall_drawing() -> None:
    whole = drawn(TALL + 3)
    bare = replace(whole, before=())
    assert top_high(whole, SETTING) == pytest.approx(top_high(bare, SETTING))


def test_words_that_go_on_below_a_tall_drawing_have_the_width_of_the_paper() -> None:
    whole = drawn(TALL)
    fewer, more = (top_high(replace(whole, before=whole.before * many), SETTING) for many in (6, 9))
    narrow = 3 * sum(
        words_high(runs, BESIDE_PICTURE, SETTING) for section in whole.before for runs in section
    )
    assert 0.4 * narrow < more - fewer < 0.7 * narrow
