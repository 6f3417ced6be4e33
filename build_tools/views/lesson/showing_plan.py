"""Who shows when, so that everybody is seen in the minutes there are."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.views.lesson.groups_in_words import number_in_words
from build_tools.views.lesson.showing import CHANGE_OVER_SECONDS, TALK_SECONDS


@dataclass(frozen=True, slots=True)
class ShowingPlan:
    """A showing. `runs` holds, for each run, the places in the list of the groups that dance."""

    runs: tuple[tuple[int, ...], ...]
    at_once: int
    """The most groups that dance at the same time."""
    seconds: float
    """What all runs, the changes over and the talk take."""
    fits: bool
    """Whether that is no more than the minutes there are."""
    needs: int
    """The fewest whole minutes it takes."""
    who: str
    """Who dances when."""
    where: str
    """Where watchers sit; empty where all dance at once."""


def talk_seconds(phase: str, after: str | None) -> int:
    """Seconds of talk in a step of this phase; 0 where the step `after` is for talking."""
    return 0 if phase != "look and talk" and after == "look and talk" else TALK_SECONDS


def showing_plan(
    groups: Sequence[int], run_seconds: float, minutes: int, talk: int = TALK_SECONDS
) -> ShowingPlan:
    """How groups of these sizes show what lasts `run_seconds` in a step of `minutes`.

    Every other group dances and the rest watch, then they swap. All dance at once only where two
    runs take longer than there is, and one does not, or where there is one group.
    """
    places = range(len(groups))
    halves = (tuple(places[::2]), tuple(places[1::2]))
    plan = _plan(tuple(half for half in halves if half), run_seconds, minutes, talk)
    if plan.fits or len(plan.runs) < 2:
        return plan
    at_once = _plan((tuple(places),), run_seconds, minutes, talk)
    return at_once if at_once.fits else plan


def _plan(
    runs: tuple[tuple[int, ...], ...], run_seconds: float, minutes: int, talk: int
) -> ShowingPlan:
    seconds = len(runs) * (run_seconds + CHANGE_OVER_SECONDS) + talk
    at_once = max((len(run) for run in runs), default=0)
    return ShowingPlan(
        runs=runs,
        at_once=at_once,
        seconds=seconds,
        fits=seconds <= minutes * 60,
        needs=math.ceil(seconds / 60),
        who=_who(runs),
        where=_WHERE if len(runs) > 1 else "",
    )


_WHERE = (
    "Watchers sit close together along the front, with their feet in, so that the dancers face "
    "them and have the rest of the floor."
)


def _who(runs: tuple[tuple[int, ...], ...]) -> str:
    if not runs:
        return "Nobody dances."
    if len(runs) == 1:
        return "All dance at once, and you watch with those who are not dancing."
    first, second = (number_in_words(len(run)) for run in runs)
    if first == second == "one":
        return "One group dances and the other watches, then they swap."
    return (
        f"Every other group dances, {first} at once, and the rest watch. Then they swap, and "
        f"{second} {'dances' if second == 'one' else 'dance'}."
    )
