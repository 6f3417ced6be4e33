"""From where an action is seen best, in degrees: 0 is from behind, 90 from the dancer's right."""

from __future__ import annotations

from build_tools.body.gesturing import slants
from build_tools.body.moves import held_out
from build_tools.body.poses import Moved

SIDE, ASIDE, BEHIND = 62.0, 28.0, 0.0
_WOUND = 48.0
"""From where the back is seen of one who winds back, and that it goes away from there."""
_FROM_BEHIND = {
    ("transfer", "rock"),
    ("stillness", "wide"),
    ("stillness", "tall"),
    ("gesture", "snap"),
    ("gesture", "flick"),
    ("gesture", "ripple"),
    ("gesture", "open"),
    ("gesture", "stretch"),
}
_FROM_THE_SIDE = {"press", "pull", "point", "bow", "close", "clap", "pat", "knock"}


def view_of(done: Moved) -> float:
    """From where to see it. A wheelchair never goes sideways: it is seen going where it faces.

    What is held in the shape of the move before is seen from where that is: a lean backwards, held,
    looked from behind like standing upright.
    """
    move, wheels = done.holding or done.move, done.body == "wheels"
    if move.kind == "travel" and wheels and (move.direction == "sideways" or move.manner == "side"):
        return -SIDE if move.left else SIDE
    if "turn" in move.kinds:
        return ASIDE if wheels else BEHIND
    if (move.kind, move.manner) == ("transfer", "wind"):
        return -_WOUND if move.left else _WOUND
    if move.kind == "stillness" and (move.part == "lips" or _folded(done)):
        return SIDE
    if move.direction == "sideways" or (move.kind, move.manner) in _FROM_BEHIND:
        return ASIDE if wheels else BEHIND
    if move.kind == "travel" and move.manner == "side":
        return BEHIND
    rests = move.manner == "settle"  # from behind, nobody sees a head that hangs
    if move.kind == "transfer" and move.end == "high" and not (held_out(move) or rests):
        return ASIDE if wheels else BEHIND
    if move.kind in ("travel", "transfer") or move.direction in ("forwards", "backwards"):
        return SIDE
    if move.kind == "gesture" and move.manner in _FROM_THE_SIDE:
        return SIDE
    if move.kind == "gesture" and move.part in ("head", "lips", "knee", "back", "chest"):
        return SIDE
    return ASIDE if wheels else BEHIND


def _folded(done: Moved) -> bool:
    """Whether a held shape is low or curled, which only the side shows."""
    move = done.move
    hugs = move.manner == "tall" and move.end != "high"
    return move.manner != "wide" and (move.end == "low" or done.shown.trunk.bend > 30 or hugs)


def leftwards(done: Moved) -> bool:
    """Whether the picture goes to the left."""
    move = done.holding or done.move
    if move.direction == "sideways" or move.manner in ("side", "wind"):
        # What is wound back goes away from where it is let go.
        return move.left != (move.manner == "wind")
    if slants(move):
        return move.left
    return move.direction == "backwards" and move.kind in ("travel", "jump", "transfer")
