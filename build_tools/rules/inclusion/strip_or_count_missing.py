"""A motif of the pupils has a word on at least one of its actions.

The words become cards and a strip that show the order. Pupils who are slow to find the next move
lose the order of the moves before they lose the moves. Words to start from are enough: pupils may
change them.

Bad:
    actions: [{travel: 4}, {jump: 2}, {stillness: 2}]
Good:
    actions: [{travel: 4, as: rush}, {jump: 2, as: break}, {stillness: 2, as: hide}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = (
    "Skorji and McKenzie, Developmental Medicine and Child Neurology 39, 1997: pupils aged 8 to 12 "
    "with poor coordination lose the order of moves more than the moves"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a note for each motif from pupils with no word on any of its actions."""
    for name, motif in unit.dance.motifs.items():
        if motif.made_by != "pupils" or any(action.word for action in motif.actions):
            continue
        number = len(motif.actions)
        yield Finding(
            unit.file,
            ("motifs", name, "actions"),
            f"no word stands on the {number} {'action' if number == 1 else 'actions'} of `{name}`",
            "give each action a word under `as`, for cards that show the order",
        )
