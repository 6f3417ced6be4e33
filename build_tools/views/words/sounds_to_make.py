"""What is sounded over a stretch, told to the person who makes it: tap each count softly."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece
from build_tools.views.words.plain_words import how_many, listed
from build_tools.views.words.punctuation import capital, quoted

_MOST_PLACES = 4
"""More places than this are told of each phrase, where they are the same in each."""
_MOST_LOUD = 8
"""More louder counts than these are no line to read while tapping."""
_FEWEST_IN_A_RUN = 3
_MOST_WORDS = 8
"""More words than these are said as a class knows them, and not told one by one."""
_DO = {
    "beat": ("tap", "taps", ""),
    "soft beat": ("tap", "taps", " softly"),
    "roll": ("roll the drum", "rolls the drum", ""),
    "shaker": ("shake the shaker", "sounds the shaker", ""),
    "bell": ("ring the bell", "rings the bell", ""),
    "claps": ("clap", "claps", ""),
    "voice": ("use your voice, no drum", "speaks, no drum", ""),
}
"""What one person does who makes a sound, what the class or a player does, and how."""
_WORDS = ("say the words", "says the words", "")
_COUNT = ("count aloud", "counts aloud", "")
_DANCERS = {"voice": "dancers speak, no drum"}
"""What dancers do where it is not what a teacher does."""
_ON_EACH = frozenset({"beat", "soft beat", "claps", "shaker", "bell"})
"""Sounds that are told by the counts they fall on; of others it is told from when to when."""
_SHAKEN = re.compile(
    r"(?:an?|the|some|one) ((?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?|maracas?|tins?|jars?"
    r"|box(?:es)?|pods?|seeds)\b(?: or (?:an? )?(?:\w+ ){0,3}(?:bells?|keys|rattles?|tambourines?"
    r"|maracas?|tins?|jars?|box(?:es)?|pods?|seeds)\b)?)",
    re.IGNORECASE,
)
"""What an author begins a sound with that is shaken and is called no shaker."""
_BY = {"class": "the class", "player": "a player"}


@dataclass(frozen=True, slots=True)
class _Made:
    """One sound by the same person: on which counts, from 0, and which of them are louder."""

    sound: str
    by: str | None
    spans: tuple[tuple[Fraction, Fraction], ...]
    on: tuple[Fraction, ...]
    loud: tuple[Fraction, ...]
    words: tuple[str, ...]


def made_in_words(pieces: Sequence[Piece], phrase: int) -> str:
    """Over counted pieces: "Tap each softly, louder on 6 of each 8", as sentences.

    What is sounded in every phrase alike is told of one.
    """
    end = pieces[-1].end if pieces else Fraction(0)
    made = _by_maker(pieces)
    if all(_is_plain(one, end) for one in made):
        return _sentences(made, end, phrase)
    again = _comes_again(pieces, phrase, int(end))
    if again is None:
        return _sentences(made, end, phrase)
    first = _by_maker(_until(pieces, Fraction(again)))
    told = _sentences(first, Fraction(again), phrase)
    return f"In each {again}: {told[:1].lower()}{told[1:]}"


def made_in_seconds(pieces: Sequence[Piece], *, about: bool, what: str = "") -> str:
    """Where nothing is counted: "Shake the shaker for 15 seconds. No sound for 4 seconds.".

    `what` is what the author says of the sound: a bell is shaken where it names a bell.
    """
    shaken = _shaken(what)
    lines = [capital(_lasting(one, about=about).replace("the shaker", shaken)) for one in pieces]
    told: list[str] = []
    while lines:
        run, times = _repeated(lines)
        told += lines[:run]
        if times > 1:
            told.append(f"{'That' if run == 1 else 'All of it'} {times} times")
        del lines[: run * times]
    return " ".join(f"{line}." for line in told)


def _shaken(what: str) -> str:
    """What is shaken, in the author's own word where that is no shaker."""
    found = _SHAKEN.match(what)
    return f"the {found[1]}" if found and "shaker" not in what.casefold() else "the shaker"


