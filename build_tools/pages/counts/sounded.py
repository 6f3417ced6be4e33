"""What sounds in one stretch, as the page of counts says it and as its player plays it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece, Word
from build_tools.page_words.words import _
from build_tools.views.dance.score import ScoreStretch
from build_tools.views.dance.timeline import Sounding
from build_tools.views.words.deeds_of_sound import by_watchers
from build_tools.views.words.plain_words import length_in_words
from build_tools.views.words.punctuation import sentence
from build_tools.views.words.sounds_in_words import piece_in_words


@dataclass(frozen=True, slots=True)
class SoundView:
    """One piece of what sounds."""

    when: str
    """Over which counts or seconds, as read; empty where it goes on all through."""
    what: str
    """What sounds, on which counts, and who makes it."""
    pieces: str
    """The numbers of the pieces that this says, from 0, with spaces between, for scripts."""


@dataclass(frozen=True, slots=True)
class WordView:
    """A word said on a count."""

    count: str
    """On which count, as read."""
    word: str
    """What is said; empty where nothing is."""
    loud: bool
    """Whether it is louder than the others."""


@dataclass(frozen=True, slots=True)
class SaidView:
    """What is said over one phrase."""

    counts: str
    """Which counts, as read: 1 to 8."""
    start: str
    """Counts before it, as a number for scripts."""
    end: str
    """Counts till its end, as a number for scripts."""
    words: tuple[WordView, ...]
    """Word by word, count by count."""


def sounds_read(
    sounding: Sounding, phrase: int, *, counted: bool, follows: bool = False
) -> tuple[SoundView, ...]:
    """Each piece as a line, over its counts or seconds where there are several.

    Neighbours over counts that read alike are one line: no count of their own is named in them.
    Where the sound `follows` the dancers, its seconds are those it often has, and of the class
    those sound it who watch.
    """
    lines: list[tuple[str, list[int]]] = []
    for n, piece in enumerate(sounding.pieces):
        seen = replace(piece, by=by_watchers(piece.by)) if follows else piece
        what = piece_in_words(seen, phrase, counted=counted)
        if counted and lines and lines[-1][0] == what:
            lines[-1][1].append(n)
        else:
            lines.append((what, [n]))
    return tuple(
        SoundView(
            when=_when([sounding.pieces[n] for n in told], counted=counted, follows=follows)
            if lines[1:]
            else "",
            what=what,
            pieces=" ".join(map(str, told)),
        )
        for what, told in lines
    )


def _when(pieces: Sequence[Piece], *, counted: bool, follows: bool) -> str:
    start, end = pieces[0].start, pieces[-1].end
    if counted:
        return counts_read(start, end)
    long = length_in_words(end - start)
    return _("often about {long}", long=long) if follows else long


def not_said(s: ScoreStretch) -> str:
    """That nobody knows what sounds in a stretch, with what is said of it."""
    if s.section is None:
        return _("The unit does not say what sounds when, so nothing is played here.")
    return sentence(
        _(
            "The unit does not say what sounds when, so nothing is played here: {sound}",
            sound=s.section.sound.what,
        )
    )


def said_read(sounding: Sounding, phrase: int) -> tuple[SaidView, ...]:
    """The words said on counts, phrase by phrase; none where only the counts are said."""
    words = {word.at // 1: word for piece in sounding.pieces for word in piece.words}
    if not sounding.said or not words:
        return ()
    return tuple(
        SaidView(
            counts=counts_read(Fraction(start), Fraction(end)),
            start=str(start),
            end=str(end),
            words=tuple(_word(n, words.get(n)) for n in range(start, end)),
        )
        for start in range(0, -(-sounding.length // 1), phrase)
        for end in (min(start + phrase, -(-sounding.length // 1)),)
        if any(n in words for n in range(start, end))
    )


def _word(place: int, word: Word | None) -> WordView:
    return WordView(str(place + 1), word.says if word else "", loud=bool(word and word.loud))


def counts_read(start: Fraction, end: Fraction) -> str:
    """Which counts something takes: 3, 1 to 8. A part of a count takes the count it falls in."""
    first, last = start // 1 + 1, -(-end // 1)
    if first >= last:
        return figures(Fraction(first))
    return _("{first} to {last}", first=first, last=last)
