"""A join is shorter than the sections it joins.

A way from one section to the next that lasts as long as either has become a section of its own,
with nothing in it: watchers see thirty pupils walking.

Bad:
    B: {counts: 16, …}
    transitions: [{from: A, to: B, as: move, counts: 16, …}, …]
Good:
    B: {counts: 32, …}
    transitions: [{from: A, to: B, as: move, counts: 8, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, elements of construction, as taught in UK dance: a transition that becomes too "
    "long turns into a phrase of its own"
)
NEEDS = ("unknown-name", "transition-missing")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition as long as a counted section beside it, or longer."""
    dance = unit.dance
    told: set[int] = set()
    for pair in dict.fromkeys(pairwise(dance.form)):
        transition = transition_between(dance, *pair)
        if transition is None or transition.counts is None or id(transition) in told:
            continue
        counted = [(c, letter) for letter in pair if (c := dance.sections[letter].counts)]
        if not counted or transition.counts < min(counted)[0]:
            continue
        told.add(id(transition))
        counts, letter = min(counted)
        yield Finding(
            unit.file,
            ("transitions", dance.transitions.index(transition), "counts"),
            f"the change from {pair[0]} to {pair[1]} takes "
            f"{counts_in_words(transition.counts)}, and "
            f"section {letter} beside it only {figures(counts)}",
            f"give the change fewer than {figures(counts)} counts, or make a section of it",
        )
