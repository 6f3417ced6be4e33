"""When each step of a lesson starts and ends, in minutes from the start of the lesson."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson


@dataclass(frozen=True, slots=True)
class StepTime:
    """One step's place in the lesson, in whole minutes from its start."""

    start: int
    end: int


def step_times(lesson: Lesson) -> tuple[StepTime, ...]:
    """The steps laid end to end, in the order of the lesson."""
    times, now = [], 0
    for step in lesson.steps:
        times.append(StepTime(now, now + step.minutes))
        now += step.minutes
    return tuple(times)


def step_minutes(lesson: Lesson) -> int:
    """What the minutes of all the steps add up to."""
    return sum(step.minutes for step in lesson.steps)
