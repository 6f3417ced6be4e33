"""The size of words on paper: twelve points for a short lesson, never under eleven.

Twelve points for print that all can read: RNIB, "Clear print guidelines" (12 point minimum);
two sides and never under eleven: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.diagrams.standing_plan import plan_height
from build_tools.views.lesson.standing_in_steps import plans_of
from build_tools.views.paper import paper_size
from build_tools.views.paper.paper_size import (
    LEAST,
    MORE_SIDES,
    SETTINGS,
    SURELY_FITTING,
    letters_of_room,
    on_paper,
    too_long,
)
from build_tools.views.paper.printed import printed_words
from build_tools.views.paper.sides import laid_out, plans_height, sides, with_plans
from build_tools.views.paper.told_in_steps import MOST_TOLD
from build_tools.views.paper.what_is_printed import printed_lesson
from tests.agreement.made_lessons import Made, made
from tests.support.sound_bank import real_bank, real_unit, whole_bank

ORDER = [*SETTINGS, MORE_SIDES]


def longer(unit: Unit, by: int) -> tuple[Unit, Lesson]:
    """The unit with its last lesson longer by so many words."""
    lesson = unit.lessons[-1]
    grown = replace(lesson, not_dancing=f"{lesson.not_dancing} {'word ' * by}".strip())
    return replace(unit, lessons=(*unit.lessons[:-1], grown)), grown


@given(st.integers(0, 700), st.integers(20, 200))
def test_more_words_are_never_printed_larger(words: int, more: int) -> None:
    fewer, larger = (on_paper(*longer(real_unit(), by)).size for by in (words, words + more))
    assert ORDER.index(larger) >= ORDER.index(fewer)


def test_a_short_lesson_has_twelve_points_a_longer_one_eleven_a_very_long_one_more_sides() -> None:
    unit = real_unit()
    short = replace(unit.lessons[0], steps=unit.lessons[0].steps[:2])
    assert on_paper(replace(unit, lessons=(short,)), short).size == "12"
    assert on_paper(*longer(unit, 40)).size == LEAST
    assert on_paper(*longer(unit, 900)).size == MORE_SIDES


@given(st.integers(0, 3000))
def test_what_is_too_long_is_what_is_printed_on_more_sides(number: int) -> None:
    one = made(number)
    found = too_long(one.unit, one.lesson)
    assert (found is not None) == (on_paper(one.unit, one.lesson).size == MORE_SIDES)
    if found:
        assert found.words == printed_words(printed_lesson(one.unit, one.lesson))
        assert 0 < found.held < found.words


@given(st.integers(0, 3000))
def test_what_surely_fits_is_never_too_long_when_it_is_laid_out(number: int) -> None:
    one = made(number)
    if letters_of_room(one.unit, one.lesson) <= SURELY_FITTING:
        parts = laid_out(printed_lesson(one.unit, one.lesson), SETTINGS[LEAST])
        assert sides(parts, 1.02) <= 2


@given(st.integers(0, 3000))
def test_the_moves_are_told_as_far_as_two_sides_hold_them(number: int) -> None:
    one = made(number)
    found = on_paper(one.unit, one.lesson)
    if found.size == MORE_SIDES:
        assert set(found.told) == {MOST_TOLD}
        return
    assert high(one, found.size, found.told) <= 2
    for n, level in enumerate(found.told):
        more = [*found.told[:n], level + 1, *found.told[n + 1 :]]
        if level < MOST_TOLD:
            assert high(one, found.size, more) > 2, (n, level)


def high(one: Made, size: str, told: Sequence[int]) -> int:
    """On how many sides it is at most, with so much told in each step."""
    paper = on_paper(one.unit, one.lesson)
    printed = printed_lesson(one.unit, one.lesson, None, told, said=paper.said, aside=paper.aside)
    parts = laid_out(printed, SETTINGS[size])
    if on_paper(one.unit, one.lesson).plans:
        plans = plans_of(one.unit, one.lesson)
        shapes = [plan_height(one.unit, plan.letter) for plan in plans]
        titles = [plan.title for plan in plans]
        parts = with_plans(parts, plans_height(titles, shapes, SETTINGS[size]))
        return max(sides(parts, stretch) for stretch in paper_size.WITH_PLANS)
    return max(sides(parts, stretch) for stretch in paper_size.STRETCHES)


def test_every_lesson_of_the_bank_says_what_most_of_its_new_moves_mean() -> None:
    lessons = [(unit, lesson) for unit in real_bank().units for lesson in unit.lessons]
    levels = [level for unit, lesson in lessons for level in on_paper(unit, lesson).told]
    assert sum(level > 0 for level in levels) >= 0.98 * len(levels)


def test_cutting_the_words_named_makes_a_lesson_fit() -> None:
    """Obeyed again and again: how much is too much is told for cuts all over the lesson.

    What is cut in one place alone frees one of its two sides.
    """
    unit, lesson = longer(real_unit(), 400)
    found = too_long(unit, lesson)
    for _ in range(6):
        assert found is not None
        cut = lesson.not_dancing.split()[: -(found.words - found.held) - 10]
        lesson = replace(lesson, not_dancing=" ".join(cut))
        unit = replace(unit, lessons=(*unit.lessons[:-1], lesson))
        found = too_long(unit, lesson)
        if found is None:
            break
    assert found is None


def test_the_bank_uses_more_than_one_size_and_two_sides_for_each_lesson() -> None:
    sizes = {on_paper(u, lesson).size for u in whole_bank().units for lesson in u.lessons}
    assert len(sizes) > 1
    assert MORE_SIDES not in sizes
