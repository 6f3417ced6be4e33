"""What is sounded where nobody counts, told to who makes it: shake the bell for 15 seconds."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from build_tools.movement.sounding import FOLLOWS_THE_DANCERS, Piece
from build_tools.page_words.words import _, ngettext
from build_tools.views.words.deeds_of_sound import OwnWords, by_watchers, deed, saying
from build_tools.views.words.punctuation import capital, quoted

_MOST_WORDS = 8
"""More words than these are said as a class knows them, and not told one by one."""
_MOST_BARE = 16
_STRUCK = frozenset({"beat", "soft beat", "claps", "shaker", "bell"})
"""Sounds whose strokes can be numbered."""
_SHAKEN = re.compile(
    r"(?:an?|the|some|one) ((?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?|maracas?|tins?|jars?"
    r"|box(?:es)?|pods?|seeds)\b(?: or (?:an? )?(?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?"
    r"|maracas?|tins?|jars?|box(?:es)?|pods?|seeds)\b)?)",
    re.IGNORECASE,
)
"""What an author begins a sound with that is shaken and is called no shaker."""


def made_in_seconds(
    pieces: Sequence[Piece], *, about: bool, what: str = "", follows: str = ""
) -> str:
    """Where nothing is counted: "Shake the shaker for 15 seconds. No sound for 4 seconds.".

    `what` is what the author says of the sound: a bell is shaken where it names a bell. Where it
    `follows` the dancers, its seconds are only what is often needed.
    """
    if follows == FOLLOWS_THE_DANCERS:
        watched = [replace(one, by=by_watchers(one.by)) for one in pieces]
        often = made_in_seconds(watched, about=True, what=what)
        return _("The sound follows the dancers, often like this. {often}", often=often)
    shaken = _shaken(what)
    own = OwnWords(what)
    lines = [_lasting(one, about=about, own=own, shaker=shaken) for one in pieces]
    last = None
    if len({one.alone for one in lines}) > 1 and pieces[-1].sound in _STRUCK:
        last = _("Last, {what}", what=lines.pop().alone)
    told: list[str] = []
    row: list[_Lasting] = []
    while lines:
        run, times = _repeated([one.alone for one in lines])
        if times > 1:
            told += [*_in_a_row(row), *_in_a_row(lines[:run]), _so_often(run, times)]
            row = []
        else:
            row.append(lines[0])
        del lines[: run * times]
    told += _in_a_row(row)
    return " ".join(f"{capital(line)}." for line in (*told, *([last] if last else ())))


class _Lasting(NamedTuple):
    """What sounds, and how long, said alone and after others whose seconds are told."""

    alone: str
    after: str | None
    """None of strokes that are numbered, which have no seconds."""


def _in_a_row(lines: Sequence[_Lasting]) -> list[str]:
    """Sounds one after another: ring the bell for about 8 seconds, no sound for 8."""
    told: list[str] = []
    joins = False
    for one in lines:
        if joins and one.after is not None:
            told[-1] += f", {one.after}"
        else:
            told.append(one.alone)
        joins = one.after is not None
    return told


def _so_often(run: int, times: int) -> str:
    if run == 1:
        return _("That {number} times", number=times)
    return _("All of it {number} times", number=times)


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


def _lasting(piece: Piece, *, about: bool, own: OwnWords, shaker: str) -> _Lasting:
    seconds = ngettext("{number} second", "{number} seconds", round(piece.length))
    long = _("about {long}", long=seconds) if about else seconds
    # a bare number past what a class counts would read as counts
    after = str(round(piece.length)) if piece.length <= _MOST_BARE else long
    if piece.sound == "silence":
        return _Lasting(_("no sound for {long}", long=long), _("no sound for {long}", long=after))
    if piece.sound == "recording":
        alone = _("the music plays for {long}", long=long)
        return _Lasting(alone, _("the music plays for {long}", long=after))
    does = _told(piece, own, shaker)
    if piece.rate is None and piece.strokes and piece.sound in _STRUCK:
        return _Lasting(_numbered(does, len(piece.strokes), round(piece.length)), None)
    return _Lasting(
        _("{does} for {long}", does=does, long=long), _("{does} for {long}", does=does, long=after)
    )


def _numbered(does: str, many: int, seconds: int) -> str:
    """So many strokes in so many seconds."""
    if many == 1:
        return _("{does} once", does=does)
    if many == seconds:
        return _("{does} {number} times, one a second", does=does, number=many)
    return _("{does} {number} times", does=does, number=many)


def _told(piece: Piece, own: OwnWords, shaker: str) -> str:
    words = tuple(word.says for word in piece.words)
    few = quoted(", ".join(words)) if words and len(words) <= _MOST_WORDS else ""
    if few and piece.sound == "voice":
        return saying(piece.by, words, few)
    made = deed(piece.sound, piece.by, words, own, shaker)
    return " ".join(part for part in (made.does, made.how, few) if part)
