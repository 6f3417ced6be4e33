"""The runs of the whole dance, and the step in which it is shown."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from functools import lru_cache

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.sentences.words_about_dance import TWICE
from build_tools.views.dance.when_made import StepPlace, steps_in_order
from build_tools.views.lesson.told_in_step import told


@dataclass(frozen=True, slots=True)
class Run:
    """One step in which the whole dance is danced, and how many times: 1, or 2 where it says so."""

    place: StepPlace
    times: int
    named: bool
    """Whether the step says whole, not only the letters of every section."""


@lru_cache(maxsize=4)
def whole_runs(unit: Unit) -> tuple[Run, ...]:
    """Every step that dances or shows the whole, in order. A showing counts once."""
    found = []
    for place, _, step in steps_in_order(unit):
        shown = is_whole(unit.dance, step.shows)
        if not shown and not is_whole(unit.dance, step.dances):
            continue
        twice = not shown and TWICE.in_any(told(step))
        found.append(Run(place, 2 if twice else 1, "whole" in (*step.dances, *step.shows)))
    return tuple(found)


@lru_cache(maxsize=4)
def step_of_showing(unit: Unit) -> StepPlace | None:
    """The step of the last lesson that first shows the whole; None if none does."""
    if not unit.lessons:
        return None
    last = unit.lessons[-1]
    return next(
        (
            StepPlace(last.number, n)
            for n, step in enumerate(last.steps)
            if is_whole(unit.dance, step.shows)
        ),
        None,
    )


def is_whole(dance: Dance, parts: tuple[str, ...]) -> bool:
    """Whether the parts a step names are the whole dance, by its name or by every letter.

    A section that comes back is named as often as it comes: A and B once are not all of A B A B.
    """
    return bool(parts) and ("whole" in parts or not Counter(dance.form) - Counter(parts))
