"""What is sounded where nobody counts, told to who makes it: shake the bell for 15 seconds."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.movement.sounding import Piece
from build_tools.page_words.words import _, ngettext
from build_tools.views.words.deeds_of_sound import OwnWords, deed, saying
from build_tools.views.words.punctuation import capital, quoted

_MOST_WORDS = 8
"""More words than these are said as a class knows them, and not told one by one."""
_STRUCK = frozenset({"beat", "soft beat", "claps", "shaker", "bell"})
"""Sounds whose strokes can be numbered."""
_SHAKEN = re.compile(
    r"(?:an?|the|some|one) ((?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?|maracas?|tins?|jars?"
    r"|box(?:es)?|pods?|seeds)\b(?: or (?:an? )?(?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?"
    r"|maracas?|tins?|jars?|box(?:es)?|pods?|seeds)\b)?)",
    re.IGNORECASE,
)
"""What an author begins a sound with that is shaken and is called no shaker."""


def made_in_seconds(pieces: Sequence[Piece], *, about: bool, what: str = "") -> str:
    """Where nothing is counted: "Shake the shaker for 15 seconds. No sound for 4 seconds.".

    `what` is what the author says of the sound: a bell is shaken where it names a bell.
    """
    shaken = _shaken(what)
    own = OwnWords(what)
    lines = [capital(_lasting(one, about=about, own=own, shaker=shaken)) for one in pieces]
    told: list[str] = []
    if len(set(lines)) > 1 and pieces[-1].sound in _STRUCK:
        lines[-1] = _("Last, {what}", what=f"{lines[-1][:1].lower()}{lines[-1][1:]}")
    while lines:
        run, times = _repeated(lines)
        told += lines[:run]
        if times > 1:
            told.append(
                _("That {number} times", number=times)
                if run == 1
                else _("All of it {number} times", number=times)
            )
        del lines[: run * times]
    return " ".join(f"{line}." for line in told)


def _shaken(what: str) -> str:
    """What is shaken, in the author's own word where that is no shaker."""
    found = _SHAKEN.match(what)
    named = found is not None and "shaker" not in what.casefold()
    return _("the {name}", name=found[1]) if found and named else _("the shaker")


def _repeated(lines: Sequence[str]) -> tuple[int, int]:
    """How many lines from the first on come again, and how many times they come."""
    for run in range(1, len(lines) // 2 + 1):
        times = 1
        while lines[run * times : run * (times + 1)] == lines[:run]:
            times += 1
        if times > 1:
            return run, times
    return 1, 1


def _lasting(piece: Piece, *, about: bool, own: OwnWords, shaker: str) -> str:
    seconds = ngettext("{number} second", "{number} seconds", round(piece.length))
    long = _("about {long}", long=seconds) if about else seconds
    if piece.sound == "silence":
        return _("no sound for {long}", long=long)
    if piece.sound == "recording":
        return _("the music plays for {long}", long=long)
    does = _told(piece, own, shaker)
    if piece.rate is None and piece.strokes and piece.sound in _STRUCK:
        many = len(piece.strokes)
        if many == 1:
            return _("{does} once", does=does)
        if many == round(piece.length):
            return _("{does} {number} times, one a second", does=does, number=many)
        return _("{does} {number} times", does=does, number=many)
    return _("{does} for {long}", does=does, long=long)


def _told(piece: Piece, own: OwnWords, shaker: str) -> str:
    words = tuple(word.says for word in piece.words)
    few = quoted(", ".join(words)) if words and len(words) <= _MOST_WORDS else ""
    if few and piece.sound == "voice":
        return saying(piece.by, words, few)
    made = deed(piece.sound, piece.by, words, own, shaker)
    return " ".join(part for part in (made.does, made.how, few) if part)
