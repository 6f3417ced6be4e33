"""A join that says to walk to a place has somewhere to walk.

Every section ends in the row and every section starts in the row, and between them pupils walk for
eight counts "to your place": they march on the spot and look silly. Something that is worth seeing,
or a new place to go to, fills those counts.

Bad:
    B: {start: {formation: rows, spot: where they are, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 8, how: Walk to your place in the row, …}, …]
Good:
    B: {start: {formation: rows, spot: where they are, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 8, how: Clap and turn round once, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.paths.arriving import arrivals
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.staying_in_place import WALKS_TO_A_PLACE
from build_tools.views.dance.on_the_floor import class_in_a_hall, on_the_floor, placed
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "transition-missing",
)
_THERE = 0.8
"""Metres within which there is nothing to walk: a step and a bit."""
_LEAST = 4
"""Counts from which on walking nowhere is seen."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each join that lets pupils walk to where all of them stand."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    known = placed(paths)
    letters = [one.section.letter if one.section else "" for one in paths.stretches]
    done: set[int] = set()
    for one in arrivals(paths):
        if one.by != "move" or one.stretch not in known or max(one.far) >= _THERE:
            continue
        before = next(letter for letter in reversed(letters[: one.stretch]) if letter)
        by = transition_between(unit.dance, before, one.letter)
        if by is None or by.counts is None or by.counts < _LEAST or id(by) in done:
            continue
        said = WALKS_TO_A_PLACE.said(by.how)
        if said is None:
            continue
        done.add(id(by))
        yield Finding(
            unit.file,
            ("transitions", unit.dance.transitions.index(by), "how"),
            f'`how` says "{said.text}" in {counts_in_words(by.counts)}, but from section {before} '
            f"to {one.letter} nobody of {class_in_a_hall(paths)} has more than {max(one.far):.1f} "
            "metres to go",
            "give those counts something to dance, such as: turn, clap, or change places",
        )
