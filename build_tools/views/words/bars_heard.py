"""What sounds in each phrase of a stretch: who makes it, on which counts of the phrase."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction
from operator import attrgetter
from typing import TypeVar

from build_tools.movement.sounding import Piece, Stroke, Word
from build_tools.page_words.words import N_, _
from build_tools.views.words.deeds_of_sound import Deed, OwnWords, deed

ON_EACH = frozenset({"beat", "soft beat", "claps", "shaker", "bell"})
"""Sounds that are told by the counts they fall on; of others it is told from when to when."""
_NOBODYS = {"silence": N_("no sound"), "recording": N_("play the music")}
"""What is told alike whoever makes it."""
_Placed = TypeVar("_Placed", Stroke, Word)
_AT = attrgetter("at")
_WORDS = "words"
"""What a voice says on counts where nobody wrote what: the words of the moves."""


@dataclass(frozen=True, slots=True)
class Made:
    """One sound by the same person in a bar: on which counts, from 0, which of them louder."""

    sound: str
    deed: Deed
    spans: tuple[tuple[Fraction, Fraction], ...]
    on: tuple[Fraction, ...]
    loud: tuple[Fraction, ...]
    words: tuple[Word, ...] = field(default=(), compare=False)
    """What is said in it, by places in the bar; not what makes two alike."""
    on_words: bool = False
    """Whether it falls once on each of the words that are said with it, and not on each count."""
    by_dancers: bool = field(default=False, compare=False)
    """Whether it is theirs who dance: their words may be whispered, or only thought."""


@dataclass(frozen=True, slots=True)
class Bar:
    """What sounds in one phrase, or in what is left of one."""

    length: Fraction
    made: tuple[Made, ...]


def bars_heard(
    pieces: Sequence[Piece], phrase: int, own: OwnWords, anew: Sequence[Fraction] = ()
) -> tuple[Bar, ...]:
    """The phrases of pieces that lie end to end, counted from where the first begins.

    They are counted from one again at each place of `anew`, which stand in order.
    """
    if not pieces:
        return ()
    found, start, end = [], pieces[0].start, pieces[-1].end
    while start < end:
        till = min(start + phrase, end, *(place for place in anew if place > start))
        inside = [one for one in pieces if one.start < till and one.end > start]
        found.append(Bar(till - start, _heard_in(inside, start, till, own)))
        start = till
    return tuple(found)


def does_throughout(pieces: Sequence[Piece], own: OwnWords) -> str:
    """What is done through pieces of one sound by the same people: say the words, no sound."""
    first, last = pieces[0], pieces[-1]
    by = None if first.by == "teacher" else first.by
    return _deed(first, by, first.start, last.end, own).does


def _heard_in(
    pieces: Iterable[Piece], start: Fraction, end: Fraction, own: OwnWords
) -> tuple[Made, ...]:
    """What sounds in a bar; a piece that falls on none of its counts is not told there."""
    made = list(_by_maker(pieces, start, end, own))
    heard = tuple(one for one in made if one.on or one.sound not in ON_EACH)
    whole = (Fraction(0), end - start)
    return heard or (Made("silence", Deed(_(_NOBODYS["silence"])), (whole,), (), ()),)


def _by_maker(
    pieces: Iterable[Piece], start: Fraction, end: Fraction, own: OwnWords
) -> Iterator[Made]:
    found: dict[tuple[str, Deed], list[Piece]] = {}
    for one in pieces:
        by = None if one.by == "teacher" else one.by
        found.setdefault((one.sound, _deed(one, by, start, end, own)), []).append(one)
    for (sound, does), same in found.items():
        strokes = [stroke for one in same for stroke in _from(one.strokes, start, end)]
        spans = [(max(one.start, start) - start, min(one.end, end) - start) for one in same]
        loud = {stroke.at - start for stroke in strokes if stroke.loud}
        alike = len(loud) == len(strokes) or loud == {Fraction(0)}
        yield Made(
            sound,
            does,
            _joined(spans),
            tuple(sorted(stroke.at - start for stroke in strokes)),
            () if alike else tuple(sorted(loud)),
            _words(same, start, end),
            _falls_on_words(same, strokes, start, end),
            all(one.by == "dancers" for one in same),
        )


def _falls_on_words(
    pieces: Sequence[Piece], strokes: Sequence[Stroke], start: Fraction, end: Fraction
) -> bool:
    if any(one.by not in (None, "teacher") for one in pieces):
        return False
    words = {word.at for one in pieces for word in _from(one.words, start, end)}
    return bool(words) and len(words) < end - start and words == {one.at for one in strokes}


def _words(pieces: Iterable[Piece], start: Fraction, end: Fraction) -> tuple[Word, ...]:
    """The words of a bar, by their places in it."""
    return tuple(
        replace(word, at=word.at - start) for one in pieces for word in _from(one.words, start, end)
    )


def _deed(piece: Piece, by: str | None, start: Fraction, end: Fraction, own: OwnWords) -> Deed:
    if piece.sound in _NOBODYS:
        return Deed(_(_NOBODYS[piece.sound]))
    inside = _from(piece.words, start, end)
    at = {stroke.at for stroke in _from(piece.strokes, start, end)} if inside else set()
    said = [word.says for word in inside if piece.sound == "voice" or word.at in at]
    if piece.sound == "voice" and not said and by != "dancers":
        said = [_WORDS]
    return deed(piece.sound, by, said, own)


def _from(placed: Sequence[_Placed], start: Fraction, end: Fraction) -> Sequence[_Placed]:
    """Of strokes or words, which stand in order, those at `start` or later and before `end`."""
    first = bisect_left(placed, start, key=_AT)
    return placed[first : bisect_left(placed, end, first, key=_AT)]


def _joined(spans: Iterable[tuple[Fraction, Fraction]]) -> tuple[tuple[Fraction, Fraction], ...]:
    joined: list[tuple[Fraction, Fraction]] = []
    for first, last in sorted(spans):
        if joined and joined[-1][1] == first:
            joined[-1] = (joined[-1][0], last)
        else:
            joined.append((first, last))
    return tuple(joined)
