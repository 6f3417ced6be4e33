"""How long a move takes in a wheelchair, which goes aside only by turning."""

from __future__ import annotations

from build_tools.body.moves import Move

WHEELED_QUARTER = 1.0
"""Seconds that a child takes to turn a wheelchair a quarter round by hand and stop, and to push it
once and let it roll: common practice, no source."""


def wheel_seconds(move: Move) -> float:
    """The seconds that a move takes in a wheelchair: going aside is a turn, a push, a turn back."""
    if move.kind == "travel" and goes_aside(move):
        return 3 * WHEELED_QUARTER
    if move.kind == "turn":
        return abs(move.turn) / 90 * WHEELED_QUARTER * (2 if move.there_and_back else 1)
    return 0.0


def goes_aside(move: Move) -> bool:
    """Whether a move goes sideways, which a wheelchair does only by turning."""
    return move.direction == "sideways" or move.manner == "side"
