"""Which sections follow one another, and where pupils practise going from one into the next."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from itertools import pairwise

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.views.dance.progress import StepPlace, steps_in_order

Pair = tuple[str, str]
"""Two letters: a section, and the one after it."""


def neighbours(dance: Dance) -> tuple[Pair, ...]:
    """Each section of the form with the one after it, each two once; a repeat of one is no join."""
    return tuple(dict.fromkeys((a, b) for a, b in pairwise(dance.form) if a != b))


@lru_cache(maxsize=4)
def practised(unit: Unit) -> Mapping[Pair, tuple[StepPlace, ...]]:
    """The steps that join each two sections, one right after the other, in order."""
    found: dict[Pair, list[StepPlace]] = {}
    for place, _, step in steps_in_order(unit):
        for pair in dict.fromkeys(pairwise(step.joins)):
            found.setdefault(pair, []).append(place)
    return {pair: tuple(places) for pair, places in found.items()}
