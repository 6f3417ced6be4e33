"""In how few minutes a lesson can be taught at one go, and in how few each time in two.

The same sums as `site_overrides/sums/share-minutes.js` and `sittings.js`, which fit a lesson to the
slot of the day; `tests/views/lesson/test_sessions.py` holds the two together. All in whole minutes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import ceil

from build_tools.model.unit import Unit
from build_tools.views.lesson.step_facts import StepFacts, step_facts

_NOBODY_TO_FIND = ("alone", "whole class")
_GETTING_INTO_GROUPS = 0.5
"""Minutes; common practice, no source."""
_FRAME = ("warm-up", "recall", "cool-down")
_RECAP_MINUTES = 2


@dataclass(frozen=True, slots=True)
class LessonNeeds:
    """What one lesson needs: `at_once` in one session, `each_of_two` each time in two.

    `each_of_two` is None where the lesson cannot be cut.
    """

    planned: int
    at_once: int
    each_of_two: int | None


def lesson_needs(unit: Unit) -> tuple[LessonNeeds, ...]:
    """What each lesson of the unit needs, in order."""
    return tuple(
        LessonNeeds(lesson.minutes, least(steps), each_of_two(steps))
        for lesson in unit.lessons
        for steps in [step_facts(unit, lesson)]
    )


def sessions(needs: Sequence[LessonNeeds], minutes: int) -> int | None:
    """How many sessions of `minutes` the lessons take; None where one does not fit in two."""
    taken = 0
    for one in needs:
        if minutes >= one.at_once:
            taken += 1
        elif one.each_of_two is not None and minutes >= one.each_of_two:
            taken += 2
        else:
            return None
    return taken


def least(steps: Sequence[StepFacts]) -> int:
    """The fewest minutes that hold the least of every step and getting into groups."""
    total, owed, before = 0, 0.0, None
    for step in steps:
        shortest = min(step.minutes, step.least)
        if _regrouped(before, step.grouping):
            owed += _GETTING_INTO_GROUPS
            more = min(step.minutes - shortest, ceil(owed))
            owed = min(0.0, owed - more)
            shortest += more
        total += shortest
        before = step.grouping
    return total


def _regrouped(before: str | None, grouping: str) -> bool:
    return before is not None and grouping != before and grouping not in _NOBODY_TO_FIND


def each_of_two(steps: Sequence[StepFacts]) -> int | None:
    """The fewest minutes each of two sessions needs, cut where they need least; None for no cut."""
    talks = [n for n, step in enumerate(steps) if step.phase == "look and talk"]
    last = talks[-1] if talks else len(steps) - 1
    inside = [step.phase not in _FRAME for step in steps]
    cuts = [n for n in range(1, last + 1) if inside[n - 1] and any(inside[n:])]
    return min((max(map(least, _cut(steps, after))) for after in cuts), default=None)


def _cut(steps: Sequence[StepFacts], after: int) -> tuple[list[StepFacts], list[StepFacts]]:
    before, rest = steps[:after], steps[after:]
    recap = replace(
        before[-1],
        number=0,
        minutes=_RECAP_MINUTES,
        least=_RECAP_MINUTES,
        phase="recall",
        sits=None,
        showing=None,
        can_wait=False,
    )
    first = [*before, *(step for step in rest if step.phase == "cool-down")]
    second = [*(step for step in before if step.phase == "warm-up"), recap, *rest]
    return first, second
