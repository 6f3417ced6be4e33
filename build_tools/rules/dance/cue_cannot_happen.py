"""A sound that stops or changes for a cue was there before.

"The drum changes from a steady beat to the loom beat", but the section before is silent: nobody
hears the cue. Where pupils decide the order, a join has to work after every section that it may
come after; the orders in which it does not are counted.

Bad:
    D: {sound: {kind: silence, …}, heard: [{seconds: 20, sound: silence}], …}
    transitions: [{from: D, to: A, cue: The drum changes to the loom beat, …}, …]
Good:
    D: {sound: {kind: silence, …}, heard: [{seconds: 20, sound: silence}], …}
    transitions: [{from: D, to: A, cue: The drum starts the loom beat, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, permutations

from build_tools.model.dance import Dance, Transition
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.what_sounds import FAMILIES, ends_or_changes
from build_tools.views.dance.joins import may_follow
from build_tools.views.dance.timeline import section_sounding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")
_MOST = 6
"""Sections of which all orders are counted; with more they are too many to say."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each cue that names a sound which nothing before it makes."""
    dance = unit.dance
    heard = _Heard(dance)
    for n, transition in enumerate(dance.transitions):
        ended = ends_or_changes(transition.cue)
        if ended is None:
            continue
        without = {
            first
            for first, second in may_follow(dance)
            if transition_between(dance, first, second) is transition
            and not heard.has(first, FAMILIES[ended.sound])
        }
        if not without:
            continue
        letters = sorted(without)
        only = sorted({sound for letter in letters for sound in heard.of(letter)})
        yield Finding(
            unit.file,
            ("transitions", n, "cue"),
            f'`cue` says "{ended.text}", but section {listed(letters)} before it has only '
            f"{listed(only)}{_orders(dance, transition, without)}",
            "name what is heard or seen after that section, or write a transition of its own for "
            "it",
        )


class _Heard:
    """What is heard in each section of a dance, worked out where it is asked for."""

    def __init__(self, dance: Dance) -> None:
        self._dance = dance
        self._known: dict[str, tuple[str, ...]] = {}

    def of(self, letter: str) -> tuple[str, ...]:
        """The sounds of a section, each once; none where nobody knows."""
        if letter not in self._known:
            pieces = section_sounding(self._dance, self._dance.sections[letter]).pieces
            self._known[letter] = tuple(dict.fromkeys(piece.sound for piece in pieces))
        return self._known[letter]

    def has(self, letter: str, family: frozenset[str]) -> bool:
        """Whether a section has a sound of the family, or nobody knows what it has."""
        heard = self.of(letter)
        return not heard or not family.isdisjoint(heard)


def _orders(dance: Dance, transition: Transition, without: set[str]) -> str:
    """In how many of the orders that pupils may choose it cannot happen."""
    if dance.order_choice is None or len(dance.sections) > _MOST:
        return ""
    orders = list(permutations(dance.sections))
    bad = sum(
        any(
            first in without and transition_between(dance, first, second) is transition
            for first, second in pairwise(order)
        )
        for order in orders
    )
    return f", and something comes after it so in {bad} of {len(orders)} orders"
