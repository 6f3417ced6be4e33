"""How a body looks that jumps or turns."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.keys import Key, Keys, again, jump, sided, stance
from build_tools.body.moves import Move
from build_tools.body.pose import Pose, both_feet
from build_tools.body.shapes import shape, with_arms

_SMALL, _HEIGHT, _BIG = 0.1, 0.15, 0.2
"""How far off the floor, in parts of height."""
_QUARTER = 90.0


def jumped(move: Move) -> Keys:
    """Up, a shape in the air, and down on bent knees; never straight to the floor: what is low
    after a jump is reached by the action after it."""
    flight, arms = _flight(move)
    small = move.size == "small" or move.manner == "small"
    high = _SMALL if small else _BIG if move.size == "big" else _HEIGHT
    level = "high" if move.end == "high" else "middle"
    end = stance(level, "low-side" if level == "high" else "ready")
    keys = jump(with_arms(flight, arms), high, end, _pops(move))
    if "turn" in move.kinds:
        keys = turning(keys, move)
    return sided(again(keys, move.times), move)


def _pops(move: Move) -> bool:
    """Whether it is a small jump of which the hands are the most."""
    return move.part in ("hand", "fingers") and move.size == "small"


def _flight(move: Move) -> tuple[Pose, str]:
    if move.manner == "tucked":
        return shape("flight-tucked"), "tucked"
    if move.manner == "star" or move.size == "big":
        return replace(shape("flight-wide"), spread=1.0), "spray"
    if move.direction in ("forwards", "backwards") and move.size != "small":
        return shape("flight-leap"), "side"
    if _pops(move):
        return replace(shape("flight-small"), spread=1.0), "popped"
    if move.part in ("hand", "fingers", "arm"):
        return replace(shape("flight"), spread=1.0), "v"
    if move.manner == "small" or move.size == "small":
        return shape("flight-small"), "low-side"
    return shape("flight"), "up"


def turn(move: Move) -> Keys:
    """Round on the balls of the feet, ending on its level; the arms are out where `arms_out`."""
    out = {"high": "side", "middle": "side-soft", "low": "low-side"}
    near = {"high": "rest", "middle": "ready", "low": "hands-low"}
    arms = (out if arms_out(move) else near)[move.end]
    base = both_feet(stance(move.end, arms), lambda foot: replace(foot, heel=max(foot.heel, 14)))
    if move.manner == "float":
        base = replace(base, left_arm=replace(base.left_arm, raised=base.left_arm.raised + 30))
    if "travel" in move.also:
        feet = shape("small-stride")
        base = replace(base, right_foot=feet.right_foot, left_foot=feet.left_foot)
    moments: tuple[tuple[float, float], ...]
    if move.there_and_back:
        moments = ((0.5, abs(move.turn)), (1.0, 0.0))
    else:
        steps = max(1, round(abs(move.turn) / _QUARTER))
        moments = tuple(((n + 1) / steps, _QUARTER * (n + 1)) for n in range(steps))
    keys = Keys(tuple(Key(at, replace(base, turned=turned)) for at, turned in moments), 0)
    return sided(keys, move)


def arms_out(move: Move) -> bool:
    """Whether a turn has its arms out: a big one, or one that floats.

    Others keep them near: children copy the picture, and those beside them are seldom far enough
    away for two arms (common practice, no source).
    """
    return move.size == "big" or move.manner == "float"


def turning(keys: Keys, move: Move) -> Keys:
    """The same moments, turned bit by bit."""
    return Keys(
        tuple(
            Key(one.at, replace(one.pose, turned=abs(move.turn) * _turned_by(one.at)))
            for one in keys.moments
        ),
        keys.shown,
    )


def _turned_by(at: float) -> float:
    """How much of a jump's turn is done: none before the feet leave the floor, all at landing."""
    return min(1.0, max(0.0, (at - 0.38) / 0.28))
