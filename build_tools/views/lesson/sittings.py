"""A lesson too long for its slot, taught in two sittings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from build_tools.views.lesson.fit import fit, fitting_least
from build_tools.views.lesson.step_facts import StepFacts, regrouped
from build_tools.views.words.plain_words import minutes_in_words

RECAP_MINUTES = 2
RECAP = 0
"""The number that stands for the recap, which is no step of the lesson."""
_FRAME = ("warm-up", "recall", "cool-down")


@dataclass(frozen=True, slots=True)
class SittingPart:
    """A part of a sitting. `step` numbers a step of the lesson; 0: dance again what you made."""

    step: int
    minutes: int


@dataclass(frozen=True, slots=True)
class Sittings:
    """Two sittings. `parts` is empty where two sittings of that length cannot hold the lesson."""

    parts: tuple[tuple[SittingPart, ...], ...]
    least: int
    """The fewest minutes to teach, each time, that two sittings need; 0 where nothing can be cut"""
    sentence: str


def sittings(steps: Sequence[StepFacts], minutes: int) -> Sittings:
    """The lesson in two sittings of `minutes` each, not counting the minutes for changing.

    It is cut where the planned minutes of the two are most even, earlier in a tie, among the places
    where both hold the least of every step. Each sitting has the lesson's warm-up and cool-down;
    the first has its recall, where the lesson has one, and the second a recap of 2 minutes. The
    last looking and talking is in the second.
    """
    cuts = [_cut(steps, after) for after in _places(steps)]
    if not cuts:
        needed = sum(fitting_least(step) for step in steps)
        return Sittings((), 0, f"This lesson needs at least {minutes_in_words(needed)} to teach.")
    least = min(max(_least(first), _least(second)) for first, second in cuts)
    holding = [cut for cut in cuts if max(_least(cut[0]), _least(cut[1])) <= minutes]
    if not holding:
        return Sittings(
            (), least, f"Two sittings need at least {minutes_in_words(least)} to teach each time."
        )
    best = min(holding, key=lambda cut: abs(_planned(cut[0]) - _planned(cut[1])))
    return Sittings(
        tuple(_fitted(sitting, minutes) for sitting in best),
        least,
        f"Teach it in two sittings of {minutes_in_words(minutes)}.",
    )


def _places(steps: Sequence[StepFacts]) -> list[int]:
    """After how many steps the lesson can be cut."""
    talks = [n for n, step in enumerate(steps) if step.phase == "look and talk"]
    last = talks[-1] if talks else len(steps) - 1
    return [
        after
        for after in range(1, last + 1)
        if steps[after - 1].phase not in _FRAME
        and any(step.phase not in _FRAME for step in steps[after:])
    ]


def _cut(
    steps: Sequence[StepFacts], after: int
) -> tuple[tuple[StepFacts, ...], tuple[StepFacts, ...]]:
    made = steps[after - 1]
    recap = StepFacts(
        RECAP, RECAP_MINUTES, RECAP_MINUTES, "recall", made.grouping, False, None, False
    )
    first = [*steps[:after], *(step for step in steps[after:] if step.phase == "cool-down")]
    second = [*(step for step in steps[:after] if step.phase == "warm-up"), recap, *steps[after:]]
    return _regrouped(first), _regrouped(second)


def _regrouped(steps: Sequence[StepFacts]) -> tuple[StepFacts, ...]:
    befores = (None, *(step.grouping for step in steps[:-1]))
    return tuple(
        replace(step, regroups=regrouped(before, step.grouping))
        for before, step in zip(befores, steps, strict=True)
    )


def _least(sitting: Sequence[StepFacts]) -> int:
    return sum(fitting_least(step) for step in sitting)


def _planned(sitting: Sequence[StepFacts]) -> int:
    return sum(step.minutes for step in sitting)


def _fitted(sitting: Sequence[StepFacts], minutes: int) -> tuple[SittingPart, ...]:
    shares = fit(sitting, minutes)
    assert shares is not None, "only sittings that hold their least are fitted"
    return tuple(
        SittingPart(step.number, share) for step, share in zip(sitting, shares, strict=True)
    )
