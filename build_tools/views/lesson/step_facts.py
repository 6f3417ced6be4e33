"""What a page tells its scripts of each step: minutes, groups, what is shown, what can wait."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.showing import shown_seconds

NOBODY_TO_FIND = ("alone", "whole class")


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
    regroups: bool
    """Whether pupils are regrouped before it, which takes half a minute of it."""
    shows: float | None
    """The least seconds of one run of what it shows; None where it shows nothing that is timed."""
    can_wait: bool
    """Whether the author says it may be left out when time is short."""


def step_facts(unit: Unit, lesson: Lesson) -> tuple[StepFacts, ...]:
    """The facts of every step of the lesson, in its order."""
    facts: list[StepFacts] = []
    before: str | None = None
    for number, step in enumerate(lesson.steps, start=1):
        run = shown_seconds(unit.dance, step.shows) if step.shows else None
        facts.append(
            StepFacts(
                number=number,
                minutes=step.minutes,
                least=step.least,
                phase=step.phase,
                grouping=step.grouping,
                regroups=regrouped(before, step.grouping),
                shows=None if run is None else float(run),
                can_wait=step.can_wait,
            )
        )
        before = step.grouping
    return tuple(facts)


def regrouped(before: str | None, grouping: str) -> bool:
    """Whether pupils have others to find, or sides to take, between one step and the next.

    Pairs to fours need it, and so do fours after a step danced alone. Alone, or all together, after
    pairs do not: each pupil walks to a space with nobody to find, and the task starts on the way.
    """
    return before is not None and grouping != before and grouping not in NOBODY_TO_FIND
