"""What is heard, as pages tell their scripts: one attribute with every piece and every stroke."""

from __future__ import annotations

import json
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from build_tools.movement.sounding import Piece
from build_tools.views.dance.timeline import Sounding

_A_RUN = 2
"""So many steps are shorter told as a run than one by one."""


def heard_data(sounding: Sounding) -> str:
    """The pieces of a stretch for `data-heard`: empty where nothing is known to sound."""
    if not sounding.pieces:
        return ""
    return json.dumps(heard_pieces(sounding), separators=(",", ":"))


def heard_pieces(sounding: Sounding) -> list[dict[str, Any]]:
    """The same as plain values, for data that holds more."""
    return [_piece(one) for one in sounding.pieces]


def _piece(piece: Piece) -> dict[str, Any]:
    told: dict[str, Any] = {
        "sound": piece.sound,
        "from": _number(piece.start),
        "to": _number(piece.end),
        "strokes": _places([stroke.at for stroke in piece.strokes]),
        "loud": _places([stroke.at for stroke in piece.strokes if stroke.loud]),
    }
    if piece.rate is not None:
        told["rate"] = piece.rate
    if piece.words:
        told["says"] = [[_number(word.at), word.says] for word in piece.words]
    return told


def _places(at: Sequence[Fraction]) -> list[Any]:
    """Places in their order; what goes on in even steps as its first, its last and the step.

    `playing/beat-times.js` reads it. A step of one count is not told.
    """
    found: list[Any] = []
    n = 0
    while n < len(at):
        step = at[n + 1] - at[n] if n + 1 < len(at) else Fraction(0)
        end = n
        while step and end + 1 < len(at) and at[end + 1] - at[end] == step:
            end += 1
        if end - n < _A_RUN or step.denominator != 1 or at[n].denominator != 1:
            found.append(_number(at[n]))
            n += 1
            continue
        found.append([_number(at[n]), _number(at[end]), *([] if step == 1 else [_number(step)])])
        n = end + 1
    return found


def _number(value: Fraction) -> int | float:
    return int(value) if value.denominator == 1 else float(value)
