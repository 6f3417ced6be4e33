"""Who dances what, when, in one counted section: one row a part."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.movement.canon_and_unison import part_spans, parts_in, passage_counts
from build_tools.movement.whole import lengths


@dataclass(frozen=True, slots=True)
class RowSpan:
    """One thing danced from `start` to `end`, in counts, by the rows `first` to `last`.

    Rows count from 1. What everyone does together covers every row.
    """

    what: str
    start: Fraction
    end: Fraction
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class PartsOverCounts:
    """A section's rows over its counts."""

    rows: int
    counts: Fraction
    spans: tuple[RowSpan, ...]


def parts_over_counts(dance: Dance, section: Section) -> PartsOverCounts:
    """The passages of `section` one after another, its length the section's or the last finish."""
    known = lengths(dance)
    rows = max((parts_in(passage) for passage in section.danced), default=1)
    spans, start = [], Fraction(0)
    for passage in section.danced:
        together = parts_in(passage) == 1
        for s in part_spans(passage, known):
            first, last = (1, rows) if together else (s.part, s.part)
            spans.append(RowSpan(s.what, start + s.start, start + s.end, first, last))
        start += passage_counts(passage, known)
    return PartsOverCounts(rows, max(start, section.counts or Fraction(0)), tuple(spans))


def who_in_words(span: RowSpan, rows: int) -> str:
    """Who dances `span`: everyone, or one part."""
    return "Everyone" if span.last - span.first + 1 == rows else f"Part {span.first}"
