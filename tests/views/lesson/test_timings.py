"""Steps laid end to end over a lesson's minutes."""

from __future__ import annotations

from build_tools.views.lesson.timings import StepTime, step_minutes, step_times
from tests.support.sound_bank import real_bank

LESSONS = [lesson for unit in real_bank().units for lesson in unit.lessons]


def test_each_step_starts_where_the_one_before_ended() -> None:
    for lesson in LESSONS:
        times = step_times(lesson)
        assert [t.end - t.start for t in times] == [s.minutes for s in lesson.steps]
        assert [t.start for t in times] == [0, *(t.end for t in times[:-1])]
        assert times[-1].end == step_minutes(lesson) == sum(s.minutes for s in lesson.steps)


def test_the_first_steps_of_a_known_lesson() -> None:
    lesson = next(one for one in LESSONS if one.file == "units/rock-pool/lesson-2.md")
    first, second = lesson.steps[:2]
    assert step_times(lesson)[:2] == (
        StepTime(0, first.minutes),
        StepTime(first.minutes, first.minutes + second.minutes),
    )
