"""The order of the sections that a step dances, as laws over every published step."""

from __future__ import annotations

from dataclasses import replace

from build_tools.views.dance.order_danced import order_danced
from tests.support.sound_bank import real_bank

STEPS = [(u, step) for u in real_bank().units for lesson in u.lessons for step in lesson.steps]


def letters(place: int) -> list[str]:
    unit, step = STEPS[place]
    return [one.letter for one in order_danced(unit.dance, step)]


def test_the_whole_dance_is_its_form_with_what_comes_back() -> None:
    for place, (unit, step) in enumerate(STEPS):
        if "whole" in (*step.dances, *step.shows):
            assert letters(place) == list(unit.dance.form)


def test_named_sections_stand_in_the_order_that_the_step_names() -> None:
    seen = 0
    for place, (unit, step) in enumerate(STEPS):
        named = [one for one in step.dances if one in unit.dance.sections]
        if len(named) > 1 and not step.joins:
            seen += 1
            assert letters(place) == named
    assert seen


def test_one_section_alone_is_no_order() -> None:
    unit, step = STEPS[0]
    (letter, *_) = unit.dance.form
    alone = replace(step, joins=(), shows=(letter,), dances=(letter,))
    assert order_danced(unit.dance, alone) == ()


def test_each_is_called_by_its_name_or_else_by_the_first_sentence_of_the_authors_idea() -> None:
    for unit, step in STEPS:
        for one in order_danced(unit.dance, step):
            section = unit.dance.sections[one.letter]
            if section.name:
                assert one.idea.casefold() == section.name.casefold()
            else:
                assert section.idea.startswith(one.idea)
            assert one.idea
