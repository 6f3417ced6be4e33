"""Who dances what, when, in one counted section: one row a part, or a role by its name."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Passage, Section
from build_tools.movement.canon_and_unison import PartSpan, part_spans, parts_in, passage_counts
from build_tools.movement.roles import part_places, rows_of
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
    """A section's rows over its counts; `names` says who each row is."""

    rows: int
    counts: Fraction
    spans: tuple[RowSpan, ...]
    names: tuple[str, ...]


def parts_over_counts(dance: Dance, section: Section) -> PartsOverCounts:
    """The passages of `section` one after another, its length the section's or the last finish."""
    known, named = lengths(dance), rows_of(section)
    rows = len(named) or max((parts_in(passage) for passage in section.danced), default=1)
    spans: list[RowSpan] = []
    start = Fraction(0)
    for passage in section.danced:
        dancing = _dancing(section, passage, rows)
        for s in part_spans(passage, known):
            spans += (
                RowSpan(s.what, start + s.start, start + s.end, first, last)
                for first, last in _runs(dancing(s))
            )
        start += passage_counts(passage, known)
    names = tuple(name for name, _ in named) or tuple(f"part {n}" for n in range(1, rows + 1))
    return PartsOverCounts(rows, max(start, section.counts or Fraction(0)), tuple(spans), names)


def _dancing(section: Section, passage: Passage, rows: int) -> Callable[[PartSpan], list[int]]:
    """The rows that dance a part of `passage`."""
    everyone = list(range(1, rows + 1))
    named = rows_of(section)
    if parts_in(passage) == 1 and not passage.roles:
        return lambda _: everyone
    places = part_places(section.groups, passage) if section.groups and named else None
    if places is None:
        return lambda span: [span.part]
    return lambda span: [
        n for n, (_, at) in enumerate(named, start=1) if set(at) & set(places[span.part - 1])
    ]


def _runs(rows: list[int]) -> Iterator[tuple[int, int]]:
    """Rows in a row as first and last: 1, 2, 4 gives 1 to 2 and 4 to 4."""
    for n, row in enumerate(rows):
        if n == 0 or rows[n - 1] != row - 1:
            first = row
        if n == len(rows) - 1 or rows[n + 1] != row + 1:
            yield first, row


def who_in_words(span: RowSpan, names: tuple[str, ...]) -> str:
    """Who dances `span`: everyone, or one row by its name."""
    if span.last - span.first + 1 == len(names):
        return "Everyone"
    who = " and ".join(names[span.first - 1 : span.last])
    return who[:1].upper() + who[1:]
