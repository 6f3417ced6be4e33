"""A lesson fitted to the minutes there are, so that every step keeps its fair share."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol


class Timed(Protocol):
    """What fitting reads of a step, in whole minutes."""

    @property
    def minutes(self) -> int:
        """How long it is planned."""

    @property
    def least(self) -> int:
        """The fewest minutes it can be done in."""

    @property
    def regroups(self) -> bool:
        """Whether pupils get into groups in it first."""


def fit(steps: Sequence[Timed], minutes: int) -> tuple[int, ...] | None:
    """The whole minutes of each step, adding up to `minutes`; None where the leasts are more.

    No other shares have a lower sum of m²/planned. Each minute beyond the leasts goes where it
    raises that sum least, by (2m + 1)/planned, and to the earlier step in a tie; so a longer slot
    shortens no step, and at the planned length each step has its planned minutes.
    """
    shares = [fitting_least(step) for step in steps]
    spare = minutes - sum(shares)
    if spare < 0 or not shares:
        return None
    for _ in range(spare):
        best = 0
        for index in range(1, len(steps)):
            here = (2 * shares[index] + 1) * steps[best].minutes
            if here < (2 * shares[best] + 1) * steps[index].minutes:
                best = index
        shares[best] += 1
    return tuple(shares)


def fitting_least(step: Timed) -> int:
    """The fewest whole minutes of a step, half a minute of getting into groups counted in.

    Never more than it is planned, so that the lesson as planned always fits.
    """
    return min(step.minutes, step.least + (1 if step.regroups else 0))
