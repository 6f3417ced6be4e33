"""Every action as an author wrote it, with its place in the unit's document."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action, Dance
from build_tools.problem import FieldPath


def actions_written(dance: Dance) -> Iterator[tuple[FieldPath, Action]]:
    """The actions of motifs, and those that developments put in another's place or add."""
    for name, motif in dance.motifs.items():
        for n, action in enumerate(motif.actions):
            yield ("motifs", name, "actions", n), action
    for name, development in dance.developments.items():
        if development.replacement:
            yield ("developments", name, "replace", "by"), development.replacement
        for n, addition in enumerate(development.added):
            yield ("developments", name, "add", n, "action"), addition.action
