"""What is heard, as pages tell their scripts: one attribute with every piece and every stroke."""

from __future__ import annotations

import json
from fractions import Fraction
from typing import Any

from build_tools.movement.sounding import Piece
from build_tools.views.dance.timeline import Sounding


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
        "strokes": [_number(stroke.at) for stroke in piece.strokes],
        "loud": [_number(stroke.at) for stroke in piece.strokes if stroke.loud],
    }
    if piece.rate is not None:
        told["rate"] = piece.rate
    if piece.words:
        told["says"] = [[_number(word.at), word.says] for word in piece.words]
    return told


def _number(value: Fraction) -> int | float:
    return int(value) if value.denominator == 1 else float(value)
