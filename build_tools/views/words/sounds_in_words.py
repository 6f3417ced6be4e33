"""What is heard, in plain words."""

from __future__ import annotations

from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital

_SOUNDS = {
    "beat": "drum",
    "soft beat": "soft drum",
    "roll": "drum roll",
    "shaker": "shaker",
    "bell": "bell",
    "claps": "claps",
    "voice": "voice alone, no drum",
    "recording": "the recording; nothing else sounds",
    "silence": "silence",
}
_OF_DANCERS = {"claps": "claps, or other sounds of the body,"}
"""What dancers sound on themselves: a knock on the chest is no clap."""
_BY = {
    "teacher": "the teacher",
    "class": "the class",
    "dancers": "the dancers",
    "player": "a player",
}


def piece_in_words(piece: Piece, phrase: int, *, counted: bool) -> str:
    """One piece as a line: Drum on every count, the first of each 8 louder, by the teacher."""
    sounds = _OF_DANCERS.get(piece.sound) if piece.by == "dancers" else None
    parts = [
        f"{sounds or _SOUNDS[piece.sound]}{_when(piece, counted=counted)}",
        _louder(piece, phrase, counted=counted),
    ]
    if piece.by:
        parts.append(f"by {_BY[piece.by]}")
    return capital(", ".join(part for part in parts if part))


def _when(piece: Piece, *, counted: bool) -> str:
    """On which counts of its stretch it sounds; nothing where it goes on all through."""
    if not piece.strokes or piece.rate is not None:
        return ""
    at = [stroke.at for stroke in piece.strokes]
    if counted and at == [Fraction(n) for n in range(*_whole(piece))]:
        return " on every count" if len(at) > 1 else f" on count {_count(at[0])}"
    if not counted:
        return f", {len(at)} {'stroke' if len(at) == 1 else 'strokes'}"
    word = "count" if len(at) == 1 else "counts"
    return f" on {word} {listed([_count(place) for place in at])}"


def _whole(piece: Piece) -> tuple[int, int]:
    return int(piece.start), int(-(-piece.end // 1))


def _louder(piece: Piece, phrase: int, *, counted: bool) -> str:
    loud = [stroke.at for stroke in piece.strokes if stroke.loud]
    if not loud or len(loud) == len(piece.strokes):
        return "loud" if loud and len(loud) > 1 else ""
    if not counted:
        return f"{len(loud)} of them louder"
    if piece.rate is None and all(place % phrase == 0 for place in loud):
        firsts = [s.at for s in piece.strokes if s.at % phrase == 0]
        if firsts == loud:
            return f"the first of each {phrase} louder"
    return f"louder on {listed([_count(place) for place in loud])}"


def _count(place: Fraction) -> str:
    """A place as a count is said, from 1: 0 is the first, 5/2 is 3 1/2."""
    return figures(place + 1)
