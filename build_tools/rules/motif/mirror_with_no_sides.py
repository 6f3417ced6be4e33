"""What is mirrored has a side: somewhere it goes left or right, or faces there.

A mirror swaps left and right. Where no action says a side, pupils do not know what to swap, and
the mirror looks just like the motif.

Bad:
    drift: {actions: [{travel: 4, as: float, direction: forwards}], …}
    drift-mirrored: {of: drift, device: mirror}
Good:
    drift: {actions: [{travel: 4, as: float, direction: sideways, side: right}], …}
    drift-mirrored: {of: drift, device: mirror}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "note"
SOURCE = "Ontario Arts Curriculum, 2010, glossary: in a mirror, left and right are exchanged"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_SIDES = ("left", "right")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each mirror of actions that have neither a side nor such a facing."""
    dance = unit.dance
    for name, development in dance.developments.items():
        if development.device != "mirror":
            continue
        actions = actions_of(dance, development.of)
        if any(action.side or action.facing in _SIDES for action in actions):
            continue
        yield Finding(
            unit.file,
            ("developments", name),
            f"`{name}` mirrors `{development.of}`, but none of its "
            f"{how_many(len(actions), 'action')} says left or right",
            f"write `side: right` on an action of `{development.of}` that goes or leans to a side",
        )
