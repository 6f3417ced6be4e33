"""Room on paper where a fitted lesson is danced in turns."""

from __future__ import annotations

from dataclasses import replace

from build_tools.model.unit import Unit
from build_tools.views.paper.in_turns import aside_in_turns
from build_tools.views.paper.paper_size import MORE_SIDES, on_paper
from build_tools.views.paper.what_is_printed import ASIDE
from tests.support.sound_bank import real_unit, whole_bank


def longer(unit: Unit, by: int) -> Unit:
    """The unit with its first lesson longer by so many words."""
    first = unit.lessons[0]
    grown = replace(first, not_dancing=f"{first.not_dancing} {'word ' * by}".strip())
    return replace(unit, lessons=(grown, *unit.lessons[1:]))


def test_the_longer_a_lesson_the_more_makes_room_for_its_teams() -> None:
    unit = real_unit()
    lesson = unit.lessons[0]
    short = replace(unit, lessons=(replace(lesson, steps=lesson.steps[:3]), *unit.lessons[1:]))
    assert aside_in_turns(short, short.lessons[0]) == frozenset()
    known = [frozenset[str](), *ASIDE]
    found = []
    for by in range(0, 400, 25):
        one = longer(unit, by)
        paper = on_paper(one, one.lessons[0])
        if paper.size == MORE_SIDES:
            assert aside_in_turns(one, one.lessons[0]) == frozenset()
            break
        found.append(known.index(aside_in_turns(one, one.lessons[0]) | paper.aside))
    assert found == sorted(found)
    assert found[-1] == len(known) - 1


def test_what_the_further_side_has_anyway_is_not_named_twice() -> None:
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            assert not aside_in_turns(unit, lesson) & on_paper(unit, lesson).aside
