"""Where a section starts in another formation than the last one ended in, pupils have a way there.

The dance is in a circle and, one count later, in two lines: pupils do not know when to go, or how.
The transition says how they move. Pairs or small groups may simply stay where they are and dance
as pairs or as a scattered class.

Bad:
    A: {end: {formation: circle, …}, …}
    B: {start: {formation: line, …}, …}
    transitions: [{from: A, to: B, as: cut, how: Hold the shape, …}, …]
Good:
    A: {end: {formation: circle, …}, …}
    B: {start: {formation: line, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 8, how: Walk into your line, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Standing, Transition
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.getting_to_formations import TURNS, TURNS_ON_THE_SPOT, gets_there
from build_tools.views.dance.joins import crossings
from build_tools.views.words.standing_said import standing_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)

_STAY = {
    ("pairs", "scattered"),
    ("small groups", "scattered"),
    ("small groups", "pairs"),
    ("circle", "semicircle"),
}
"""Formations that pupils can be seen in without going anywhere."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition by which nobody can reach the next formation."""
    dance = unit.dance
    told: set[int] = set()
    for way in crossings(dance):
        end, start, transition = way.end, way.start, way.by
        if end.formation == start.formation or (end.formation, start.formation) in _STAY:
            continue
        if transition is None or id(transition) in told:
            continue
        told.add(id(transition))
        if gets_there(transition.how) or _by_turning(transition, start):
            continue
        yield Finding(
            unit.file,
            ("transitions", dance.transitions.index(transition), "how"),
            f"section {way.first} ends {standing_in_words(end)} and section {way.second} starts "
            f"{standing_in_words(start)}, but {_why(transition)}",
            "say in `how` which way pupils go, such as: walk into your place, or start where the "
            "section before ends",
        )


def _by_turning(transition: Transition, start: Standing) -> bool:
    """Whether they stand so as soon as they have turned: a file that turns becomes a line."""
    if TURNS_ON_THE_SPOT.said(transition.how) is not None and start.spot != "new place":
        return True
    return start.formation in ("pairs", "scattered") and TURNS.said(transition.how) is not None


def _why(transition: Transition) -> str:
    if transition.kind in ("cut", "straight on"):
        return f"the change is {'a cut' if transition.kind == 'cut' else 'straight on'}, 0 counts"
    counts = f" of {figures(transition.counts)} counts" if transition.counts else ""
    if transition.kind == "hold":
        return f"the change is a hold{counts}, in which nobody moves"
    return f"`how` says nothing of going there in the {transition.kind}{counts}"
