"""Everybody has time to walk to where the next section starts.

Metres to go are set against seconds to go in, at a walk of that age. Half a class that arrives two
seconds late misses the first move, and those who ran are out of breath. After a section that is
made up nobody knows where anybody is: if nothing in it brings pupils home, somebody may have the
whole hall to cross.

Bad:
    B: {start: {formation: rows, columns: 2, apart: 2, groups_apart: 3, spot: new place, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 1, …}, …]
Good:
    B: {start: {formation: rows, columns: 2, apart: 2, groups_apart: 3, spot: new place, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 24, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.paths.arriving import Arrival, arrivals
from build_tools.paths.model import Paths, StretchPaths
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.staying_in_place import stays_near
from build_tools.views.dance.on_the_floor import class_in_a_hall, on_the_floor, placed
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "walking speed for the age as in build_tools/body/ages.json, where its tables are named"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "transition-missing",
)
_ONE = 1 / 8
"""The part of the class from which on it is the join that is short, and not a group's luck."""
_SLIGHT = 0.5
"""Seconds that a quick step makes up."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each move in which many of the class cannot be there in time."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    dance, speed = unit.dance, paths.body.walking
    known = placed(paths)
    for one in arrivals(paths):
        if one.by != "move" or one.seconds is None:
            continue
        before, stretch = _before(paths, one.stretch)
        worst = _anywhere(unit, stretch, one)
        if one.stretch not in known and not worst:
            continue
        late = one.late(speed, worst=worst)
        short = one.short_by(speed, worst=worst)
        if len(late) < paths.dancers * _ONE or short < _SLIGHT:
            continue
        by = transition_between(dance, before, one.letter)
        assert by is not None
        assert by.counts is not None
        yield Finding(
            unit.file,
            ("transitions", dance.transitions.index(by), "counts"),
            f"from section {before} to {one.letter} some {_go(worst)} "
            f"{max(one.at_worst if worst else one.far):.1f} metres in "
            f"{counts_in_words(by.counts)}, {one.seconds:.1f} seconds; at a walk of {speed:.1f} "
            f"metres a second {len(late)} of {class_in_a_hall(paths)} are late, the last by "
            f"{short:.1f} seconds",
            "give the move more counts, or start the next section nearer to where this one ends",
        )


def _go(worst: bool) -> str:
    return "may have to go" if worst else "go"


def _before(paths: Paths, number: int) -> tuple[str, StretchPaths]:
    """The section before a section, by its letter and as it is danced."""
    return next(
        (one.section.letter, one) for one in reversed(paths.stretches[:number]) if one.section
    )


def _anywhere(unit: Unit, before: StretchPaths, arrival: Arrival) -> bool:
    """Whether after a section that is made up nobody knows where anybody is."""
    section = before.section
    if section is None or section.improvised_from is None or arrival.at_worst == arrival.far:
        return False
    here = unit.dance.sections[arrival.letter].start.apart
    says = (*section.improvised_rules, section.end.place, section.ends_on)
    return here is not None and not any(map(stays_near, says))
