"""What is heard, in plain words."""

from __future__ import annotations

from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece
from build_tools.page_words.words import N_, _, ngettext
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital

_SOUNDS = {
    "beat": N_("drum"),
    "soft beat": N_("soft drum"),
    "roll": N_("drum roll"),
    "shaker": N_("shaker"),
    "bell": N_("bell"),
    "claps": N_("claps"),
    "voice": N_("voice alone, no drum"),
    "recording": N_("the recording, played for the class; nothing else sounds"),
    "silence": N_("silence"),
}
_OF_DANCERS = {"claps": N_("claps, or other sounds of the body,")}
"""What dancers sound on themselves: a knock on the chest is no clap."""
_BY = {
    "teacher": N_("by the teacher"),
    "class": N_("by the class"),
    "dancers": N_("by the dancers"),
    "player": N_("by a player"),
    "watchers": N_("by those who watch"),
}


def piece_in_words(piece: Piece, phrase: int, *, counted: bool) -> str:
    """One piece as a line: Drum on every count, the first of each 8 louder, by the teacher."""
    parts = [
        _sound(piece, counted=counted),
        _louder(piece, phrase, counted=counted),
    ]
    # that a recording is played says who: somebody at the player
    if piece.by and (piece.sound, piece.by) != ("recording", "player"):
        parts.append(_(_BY[piece.by]))
    return capital(", ".join(part for part in parts if part))


def _sound(piece: Piece, *, counted: bool) -> str:
    """What sounds, and on which counts of its stretch unless it goes on all through."""
    by_dancers = _OF_DANCERS.get(piece.sound) if piece.by == "dancers" else None
    sound = _(by_dancers or _SOUNDS[piece.sound])
    if not piece.strokes or piece.rate is not None:
        return sound
    at = [stroke.at for stroke in piece.strokes]
    if counted and at == [Fraction(n) for n in range(*_whole(piece))]:
        if len(at) > 1:
            return _("{sound} on every count", sound=sound)
    elif not counted:
        return ngettext(
            "{sound}, {number} stroke", "{sound}, {number} strokes", len(at), sound=sound
        )
    return ngettext(
        "{sound} on count {counts}",
        "{sound} on counts {counts}",
        len(at),
        sound=sound,
        counts=listed([_count(place) for place in at]),
    )


def _whole(piece: Piece) -> tuple[int, int]:
    return int(piece.start), int(-(-piece.end // 1))


def _louder(piece: Piece, phrase: int, *, counted: bool) -> str:
    loud = [stroke.at for stroke in piece.strokes if stroke.loud]
    if not loud or len(loud) == len(piece.strokes):
        return _("loud") if loud and len(loud) > 1 else ""
    if not counted:
        return _("{number} of them louder", number=len(loud))
    if piece.rate is None and all(place % phrase == 0 for place in loud):
        firsts = [s.at for s in piece.strokes if s.at % phrase == 0]
        if firsts == loud:
            return _("the first of each {phrase} louder", phrase=phrase)
    return _("louder on {counts}", counts=listed([_count(place) for place in loud]))


def _count(place: Fraction) -> str:
    """A place as a count is said, from 1: 0 is the first, 5/2 is 3 1/2."""
    return figures(place + 1)
