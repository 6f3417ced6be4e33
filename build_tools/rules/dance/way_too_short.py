"""A move into another formation has time to be walked.

Thirty pupils who go from a circle into rows in two counts run, or are late for all that follows.
Four counts are few, and two and a half seconds are.

Bad:
    A: {end: {formation: circle, …}, …}
    B: {start: {formation: line, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 2, …}, …]
Good:
    A: {end: {formation: circle, …}, …}
    B: {start: {formation: line, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 8, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import crossings
from build_tools.views.words.plain_words import counts_in_words
from build_tools.views.words.standing_said import standing_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")

_FEWEST = 4
_LEAST_SECONDS = Fraction(9, 5)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each move between two formations that nobody can walk in time."""
    dance = unit.dance
    told: set[int] = set()
    for way in crossings(dance):
        end, start, transition = way.end, way.start, way.by
        if transition is None or transition.kind != "move" or transition.counts is None:
            continue
        if end.formation == start.formation or id(transition) in told:
            continue
        lasts = seconds(transition.counts, dance.tempo) if dance.tempo else None
        if transition.counts >= _FEWEST and (lasts is None or lasts >= _LEAST_SECONDS):
            continue
        told.add(id(transition))
        time = f", {float(lasts):.1f} seconds" if lasts else ""
        yield Finding(
            unit.file,
            ("transitions", dance.transitions.index(transition), "counts"),
            f"section {way.first} ends {standing_in_words(end)} and section {way.second} starts "
            f"{standing_in_words(start)}, with {counts_in_words(transition.counts)}{time} to get "
            "there",
            "give it 8 counts, or start where the section before ends",
        )
