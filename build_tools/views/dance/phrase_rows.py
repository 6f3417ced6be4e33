"""What a step dances, row by row with every move and its counts, to be seen all at once."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.movement.canon_and_unison import CANONS
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.parts_over_counts import (
    RowSpan,
    is_everyone,
    parts_over_counts,
    who_in_words,
)
from build_tools.views.words.plain_words import action_label, listed, name_in_words
from build_tools.views.words.punctuation import capital

MOST_ROWS, MOST_MOVES = 6, 26
"""Rows and moves that are still read at a look; common practice, no source."""
_AS_CHOSEN = "…"
"""Stands for what pupils choose."""


@dataclass(frozen=True, slots=True)
class PhraseMove:
    """One move: its word, the counts it takes as they are said, and from when to when it lasts.

    `start` and `end` are counts of what the step counts, from 0; both are 0 where none fits.
    """

    word: str
    counts: str
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class PhraseRow:
    """One motif as it is danced: its name, by whom where not by all, and its moves in order."""

    name: str
    who: str
    moves: tuple[PhraseMove, ...]


def phrase_rows(dance: Dance, step: Step, section: Section | None) -> tuple[PhraseRow, ...]:
    """What is danced in `step`: its one section passage by passage, else the motifs that it names.

    None where that is more than can be read at a look, or where nothing of it is counted.
    """
    if section is not None and step.counts in (None, section.counts) and section.danced:
        fits = step.counts is not None
        rows = tuple(_of_section(dance, section, fits=fits))
    else:
        named = dict.fromkeys((*step.makes, *step.develops, *step.dances, *step.shows))
        names = [one for one in named if one in dance.motifs or one in dance.developments]
        rows = tuple(_of_motifs(dance, _without_ways_there(dance, names), step.counts))
    moves = sum(len(row.moves) for row in rows)
    return rows if len(rows) <= MOST_ROWS and moves <= MOST_MOVES else ()


def _without_ways_there(dance: Dance, names: list[str]) -> list[str]:
    """The motifs without what nobody dances: what only leads to another of them."""
    danced = {what for s in dance.sections.values() for p in s.danced for what in p.what}
    return [
        name
        for name in names
        if name in danced or not any(_comes_of(dance, other, name) for other in names)
    ]


def _comes_of(dance: Dance, name: str, source: str) -> bool:
    at = dance.developments.get(name)
    while at is not None and at.of != source:
        at = dance.developments.get(at.of)
    return at is not None


def _of_section(dance: Dance, section: Section, *, fits: bool) -> Iterator[PhraseRow]:
    found = parts_over_counts(dance, section)
    for passage in found.passages:
        spans = [one for one in found.spans if passage.start <= one.start < passage.end]
        if passage.passage.fit in CANONS:
            first = min(spans, key=lambda one: (one.start, one.first))
            # whoever starts first: the others do the same later
            spans = [one for one in spans if (one.first, one.last) == (first.first, first.last)]
            yield from (_row(dance, one, _("one after another"), None) for one in spans)
            continue
        for (what, start, end), same in groupby(spans, lambda one: (one.what, one.start, one.end)):
            rows = tuple(same)
            all_do = len(rows) == 1 and is_everyone(rows[0], found.names)
            who = "" if all_do else listed([who_in_words(one, found.names) for one in rows])
            span = RowSpan(what, start, end, 1, 1)
            yield _row(dance, span, who, start if fits else None)


def _of_motifs(dance: Dance, names: list[str], counts: Fraction | None) -> Iterator[PhraseRow]:
    lengths = [sum((a.counts for a in drawn_actions(dance, n)), Fraction(0)) for n in names]
    fits = counts is not None and counts == sum(lengths, Fraction(0))
    start = Fraction(0)
    for name, length in zip(names, lengths, strict=True):
        span = RowSpan(name, start, start + length, 1, 1)
        yield _row(dance, span, "", start if fits else None)
        start += length


def _row(dance: Dance, span: RowSpan, who: str, at: Fraction | None) -> PhraseRow:
    return PhraseRow(capital(name_in_words(span.what)), who, tuple(_moves(dance, span.what, at)))


def _moves(dance: Dance, name: str, at: Fraction | None) -> Iterator[PhraseMove]:
    """The moves of a motif; `at` is the count before which it begins where the count fits it."""
    said = Fraction(0)
    for action in drawn_actions(dance, name):
        end = said + action.counts
        word = action_label(action) or _AS_CHOSEN
        spans = (Fraction(0), Fraction(0)) if at is None else (at + said, at + end)
        yield PhraseMove(word, _counts(said, end), *spans)
        said = end


def _counts(start: Fraction, end: Fraction) -> str:
    """The counts that begin in a move, as they are said: 1 2; 5 to 8 where they are many."""
    first, last = -int(-start // 1) + 1, -int(-end // 1)
    if last - first > 1:
        return _("{first} to {last}", first=first, last=last)
    return " ".join(str(n) for n in range(first, last + 1))
