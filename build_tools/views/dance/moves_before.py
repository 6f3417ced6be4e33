"""For each move of a motif, the one that left the body in the shape in which it starts."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.body.holding import carried
from build_tools.model.dance import Action
from build_tools.views.dance.left_open import OPEN


def moves_before(actions: Sequence[Action]) -> tuple[Action | None, ...]:
    """The move before each, or before what only holds it; None at the start and after a blank."""
    found: list[Action | None] = []
    before: Action | None = None
    for action in actions:
        found.append(before)
        before = carried(action, before) if action.kind != OPEN else None
    return tuple(found)
