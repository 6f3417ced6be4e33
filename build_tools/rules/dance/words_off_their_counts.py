"""A move's word is said on the first count of the move.

Where words carry the beat, they are the cue: pupils burst on "burst". A word that comes a count
early is danced a count early, and the class is never together. Where nothing is said on a count,
write a hyphen.

Bad:
    seed: {actions: [{stillness: 2, as: tight}, {gesture: 1, as: burst},
        {travel: 3, as: go}, {transfer: 2, as: settle}], …}
    A: {counts: 8, danced: [{what: [seed], as: unison}],
        heard: [{counts: 8, sound: voice, says: [tight, burst, "-", go, go, go, set, tle]}], …}
Good:
    seed: {actions: [{stillness: 2, as: tight}, {gesture: 1, as: burst},
        {travel: 3, as: go}, {transfer: 2, as: settle}], …}
    A: {counts: 8, danced: [{what: [seed], as: unison}],
        heard: [{counts: 8, sound: voice, says: [tight, "-", burst, go, go, go, set, tle]}], …}
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.parts_over_counts import RowSpan, parts_over_counts
from build_tools.views.words.plain_words import counts_in_words, how_many

GRADE: Grade = "question"
NEEDS = ("unknown-name", "counts-do-not-fill-section", "heard-does-not-fill", "heard-on-no-count")
SOURCE = "common practice, no source"

_LEAST = 2
"""Letters that a part of a word has in common with the word."""


@dataclass(frozen=True, slots=True)
class _Move:
    """A move's word, its letters alone, and the counts to its start and end in the section."""

    word: str
    letters: str
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class _SaidWord:
    """A word said in a section, its letters alone, on which count from 0, and its field."""

    word: str
    letters: str
    count: Fraction
    path: FieldPath


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first word in each piece that is said on another move's count."""
    for letter, section in unit.dance.sections.items():
        if section.counts is None or not any(one.says for one in section.heard):
            continue
        told: set[FieldPath] = set()
        words = tuple(_said(section))
        for span in _alone(unit.dance, section):
            for said, why in _wrong(unit.dance, words, span):
                piece = said.path[:4]
                if piece in told:
                    continue
                told.add(piece)
                yield Finding(
                    unit.file,
                    said.path,
                    f'`says` has "{said.word}" on count {said.count + 1} of {letter}, {why}'
                    f"{_lacking(section, said.path)}",
                    "say each move's word, or its first part, on the first count of the move, and "
                    'write "-" where nothing is said',
                )


def _lacking(section: Section, path: FieldPath) -> str:
    """That a piece has fewer words than counts, or more."""
    piece = section.heard[int(path[3])]
    if piece.counts is None or len(piece.says) == piece.counts:
        return ""
    return f"; there are {how_many(len(piece.says), 'word')} for {counts_in_words(piece.counts)}"


def _wrong(
    dance: Dance, words: Sequence[_SaidWord], span: RowSpan
) -> Iterator[tuple[_SaidWord, str]]:
    moves = tuple(_moves(dance, span))
    said = [one for one in words if span.start <= one.count < span.end]
    if not any(_alike(one.letters, move.letters) for one in said for move in moves):
        # a poem, or a count, is no list of the moves
        return
    for one in said:
        here = next((move for move in moves if move.start <= one.count < move.end), None)
        if here is None or _alike(one.letters, here.letters):
            continue
        whole = next((move for move in moves if one.letters == move.letters), None)
        if whole is not None:
            yield (
                one,
                f"where {here.word} is danced; {whole.word} starts on count {whole.start + 1}, "
                f"after {whole.start - span.start} counts of {span.what}",
            )
        elif one.count == here.start:
            yield one, f"but {here.word} starts there, after {here.start} counts"


def _alone(dance: Dance, section: Section) -> Iterator[RowSpan]:
    """What is danced while nothing else is."""
    spans = parts_over_counts(dance, section).spans
    for span in spans:
        others = (one for one in spans if one != span)
        if all(one.end <= span.start or span.end <= one.start for one in others):
            yield span


def _moves(dance: Dance, span: RowSpan) -> Iterator[_Move]:
    actions, start = actions_of(dance, span.what), span.start
    while actions and start < span.end:
        for action in actions:
            if action.word:
                yield _Move(action.word, _letters(action.word), start, start + action.counts)
            start += action.counts


def _said(section: Section) -> Iterator[_SaidWord]:
    start = Fraction(0)
    for n, piece in enumerate(section.heard):
        for m, word in enumerate(piece.says if piece.counts is not None else ()):
            if word != "-":
                path = ("sections", section.letter, "heard", n, "says", m)
                yield _SaidWord(word, _letters(word), start + m, path)
        start += piece.counts or 0


def _alike(one: str, other: str) -> bool:
    """Whether the letters said are those of the word, or begin it, or go on from it."""
    shorter, longer = sorted((one, other), key=len)
    return one == other or (len(shorter) >= _LEAST and longer.startswith(shorter))


def _letters(words: str) -> str:
    return re.sub(r"[^a-z]", "", words.lower())
