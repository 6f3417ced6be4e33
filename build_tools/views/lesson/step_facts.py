"""What a page tells its scripts of each step: minutes, groups, what is shown, what can wait."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.longest_talk import is_sat_through, longest_talk
from build_tools.views.lesson.showing import Showing, showing


@dataclass(frozen=True, slots=True)
class StepFacts:
    """One step. `number` counts from 1; `minutes` and `least` are whole minutes."""

    number: int
    minutes: int
    """How long the author plans it."""
    least: int
    """The fewest minutes the author says it can be done in, without getting into groups."""
    phase: str
    grouping: str
    sits: int | None
    """The most minutes pupils can sit in a row, where they sit in it; None where they move."""
    showing: Showing | None
    """How it shows to a class of the usual size; None where it shows nothing that is timed."""
    can_wait: bool
    """Whether the author says it may be left out when time is short."""


def step_facts(unit: Unit, lesson: Lesson) -> tuple[StepFacts, ...]:
    """The facts of every step of the lesson, in its order."""
    most = longest_talk(unit, lesson)
    return tuple(
        StepFacts(
            number=index + 1,
            minutes=step.minutes,
            least=step.least,
            phase=step.phase,
            grouping=step.grouping,
            sits=most if is_sat_through(step) else None,
            showing=showing(unit.dance, lesson, index),
            can_wait=step.can_wait,
        )
        for index, step in enumerate(lesson.steps)
    )
