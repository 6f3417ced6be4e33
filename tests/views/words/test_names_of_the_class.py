"""Sections and sides of the hall are called as the class calls them, wherever they are named."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from functools import cache

import pytest

from build_tools.model.dance import Action, Dance, Passage
from build_tools.model.unit import Unit
from build_tools.pages.counts.counts import counts_page
from build_tools.pages.dance_in_full.part_views import section_views
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.unit.unit import unit_page
from build_tools.pages.unit_sheet.unit_sheet import sheet_page
from build_tools.pages.wall.wall import wall_page
from build_tools.views.diagrams.floor_plan import floor_plan
from build_tools.views.diagrams.parts import parts_figure
from build_tools.views.paper.told_in_steps import MOST_TOLD, told_at_each_level
from build_tools.views.words.how_far import how_far_in_words
from build_tools.views.words.plain_words import danced_in_words
from build_tools.views.words.sections_called import called, heading_of, in_a_sentence, title_of
from build_tools.views.words.sides_named import side_in_words, sides_in_words, towards_in_words
from build_tools.views.words.standing_said import standing_in_words
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank, real_unit

SIDES = {"front": "beach", "back": "sea", "left": "cliff"}


@cache
def named() -> Unit:
    """A published unit whose first section has a name, and whose hall's sides have theirs."""
    unit = real_unit()
    return replace(unit, dance=_named(unit.dance))


def _named(dance: Dance) -> Dance:
    first = replace(dance.sections["A"], name="undertow")
    return replace(dance, sections={**dance.sections, "A": first}, sides=SIDES)


def test_a_section_is_called_by_letter_and_name() -> None:
    dance = named().dance
    one, other = dance.sections["A"], replace(dance.sections["B"], name=None)
    assert (called(one), called(other)) == ("A: undertow", "B")
    assert (heading_of(one), heading_of(other)) == ("Section A: undertow", "Section B")
    assert title_of(one, "who dances what") == "Section A: undertow, who dances what"
    assert title_of(other, "who dances what") == "Section B: who dances what"
    assert (in_a_sentence(one), in_a_sentence(other)) == ("the undertow", "section B")
    assert in_a_sentence(replace(one, name="The undertow")) == "The undertow"


@pytest.mark.parametrize("page", ["unit", "counts", "sheet", "lesson", "wall"])
def test_every_page_that_names_a_section_says_its_name(page: str) -> None:
    bank, unit = real_bank(), named()
    lesson = next(
        one for one in unit.lessons if any(len(s.joins) > 1 and "A" in s.joins for s in one.steps)
    )
    made = {
        "unit": lambda: unit_page(bank, unit),
        "counts": lambda: counts_page(bank, unit),
        "sheet": lambda: sheet_page(bank, unit),
        "lesson": lambda: lesson_page(bank, unit, lesson),
        "wall": lambda: wall_page(bank, unit),
    }[page]()
    assert "undertow" in repr(made.context).lower()


def test_its_title_is_its_name_and_what_it_is_about_stands_below() -> None:
    one, *others = section_views(named())
    assert (one.letter, one.name) == ("A", "Undertow")
    assert one.idea == named().dance.sections["A"].idea
    for view in others:
        section = named().dance.sections[view.letter]
        assert view.idea == (section.idea if section.name else None)


def test_print_and_page_say_the_same_name() -> None:
    unit = named()
    found = [
        run.text
        for lesson in unit.lessons
        for runs in told_at_each_level(unit, lesson)[MOST_TOLD]
        for run in runs
    ]
    assert any("Part A: undertow" in words for words in found)


def test_pictures_of_it_are_titled_by_its_name() -> None:
    dance = named().dance
    section = dance.sections["A"]
    assert parts_figure(dance, section).title == "Section A: undertow, who dances what, when"
    assert floor_plan(dance, section).title.startswith(
        "Section A: undertow, where everybody stands"
    )


def test_plans_have_the_names_of_the_sides() -> None:
    dance = named().dance
    plan = floor_plan(dance, dance.sections["A"])
    seen = seen_in(plan.svg).text()
    assert "front: watchers, beach" in seen
    assert "sea" in seen
    assert "cliff" in seen
    named_so = "Here the front is the beach, the back is the sea and the left is the cliff."
    assert named_so in plan.words
    bare = floor_plan(replace(dance, sides={}), dance.sections["A"])
    assert "beach" not in seen_in(bare.svg).text()


def test_sides_in_words() -> None:
    assert side_in_words("front", SIDES) == side_in_words("beach", SIDES) == "the beach"
    assert side_in_words("right", SIDES) == "the right"
    assert towards_in_words("back", SIDES) == "towards the sea"
    assert towards_in_words("partner", SIDES) == "towards a partner"
    assert sides_in_words({}) is None
    start = named().dance.sections["A"].start
    assert standing_in_words(replace(start, facing="front"), SIDES).endswith("facing the beach")
    assert standing_in_words(replace(start, facing="front")).endswith("facing the front")


def test_who_changes_over_and_what_others_do_is_said() -> None:
    said = danced_in_words(
        Passage(
            ("ask", "answer"), "question and answer", roles=("ones", "twos"), swap=True,
            others="watch", towards="front",
        ),
        SIDES,
    )  # fmt: skip
    assert said == (
        "ask then answer, one part, then the other answers, towards the beach, then again with the "
        "parts changed over; those who wait watch (ones and twos)"
    )


@pytest.mark.parametrize(
    ("action", "said"),
    [
        (Action("travel", Fraction(4), step="skip", steps=Fraction(3)), "3 skips"),
        (
            Action("travel", Fraction(3), step="side-step", steps=Fraction(3), in_all=Fraction(1)),
            "3 side-steps, 1 step in all",
        ),
        (Action("travel", Fraction(4), step="walk", steps=Fraction(1, 2)), "walk 1/2 step"),
        (
            Action("travel", Fraction(4), steps=Fraction(4), towards="partner"),
            "4 steps, towards a partner",
        ),
        (Action("travel", Fraction(4), step="creep"), "creep"),
        (Action("turn", Fraction(2), turn_by="three quarters"), "a three-quarter turn"),
        (Action("turn", Fraction(2), turn_by="there and back"), "round and back"),
        (Action("turn", Fraction(2)), ""),
    ],
)
def test_how_far(action: Action, said: str) -> None:
    assert how_far_in_words(action) == said
