"""What can be shortened late in a lesson, as laws over every published lesson.

Common practice, no source: a teacher who is late shortens making and rehearsing, and never the
warm-up, the talk or the cool-down.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.views.lesson.shortening import Shortened, can_be_shortened
from tests.support.sound_bank import real_bank

LESSONS = [(unit, lesson) for unit in real_bank().units for lesson in unit.lessons]


@pytest.mark.parametrize("at", range(len(LESSONS)))
def test_each_keeps_its_least_and_comes_after_what_can_wait(at: int) -> None:
    _, lesson = LESSONS[at]
    waiting = [n for n, step in enumerate(lesson.steps, start=1) if step.can_wait]
    found = can_be_shortened(lesson)
    assert [one.step for one in found] == sorted({one.step for one in found})
    for one in found:
        step = lesson.steps[one.step - 1]
        assert one.step > max(waiting, default=0)
        assert step.minutes - one.minutes == step.least
        assert one.minutes > 0
        assert step.phase not in ("warm-up", "look and talk", "cool-down")


def test_none_is_forgotten() -> None:
    _, lesson = LESSONS[0]
    making = replace(lesson.steps[1], phase="make", minutes=9, least=4, can_wait=False)
    steps = tuple(replace(step, can_wait=False, least=step.minutes) for step in lesson.steps)
    one = replace(lesson, steps=(steps[0], making, *steps[2:]))
    assert can_be_shortened(one) == (Shortened(2, 5),)
    waiting = replace(steps[2], can_wait=True)
    assert can_be_shortened(replace(one, steps=(steps[0], making, waiting, *steps[3:]))) == ()