def _repeated(lines: Sequence[str]) -> tuple[int, int]:
    """How many lines from the first on come again, and how many times they come."""
    for run in range(1, len(lines) // 2 + 1):
        times = 1
        while lines[run * times : run * (times + 1)] == lines[:run]:
            times += 1
        if times > 1:
            return run, times
    return 1, 1


def _by_maker(pieces: Iterable[Piece]) -> tuple[_Made, ...]:
    found: dict[tuple[str, str | None], list[Piece]] = {}
    for one in pieces:
        by = None if one.by == "teacher" else one.by
        found.setdefault((one.sound, by), []).append(one)
    return tuple(
        _Made(
            sound,
            by,
            tuple((one.start, one.end) for one in same),
            tuple(stroke.at for one in same for stroke in one.strokes),
            tuple(stroke.at for one in same for stroke in one.strokes if stroke.loud),
            tuple(word.says for one in same for word in one.words),
        )
        for (sound, by), same in found.items()
    )


def _is_plain(made: _Made, end: Fraction) -> bool:
    """Whether it goes on all through, or falls on few counts."""
    if _is_whole(made, end) and made.sound not in _ON_EACH:
        return True
    few = len(_places(made.on)) if made.sound in _ON_EACH else len(_joined(made.spans))
    return few <= (_MOST_PLACES if made.sound in _ON_EACH else 1)


def _is_whole(made: _Made, end: Fraction) -> bool:
    return sum((last - first for first, last in made.spans), Fraction(0)) == end


def _comes_again(pieces: Sequence[Piece], phrase: int, end: int) -> int | None:
    """The fewest whole phrases after which all that is sounded comes again, in counts."""
    heard = [_on_count(pieces, n) for n in range(end)]
    for long in range(phrase, end // 2 + 1, phrase):
        if end % long == 0 and all(heard[n] == heard[n % long] for n in range(end)):
            return long
    return None


def _on_count(pieces: Sequence[Piece], count: int) -> list[tuple[str, str | None, tuple[str, ...]]]:
    """What sounds from this count to the next."""
    return [
        (
            one.sound,
            one.by,
            tuple(
                f"{stroke.at - count} {stroke.loud}"
                for stroke in one.strokes
                if count <= stroke.at < count + 1
            ),
        )
        for one in pieces
        if one.start < count + 1 and one.end > count
    ]


def _until(pieces: Iterable[Piece], end: Fraction) -> list[Piece]:
    return [
        replace(
            one,
            end=min(one.end, end),
            strokes=tuple(stroke for stroke in one.strokes if stroke.at < end),
            words=tuple(word for word in one.words if word.at < end),
        )
        for one in pieces
        if one.start < end
    ]


def _sentences(made: Iterable[_Made], end: Fraction, phrase: int) -> str:
    return " ".join(f"{capital(_told(one, end, phrase))}." for one in made)


def _told(made: _Made, end: Fraction, phrase: int) -> str:
    whole = _is_whole(made, end)
    if made.sound in ("silence", "recording"):
        what = "no sound" if made.sound == "silence" else "play the music"
        return what if whole else f"{what} {_from_to(made.spans)}"
    deed = _deed(made.sound, made.by, made.words)
    if made.sound not in _ON_EACH or any(at.denominator > 1 for at in made.on):
        return deed if whole else f"{deed} {_from_to(made.spans)}"
    if list(made.on) == [Fraction(n) for n in range(int(end))]:
        how = _DO[made.sound][2]
        return f"{deed.removesuffix(how)} each{how}{_louder(made, int(end), phrase)}"
    return f"{deed} on {listed(_places(made.on))}{_louder_among(made, phrase)}"


def _deed(sound: str, by: str | None, words: Sequence[str]) -> str:
    one, others, how = _DO[sound]
    if sound == "voice" and words:
        one, others, how = _COUNT if all(word.isdigit() for word in words) else _WORDS
    if by in _BY:
        return f"{_BY[by]} {others}{how}"
    if by == "dancers":
        return (_DANCERS.get(sound) if not words else None) or f"dancers {one}{how}"
    return f"{one}{how}"


def _from_to(spans: Sequence[tuple[Fraction, Fraction]]) -> str:
    return listed([f"from {figures(a + 1)} to {figures(b)}" for a, b in _joined(spans)])


def _joined(spans: Sequence[tuple[Fraction, Fraction]]) -> list[tuple[Fraction, Fraction]]:
    joined: list[tuple[Fraction, Fraction]] = []
    for first, last in sorted(spans):
        if joined and joined[-1][1] == first:
            joined[-1] = (joined[-1][0], last)
        else:
            joined.append((first, last))
    return joined


def _places(on: Sequence[Fraction]) -> list[str]:
    """The counts as they are said, from 1; three or more in a row as from the first to the last."""
    found: list[list[Fraction]] = []
    for at in sorted(on):
        if found and at == found[-1][-1] + 1:
            found[-1].append(at)
        else:
            found.append([at])
    said: list[str] = []
    for run in found:
        if len(run) >= _FEWEST_IN_A_RUN:
            said.append(f"{figures(run[0] + 1)} to {figures(run[-1] + 1)}")
        else:
            said += [figures(at + 1) for at in run]
    return said


def _louder(made: _Made, end: int, phrase: int) -> str:
    """Which counts are louder; nothing where they are only the first of each phrase, or all."""
    loud = {int(at) for at in made.loud}
    if not loud or len(loud) == end or loud == set(range(0, end, phrase)):
        return ""
    for length in range(phrase, end, phrase):
        again = {at for at in range(end) if at % length in loud}
        if end % length == 0 and again == loud:
            return f", louder on {_listed(at for at in loud if at < length)} of each {length}"
    return f", louder on {_listed(loud)}" if len(loud) <= _MOST_LOUD else ""


def _louder_among(made: _Made, phrase: int) -> str:
    """Of few counts, which are louder; nothing where they are all, or the firsts of phrases."""
    loud = {at for at in made.loud if at.denominator == 1}
    usual = {at for at in made.on if at % phrase == 0}
    if not loud or loud in (usual, set(made.on)) or len(loud) > _MOST_LOUD:
        return ""
    return f", louder on {_listed(map(int, loud))}"


def _listed(places: Iterable[int]) -> str:
    return listed([str(at + 1) for at in sorted(places)])


def _lasting(piece: Piece, *, about: bool) -> str:
    long = f"{'about ' * about}{how_many(round(piece.length), 'second')}"
    if piece.sound == "silence":
        return f"no sound for {long}"
    if piece.sound == "recording":
        return f"the music plays for {long}"
    words = tuple(word.says for word in piece.words)
    deed = _deed(piece.sound, piece.by, words).removesuffix(", no drum")
    if words and len(words) <= _MOST_WORDS:
        deed = f"{deed.removesuffix('the words').removesuffix('aloud')}{quoted(', '.join(words))}"
    if piece.rate is None and piece.strokes and piece.sound in _ON_EACH:
        many = len(piece.strokes)
        if many == 1:
            return f"{deed} once"
        pace = ", one a second" if many == round(piece.length) else ""
        return f"{deed} {many} times{pace}"
    return f"{deed} for {long}"
