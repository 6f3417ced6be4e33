"""Sharing out a lesson's minutes: whole minutes with the exact sum, no step under its least."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class MinutesWanted:
    """What one step needs, in minutes: the least, its share of what is left, and the most."""

    least: int
    share: int
    most: int


def share_out(minutes: int, steps: Sequence[MinutesWanted]) -> tuple[int, ...]:
    """The minutes of each step. What is left goes to the step furthest behind its share.

    Where every step has its most, the step with the greatest share takes the rest. Raises
    ValueError where the steps need more minutes than there are.
    """
    given = [step.least for step in steps]
    if sum(given) > minutes:
        raise ValueError(f"the steps need {sum(given)} minutes, and there are {minutes}")
    while left := minutes - sum(given):
        open_steps = [n for n, step in enumerate(steps) if given[n] < step.most]
        if not open_steps:
            given[max(range(len(steps)), key=lambda n: steps[n].share)] += left
            break
        given[min(open_steps, key=lambda n: given[n] / steps[n].share)] += 1
    return tuple(given)
