"""How far a motif takes a dancer forwards and to the right, in counts of travelling.

How long a step is differs from pupil to pupil; in one motif a count of travelling one way and a
count of it the other way cancel out.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.movement.devices import Actions

_ALONG = {"forwards": 1, "backwards": -1}
_ACROSS = {"right": 1, "left": -1}
_TURNED = ("quarter", "half", "three quarters")
"""Turns after which forwards is another way than before."""


@dataclass(frozen=True, slots=True)
class Way:
    """Counts of travelling forwards and to the dancer's own right; backwards and left are less."""

    forwards: Fraction
    right: Fraction


def way_of(actions: Actions) -> Way | None:
    """Where the actions take a dancer; None where one travels and does not say which way.

    None too where a turn, or another facing, makes forwards another way than it was: what goes
    round a square comes home.
    """
    forwards = right = Fraction(0)
    if any(a.facing or (a.turn_by in _TURNED and "turn" in a.kinds) for a in actions):
        return None
    for action in actions:
        moves = "travel" in action.kinds or (action.kind == "jump" and bool(action.direction))
        if not moves:
            continue
        if "turn" in action.kinds or action.pathway not in (None, "straight"):
            return None
        if action.direction in _ALONG:
            forwards += action.counts * _ALONG[action.direction]
        elif action.side and action.direction in (None, "sideways"):
            right += action.counts * _ACROSS[action.side]
        elif action.direction not in ("up", "down"):
            return None
    return Way(forwards, right)
