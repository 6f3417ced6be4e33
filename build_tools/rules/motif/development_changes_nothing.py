"""A development differs from what it is made from.

A change that changes nothing is a repetition: a watcher looks for the difference and finds none.
Where pupils decide how it is changed, it is theirs to differ.

Bad:
    gust: {actions: [{travel: 4, level: low}, {turn: 4, level: low}], …}
    gust-low: {of: gust, device: change of level, level: low}
Good:
    gust: {actions: [{travel: 4, level: low}, {turn: 4, level: low}], …}
    gust-high: {of: gust, device: change of level, level: high}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of, what_changes
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = (
    "Smith-Autard, Dance Composition, chapter abstracts: a development varies the motif, and what "
    "varies nothing is a repetition"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_ALL = {1: "the action", 2: "both actions"}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each development that leaves everything as it was."""
    dance = unit.dance
    for name, development in dance.developments.items():
        other = actions_of(dance, development.joined_to) if development.joined_to else ()
        source = actions_of(dance, development.of)
        if not what_changes(source, development, other):
            number = len(source)
            yield Finding(
                unit.file,
                ("developments", name),
                f"`{name}` ({development.device}) leaves "
                f"{_ALL.get(number, f'all {number} actions')} of "
                f"`{development.of}` just as {'it was' if number == 1 else 'they were'}",
                f"change something in `{name}`, or dance `{development.of}` in its place",
            )
