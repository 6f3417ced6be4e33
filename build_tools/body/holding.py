"""A stillness that names no shape of its own holds the shape of the move before it."""

from __future__ import annotations

from build_tools.body.moves import Move, move_of
from build_tools.model.dance import Action

_HELD = ("gesture", "transfer", "stillness")
"""Kinds that end in a shape to be held; a step, a turn or a jump ends on its way."""


def holds(move: Move, before: Move | None) -> bool:
    """Whether `move` is still in the shape that `before` ended in.

    A pupils' word for a shape, a size, a part of the body or another level is a shape of its own.
    """
    if before is None or move.kind != "stillness" or move.also or before.also:
        return False
    own = move.manner or move.part or move.size
    return not own and before.kind in _HELD and move.start == move.end == before.end


def carried(action: Action, before: Action | None) -> Action:
    """What the move after `action` starts from: the move that made the shape it holds."""
    if before is not None and holds(move_of(action, before), move_of(before)):
        return before
    return action
