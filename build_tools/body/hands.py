"""How hands clap, snap, knock, pat and flick: drawn back first, and then what they do."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.keys import Key, Keys, stance, there_and_again
from build_tools.body.moves import Move
from build_tools.body.pose import Pose
from build_tools.body.shapes import with_arms


def by_hands(move: Move, flicked: str) -> Keys | None:
    """The moments of what hands do there and back; None of what they do otherwise.

    `flicked` are the arms that a flick ends with.
    """
    twice, manner = there_and_agains(move), move.manner
    if manner == "clap":
        return there_and_again(
            (_with(move, "clap-open"), _with(move, "clap")), max(1, round(move.counts))
        )
    if manner == "snap":
        opened = replace(_with(move, "pincers-open"), spread=1.0)
        shut = replace(_with(move, "pincers"), spread=-1.0)
        return there_and_again((opened, shut), twice)
    if manner == "flick" and move.part in (None, "hand", "fingers", "arm") and not move.one_side:
        back = replace(_with(move, "flick-back"), spread=-1.0)
        out = replace(_with(move, flicked), spread=1.0)
        return Keys((Key(0.5, back), Key(1.0, out)), 1)
    return _struck(move) if struck(move) else None


def struck(move: Move) -> bool:
    """Whether both hands knock or pat on something."""
    hands = move.part in (None, "hand") and not move.one_side
    return move.kind == "gesture" and move.manner in ("knock", "pat") and hands


def there_and_agains(move: Move) -> int:
    """How often hands that snap, ripple or knock do it: once a count, twice at most."""
    return max(1, min(2, round(move.counts)))


def knocks_twice(move: Move) -> bool:
    """Whether hands knock two times."""
    return move.manner == "knock" and there_and_agains(move) > 1


def _struck(move: Move) -> Keys:
    """Lifted, and down on what they strike; the first time from the height it starts on."""
    arms = "pat" if move.manner == "pat" else "knock-low" if move.direction == "down" else "knock"
    spread = 0.0 if move.manner == "pat" else -1.0
    lifted, at = (replace(_with(move, one), spread=spread) for one in (f"{arms}-open", arms))
    first = replace(with_arms(stance(move.start), f"{arms}-open"), spread=spread)
    keys = there_and_again((lifted, at), 2 if knocks_twice(move) else 1)
    return Keys((Key(keys.moments[0].at, first), *keys.moments[1:]), keys.shown)


def _with(move: Move, arms: str) -> Pose:
    return with_arms(stance(move.end), arms)
