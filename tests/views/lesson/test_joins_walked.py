"""Joins are told in the step that dances or walks them: their sound, and how they go seated."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.joins_walked import joins_walked
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.sitting_or_wheels import all_seated_ways
from build_tools.views.lesson.teachers_part import teachers_parts
from tests.support.sound_bank import unit_named


def beat(unit: Unit, lesson: int, step: int) -> str:
    found = teachers_parts(unit, unit.lessons[lesson - 1], in_full=False)[step - 1]
    return "".join(one.words for one in found if one.label == "Beat")


def words_in(unit: Unit, lesson: Lesson, step: int) -> dict[str, str]:
    """What a step tells who sits, by the word that it is told of."""
    ways = all_seated_ways(unit, lesson.steps, todays_moves(unit, lesson).steps)
    return {one.word: one.chair for one in ways[step - 1].moves}


def with_step(unit: Unit, lesson: int, step: int, **fields: object) -> Unit:
    """The unit with other words or numbers in one step."""
    lessons = list(unit.lessons)
    steps = list(lessons[lesson - 1].steps)
    steps[step - 1] = replace(steps[step - 1], **fields)  # type: ignore[arg-type]
    lessons[lesson - 1] = replace(lessons[lesson - 1], steps=tuple(steps))
    return replace(unit, lessons=tuple(lessons))


def test_no_join_is_sounded_over_a_rest_and_each_where_it_is_practised() -> None:
    """A teacher read what to tap in a join where pupils rest, and nothing where they make it."""
    unit = unit_named("rock-pool")
    recalls, joins = beat(unit, 5, 2), beat(unit, 5, 3)
    assert "To B: " in recalls
    assert "To C: " not in recalls
    assert "To D: " in recalls
    assert "To C: " in joins
    task = "Dance the tide into the anemones. Dance the crabs, hold for eight, and dance the storm."
    through = with_step(unit, 5, 2, task=task)
    assert "To C: " in beat(through, 5, 2)
    assert "To C: as before." in beat(through, 5, 3), "it is what the step is for"


def test_joins_that_are_walked_have_each_their_own_sound() -> None:
    """An adviser read "Tap seven eights" of joins of which one is counted and one is silent."""
    unit = with_step(unit_named("rock-pool"), 6, 2, counts=Fraction(16 + 8 + 8 + 8 + 16))
    told = beat(unit, 6, 2).split("\n")
    assert told[0] == "Slow wave: Tap two eights."
    ends = [(line.split(":")[0], line.split(". ")[-1]) for line in told[1:]]
    assert ends == [
        ("To B", "Count aloud for one eight."),
        ("To C", "Tap eight beats."),
        ("To D", "No sound for one eight."),
        ("To “tide comes home”", "Tap two eights."),
    ]
    assert "To B: " in beat(unit, 6, 3), "the run that follows has its joins"
    walked_first = with_step(unit, 6, 2, does="Go over it", task="Walk all joins. Dance the wave.")
    assert beat(walked_first, 6, 2).split("\n")[-1] == told[0]
    other_counts = with_step(unit, 6, 2, counts=Fraction(16))
    assert "To B: " not in beat(other_counts, 6, 2), "the counts are those of the wave alone"


@pytest.mark.parametrize(
    ("task", "walked"),
    [
        ("Walk all four joins.", True),
        ("Walk every join, then dance.", True),
        ("Practise both joins.", True),
        ("Walk last week's weakest join three times.", False),
        ("Walk that join three times.", False),
    ],
)
def test_all_joins_are_walked_where_the_step_says_all(task: str, walked: bool) -> None:
    unit = unit_named("rock-pool")
    step = replace(unit.lessons[5].steps[1], does="Go over it", task=task)
    assert bool(joins_walked(unit.dance, step)) == walked


def test_who_walks_the_joins_again_has_their_ways_on_a_chair_and_on_wheels() -> None:
    """An adviser found the slow wave's lines alone in a step that walks all four joins."""
    unit = unit_named("rock-pool")
    lesson = replace(unit.lessons[5], notes="")
    told = words_in(unit, lesson, 2)
    assert told["A to B"].startswith("Stay at your own place in the square")
    assert "creeps to face you" in told["B to C"]
    assert told["D to “tide comes home”"] == "Stay, and face the front"
    said = replace(lesson, notes="- **Dance the slow wave**: Seated: in the joins, stay.")
    assert "A to B" not in words_in(unit, said, 2), "today's notes say it themselves"
