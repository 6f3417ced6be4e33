"""What sounds in one stretch of a dance: pieces laid end to end, with every stroke in its place.

A stretch that is counted is laid out in counts, one that is not in seconds; what is written in the
other is turned into it by the tempo, in exact fractions.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from build_tools.model.dance import Heard
from build_tools.movement.counts import counts_in, seconds

DRUMMED = frozenset({"beat", "soft beat", "roll"})
"""Sounds of a drum."""
STRUCK = frozenset({*DRUMMED, "shaker", "bell", "claps"})
"""Sounds that are made by strokes; a voice, a recording and silence have none."""
_WITH_ACCENTS = frozenset({"beat", "soft beat", "claps"})
"""Sounds whose first of each phrase is louder where nothing else is said."""
FOLLOWS_THE_DANCERS = "the sound follows the dancers"
"""As `follows` of a sound has it: nobody makes it by the clock, and who makes it watches them."""
_NOTHING = "-"
"""Written on a count on which nothing is said."""
COUNT_IN = 4
"""Beats that a recording gives before the first count of the dance."""
ROLL = 14
"""Strokes a second of a roll: two hands at seven each. Common practice, no source."""
SHAKEN = 8
"""Shakes a second of a shaker that goes on without a pause. Common practice, no source."""
RUNG = 4
"""Strokes a second of a small bell rung without a pause. Common practice, no source."""
_WITHOUT_A_PAUSE = {"shaker": SHAKEN, "bell": RUNG}


@dataclass(frozen=True, slots=True)
class Stroke:
    """One stroke, or one count filled with quick ones, `at` its place in the stretch."""

    at: Fraction
    loud: bool


@dataclass(frozen=True, slots=True)
class Word:
    """What is said at a place in the stretch."""

    at: Fraction
    says: str
    loud: bool


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of what sounds, from `start` to `end` of its stretch, in its counts or seconds."""

    sound: str
    start: Fraction
    end: Fraction
    by: str | None
    strokes: tuple[Stroke, ...]
    rate: int | None
    """Quick strokes a second that fill each of `strokes`; None where each is one stroke."""
    words: tuple[Word, ...]

    @property
    def length(self) -> Fraction:
        """How long it lasts, in counts or seconds of its stretch."""
        return self.end - self.start


def laid(
    heard: Sequence[Heard], *, counted: bool, tempo: int | None, phrase: int
) -> tuple[Piece, ...] | None:
    """The pieces of `heard` end to end, in counts if the stretch is `counted`, else in seconds.

    None where a piece cannot be turned into the stretch's own measure, for want of a tempo.
    """
    pieces: list[Piece] = []
    start = Fraction(0)
    for one in heard:
        each = _unit(one, counted=counted, tempo=tempo)
        if each is None:
            return None
        # a phrase runs through a counted stretch; elsewhere each piece begins its own
        before = start if counted and one.counts is not None else Fraction(0)
        pieces.append(_piece(one, start, each, before, phrase))
        start = pieces[-1].end
    return tuple(pieces)


def later(piece: Piece, by: Fraction) -> Piece:
    """The same piece, so much later."""
    return replace(
        piece,
        start=piece.start + by,
        end=piece.end + by,
        strokes=tuple(replace(stroke, at=stroke.at + by) for stroke in piece.strokes),
        words=tuple(replace(word, at=word.at + by) for word in piece.words),
    )


def between(pieces: Sequence[Piece], start: Fraction, end: Fraction) -> tuple[Piece, ...]:
    """What of `pieces` sounds from `start` to `end`, as if it began there."""
    cut = (
        replace(
            one,
            start=max(one.start, start),
            end=min(one.end, end),
            strokes=tuple(stroke for stroke in one.strokes if start <= stroke.at < end),
            words=tuple(word for word in one.words if start <= word.at < end),
        )
        for one in pieces
        if one.start < end and one.end > start
    )
    return tuple(later(one, -start) for one in cut)


def length_of(heard: Sequence[Heard], *, counted: bool, tempo: int | None) -> Fraction | None:
    """How long the pieces of `heard` last together, as `laid` lays them."""
    whole = Fraction(0)
    for one in heard:
        each = _unit(one, counted=counted, tempo=tempo)
        if each is None:
            return None
        whole += written_length(one) * each
    return whole


def written_length(heard: Heard) -> Fraction:
    """How long a piece is in the measure it is written in: counts, or else seconds."""
    return Fraction(heard.counts if heard.counts is not None else heard.seconds or 0)


def places(heard: Heard) -> tuple[Fraction, ...]:
    """The counts (or seconds) of a piece on which it sounds, from 1, in order."""
    length = written_length(heard)
    if heard.on:
        return tuple(sorted(on for on in heard.on if on < length + 1))
    return tuple(Fraction(n) for n in range(1, -(-length // 1) + 1))


def _unit(one: Heard, *, counted: bool, tempo: int | None) -> Fraction | None:
    """How much of the stretch's measure one count (or second) of a piece takes."""
    if (one.counts is not None) == counted:
        return Fraction(1)
    if tempo is None:
        return None
    return counts_in(1, tempo) if counted else seconds(1, tempo)


def _piece(one: Heard, start: Fraction, each: Fraction, before: Fraction, phrase: int) -> Piece:
    at = places(one) if one.sound in STRUCK else ()
    before_first = start - each
    in_seconds = one.counts is None
    return Piece(
        sound=one.sound,
        start=start,
        end=start + written_length(one) * each,
        by=one.by,
        strokes=tuple(
            Stroke(before_first + (place if each == 1 else place * each), is_loud)
            for place, is_loud in zip(at, _loud(one, at, before, phrase), strict=True)
        ),
        rate=_rate(one.sound, in_seconds=in_seconds and not one.on),
        words=tuple(
            Word(start + n * each, word, n + 1 in one.louder)
            for n, word in enumerate(one.says)
            if word != _NOTHING
        ),
    )


def _loud(one: Heard, at: Sequence[Fraction], before: Fraction, phrase: int) -> list[bool]:
    """Whether each of the places `at` is louder: it is said to be, or the first of a phrase."""
    if one.louder:
        return [place in one.louder for place in at]
    if one.counts is None or one.sound not in _WITH_ACCENTS:
        return [False] * len(at)
    first = 1 - before
    return [(place - first) % phrase == 0 for place in at]


def _rate(sound: str, *, in_seconds: bool) -> int | None:
    """A roll is always quick; a shaker or a bell sounds on each count, or all through seconds."""
    if sound == "roll":
        return ROLL
    return _WITHOUT_A_PAUSE.get(sound) if in_seconds else None
