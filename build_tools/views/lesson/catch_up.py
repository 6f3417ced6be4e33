"""The rest of a lesson that is running late, brought to its end in the minutes left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.views.lesson.fit import fit, fitting_least
from build_tools.views.lesson.step_facts import StepFacts


@dataclass(frozen=True, slots=True)
class CaughtUp:
    """The rest, fitted. `minutes` has 0 for a step that is left out."""

    minutes: tuple[int, ...]
    over: int
    """How many minutes late it still ends, with nothing left that could be cut."""


def catch_up(steps: Sequence[StepFacts], minutes: int) -> CaughtUp:
    """The steps still to come, fitted into the `minutes` left.

    A rest that is not late keeps its planned minutes. A step that can wait is left out once the
    class is as late as its least minutes, or where the rest does not hold otherwise; the earlier
    first. Then others are left out, from the last backwards, but never the warm-up, the cool-down
    or the last looking and talking, which keep their least.
    """
    kept = list(range(len(steps)))
    if _planned(steps, kept) <= minutes:
        return CaughtUp(tuple(step.minutes for step in steps), 0)
    needed = _needed(steps)
    for index, step in enumerate(steps):
        if not step.can_wait or index in needed:
            continue
        late = _planned(steps, kept) - minutes
        if late >= step.least or _least(steps, kept) > minutes:
            kept.remove(index)
    for index in reversed(range(len(steps))):
        if _least(steps, kept) <= minutes:
            break
        if index in kept and index not in needed:
            kept.remove(index)
    return _fitted(steps, kept, minutes)


def _fitted(steps: Sequence[StepFacts], kept: list[int], minutes: int) -> CaughtUp:
    over = max(0, _least(steps, kept) - minutes)
    shares = fit([steps[index] for index in kept], minutes + over) or ()
    found = dict(zip(kept, shares, strict=True))
    return CaughtUp(tuple(found.get(index, 0) for index in range(len(steps))), over)


def _needed(steps: Sequence[StepFacts]) -> set[int]:
    talks = [index for index, step in enumerate(steps) if step.phase == "look and talk"]
    frame = [index for index, step in enumerate(steps) if step.phase in ("warm-up", "cool-down")]
    return {*frame, *talks[-1:]}


def _planned(steps: Sequence[StepFacts], kept: Sequence[int]) -> int:
    return sum(steps[index].minutes for index in kept)


def _least(steps: Sequence[StepFacts], kept: Sequence[int]) -> int:
    return sum(fitting_least(steps[index]) for index in kept)
