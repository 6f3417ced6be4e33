"""A lesson in seven lines: every step once, in order, with its minutes.

Seven lines: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.lesson import Lesson
from build_tools.views.lesson.lesson_in_short import MOST_LINES, lesson_in_short
from tests.support.sound_bank import real_bank, real_unit

PHASES = ("warm-up", "recall", "explore", "make", "develop", "rehearse", "join", "look and talk")
STEPS = st.lists(st.tuples(st.sampled_from(PHASES), st.integers(1, 20)), min_size=1, max_size=16)


def lesson_of(steps: list[tuple[str, int]]) -> Lesson:
    base = real_unit().lessons[0]
    return replace(
        base,
        steps=tuple(
            replace(base.steps[0], phase=phase, minutes=minutes) for phase, minutes in steps
        ),
    )


@given(STEPS)
def test_every_step_is_on_one_line_and_the_minutes_run_on(steps: list[tuple[str, int]]) -> None:
    lines = lesson_in_short(lesson_of(steps))
    assert len(lines) == min(MOST_LINES, len(steps))
    assert [n for line in lines for n in line.steps] == list(range(1, len(steps) + 1))
    assert [line.start for line in lines] == [0, *(line.end for line in lines[:-1])]
    assert lines[-1].end == sum(minutes for _, minutes in steps)
    for line in lines:
        assert line.end - line.start == sum(steps[n - 1][1] for n in line.steps)
    assert max(len(line.steps) for line in lines) <= -(-len(steps) // MOST_LINES) + 1


@given(STEPS)
def test_seven_steps_or_fewer_each_have_their_line(steps: list[tuple[str, int]]) -> None:
    few = steps[:MOST_LINES]
    assert [line.steps for line in lesson_in_short(lesson_of(few))] == [
        (n,) for n in range(1, len(few) + 1)
    ]


def test_steps_that_go_on_with_the_same_thing_come_together_first() -> None:
    steps = [("warm-up", 1), ("recall", 1), ("explore", 5), ("make", 8), ("develop", 6)]
    steps += [("develop", 9), ("rehearse", 4), ("look and talk", 2), ("cool-down", 2)]
    lines = lesson_in_short(lesson_of(steps))
    assert [line.steps for line in lines] == [(1, 2), (3,), (4,), (5,), (6, 7), (8,), (9,)]


def test_lessons_of_the_bank_have_seven_lines_at_most() -> None:
    for unit in real_bank().units:
        for lesson in unit.lessons:
            assert len(lesson_in_short(lesson)) <= MOST_LINES
