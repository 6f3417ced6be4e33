"""What a step tells of the parts that it makes and joins: nothing of it is only elsewhere.

From a trial: rules of an improvised part, how pupils get from part to part and the ending stood on
the page of the dance alone, and in no step.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import pairwise

import pytest

from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.parts_told import parts_made
from build_tools.views.lesson.told_in_step import told
from build_tools.views.words.words_of_text import words_of_text
from tests.support.sound_bank import every_unit, real_unit

UNITS = every_unit()
SLUGS = [unit.slug for unit in UNITS]


def lines_of(unit: Unit) -> list[str]:
    """Every line that the steps of the unit tell of parts, in order."""
    return [
        line
        for lesson in unit.lessons
        for index, moves in enumerate(todays_moves(unit, lesson).steps)
        for part in parts_made(unit, lesson, index, moves.parts)
        for line in part.lines
    ]


def given(unit: Unit) -> set[str]:
    """Every word that any step gives in its own words."""
    steps = (step for lesson in unit.lessons for step in lesson.steps)
    return {word for step in steps for word in words_of_text(" ".join(told(step)))}


def is_told(words: str, unit: Unit) -> bool:
    """Whether a line has the words, or the steps' own words mostly do."""
    own, steps = words_of_text(words), given(unit)
    if sum(word in steps for word in own) >= 0.8 * len(own):
        return True
    return any(words.rstrip(".") in line for line in lines_of(unit))


@pytest.mark.parametrize("unit", UNITS, ids=SLUGS)
def test_every_rule_of_what_is_made_up_is_told_in_a_step(unit: Unit) -> None:
    letters = {name for lesson in unit.lessons for step in lesson.steps for name in step.makes}
    for letter in letters & set(unit.dance.sections):
        for rule in unit.dance.sections[letter].improvised_rules:
            assert is_told(rule, unit), rule


@pytest.mark.parametrize("unit", UNITS, ids=SLUGS)
def test_every_way_that_is_practised_is_told_once_at_most(unit: Unit) -> None:
    steps = [step for lesson in unit.lessons for step in lesson.steps]
    pairs = dict.fromkeys(pair for step in steps for pair in pairwise(step.joins))
    joins = [join for pair in pairs if (join := transition_between(unit.dance, *pair))]
    hows = Counter(join.how.rstrip(".") for join in joins)
    lines = Counter(line.rstrip(".") for line in lines_of(unit))
    for how, many in hows.items():
        assert lines[how[:1].upper() + how[1:]] <= many
        assert is_told(how[:1].upper() + how[1:], unit), how


@pytest.mark.parametrize("unit", UNITS, ids=SLUGS)
def test_the_ending_is_told(unit: Unit) -> None:
    assert all(is_told(one.does, unit) for one in unit.dance.ending)


def test_what_the_step_says_itself_is_not_told_again() -> None:
    unit = real_unit()
    place = next(
        (n, index)
        for n, lesson in enumerate(unit.lessons)
        for index, step in enumerate(lesson.steps)
        if step.joins
    )
    lesson = unit.lessons[place[0]]
    step = lesson.steps[place[1]]
    join = transition_between(unit.dance, *step.joins[:2])
    assert join is not None
    steps = list(lesson.steps)
    steps[place[1]] = replace(step, task=join.how)
    said = replace(lesson, steps=tuple(steps))
    lessons = tuple(said if one is lesson else one for one in unit.lessons)
    other = replace(unit, lessons=lessons)
    lines = [line for part in parts_made(other, said, place[1], ()) for line in part.lines]
    assert join.how.rstrip(".") not in [line.rstrip(".") for line in lines]
