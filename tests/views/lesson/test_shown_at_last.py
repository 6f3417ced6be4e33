"""Who shows whom in the last minute of a step, where groups are anywhere and on their spots."""

from __future__ import annotations

from dataclasses import replace

from build_tools.views.lesson.shown_at_last import shown_at_last
from build_tools.views.lesson.where_it_stands import on_spots
from tests.support.sound_bank import unit_named, whole_bank


def test_groups_anywhere_find_another_and_one_that_is_left_is_told() -> None:
    lesson = unit_named("rock-pool").lessons[1]
    index = next(n for n, one in enumerate(lesson.steps) if one.grouping == "fours")
    away = replace(lesson.steps[index], place=None, into="Sit in your four by the sea.")
    lesson = replace(lesson, steps=(*lesson.steps[:index], away, *lesson.steps[index + 1 :]))
    assert not on_spots(lesson, index)
    assert shown_at_last(lesson, index) == (
        "In the last minute, each four shows another; a four left joins two."
    )


def test_groups_on_their_spots_stay_there() -> None:
    """A teacher: lines stand behind one another, all facing the river. Who turns round?"""
    seen = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            for index, step in enumerate(lesson.steps):
                if step.grouping in ("pairs", "fours") and on_spots(lesson, index):
                    said = shown_at_last(lesson, index)
                    assert "every second" in said
                    assert "shows another" not in said
                    seen += 1
    assert seen > 5
