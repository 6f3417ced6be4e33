"""A section that starts without a move starts where everybody is.

After a hold, a cut or a change straight on, the next section begins where the last one ended. If it
says that pupils stand in other places, metres away, nobody is there, and each pupil finds a way of
their own through the first counts.

Bad:
    B: {start: {formation: rows, columns: 2, apart: 2, groups_apart: 4, spot: new place, …}, …}
    transitions: [{from: A, to: B, as: hold, counts: 4, …}, …]
Good:
    B: {start: {formation: rows, columns: 2, apart: 2, groups_apart: 4, spot: new place, …}, …}
    transitions: [{from: A, to: B, as: move, counts: 16, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.paths.arriving import arrivals
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import class_in_a_hall, on_the_floor, placed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "transition-missing",
)
_AWAY = 1.0
"""Metres from which on a dancer is not in place."""
_MANY = 1 / 4
"""The part of the class from which on it is told."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that starts in places to which nobody has gone."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    known = placed(paths)
    done: set[str] = set()
    for one in arrivals(paths):
        if one.by == "move" or one.stretch not in known or one.letter in done:
            continue
        away = [far for far in one.far if far > _AWAY]
        if len(away) < paths.dancers * _MANY:
            continue
        done.add(one.letter)
        yield Finding(
            unit.file,
            ("sections", one.letter, "start"),
            f"section {one.letter} is come to by {_by(one.by)}, in which nobody goes anywhere, but "
            f"its places are up to {max(away):.1f} metres from where the section before ends: "
            f"{len(away)} of {class_in_a_hall(paths)} are not in theirs",
            "make it a `move` with counts to walk in, or write `spot: where they are`",
        )


def _by(kind: str) -> str:
    return "going straight on" if kind == "straight on" else f"the {kind}"
