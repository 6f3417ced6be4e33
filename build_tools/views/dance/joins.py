"""Which sections follow one another, and where pupils practise going from one into the next."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise, permutations

from build_tools.model.dance import Dance, Standing, Transition
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.views.dance.when_made import StepPlace, steps_in_order

Pair = tuple[str, str]
"""Two letters: a section, and the one after it."""


def neighbours(dance: Dance) -> tuple[Pair, ...]:
    """Each section of the form with the one after it, each two once; a repeat of one is no join."""
    return tuple(dict.fromkeys((a, b) for a, b in pairwise(dance.form) if a != b))


@dataclass(frozen=True, slots=True)
class Crossing:
    """From one section into another: where pupils stand before and after, and how they get there.

    `by` is None where no transition says how.
    """

    first: str
    second: str
    end: Standing
    start: Standing
    by: Transition | None


def may_follow(dance: Dance) -> tuple[Pair, ...]:
    """Each section with one that may come after it, in the form or as pupils may order them."""
    order = permutations(dance.sections, 2) if dance.order_choice else pairwise(dance.form)
    return tuple(dict.fromkeys(order))


def crossings(dance: Dance) -> Iterator[Crossing]:
    """Every way from one section into another, in the form or as pupils may order them."""
    for first, second in may_follow(dance):
        end, start = dance.sections[first].end, dance.sections[second].start
        yield Crossing(first, second, end, start, transition_between(dance, first, second))


@lru_cache(maxsize=4)
def practised(unit: Unit) -> Mapping[Pair, tuple[StepPlace, ...]]:
    """The steps that join each two sections, one right after the other, in order."""
    found: dict[Pair, list[StepPlace]] = {}
    for place, _, step in steps_in_order(unit):
        for pair in dict.fromkeys(pairwise(step.joins)):
            found.setdefault(pair, []).append(place)
    return {pair: tuple(places) for pair, places in found.items()}
