"""Which moves of a part are said without a beat, and on whose words a beat falls.

A teacher who read "The class says the words for two eights. Then pat softly once on each word"
would have patted all of it: which of three sheep the pats are for is told by its name.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import NamedTuple

from build_tools.model.dance import Dance, Section
from build_tools.movement.sounding import Piece
from build_tools.page_words.words import _
from build_tools.views.dance.parts_over_counts import RowSpan, parts_over_counts
from build_tools.views.words.bars_heard import bars_heard
from build_tools.views.words.deeds_of_sound import OwnWords, are_counts
from build_tools.views.words.plain_words import listed, name_in_words
from build_tools.views.words.said_over import said_over


class _Run(NamedTuple):
    """Moves that sound alike, and what is done."""

    moves: tuple[str, ...]
    does: str
    on_words: bool
    """Whether a beat falls on each of its words; else they are said without one."""
    said: str
    """The words in order, marked."""


def moves_in(spans: Sequence[RowSpan], rows: int, pieces: Sequence[Piece]) -> tuple[str, ...]:
    """What everyone dances in the time of pieces that lie end to end, each once, by its name.

    None of them where it begins or ends elsewhere, where it is not danced by everyone together,
    or where the same is danced at another time too.
    """
    start, end = pieces[0].start, pieces[-1].end
    inside = [one for one in spans if one.start < end and one.end > start]
    named = {one.what for one in inside}
    beside = any(one.what in named for one in spans if one not in inside)
    alone = all((one.first, one.last) == (1, rows) for one in inside)
    if beside or not alone or any(one.start < start or one.end > end for one in inside):
        return ()
    return tuple(name_in_words(one) for one in dict.fromkeys(one.what for one in inside))


def beat_by_moves(dance: Dance, section: Section, pieces: Sequence[Piece], own: OwnWords) -> str:
    """What is sounded in a part whose words are said by themselves first or last, else on a beat.

    Empty where it is anything else: it is then told by phrases.
    """
    score = parts_over_counts(dance, section)
    runs = []
    for _sound, alike in groupby(pieces, key=lambda one: (one.sound, one.by)):
        same = list(alike)
        bars = bars_heard(same, dance.phrase, own)
        moves = moves_in(score.spans, score.rows, same)
        made = {(one.deed, one.on_words, one.sound) for bar in bars for one in bar.made}
        if len(made) != 1 or not moves or not _has_words(same):
            return ""
        ((deed, on_words, sound),) = made
        if not on_words and sound != "voice":
            return ""
        said = said_over(bars, dance.phrase, own)
        runs.append(_Run(moves, f"{deed.does} {deed.how}".rstrip(), on_words, said))
    if len({one.on_words for one in runs}) == 1:
        return ""
    return " ".join(_said(runs))


def _has_words(pieces: Sequence[Piece]) -> bool:
    words = [word.says for one in pieces for word in one.words]
    return bool(words) and not are_counts(words)


def _said(runs: Sequence[_Run]) -> Iterator[str]:
    for one in runs:
        moves = listed(one.moves)
        if one.on_words:
            told = _("For {moves}, {does} once on each word", moves=moves, does=one.does)
        else:
            told = _("For {moves}, {does}, with no beat", moves=moves, does=one.does)
        yield f"{told}{one.said}."
