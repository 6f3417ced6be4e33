"""The score of one counted section: who does what from count to count, row by row.

One row a part, or a role by its name. At every count of the section each row does one thing: it
dances, or it has a job while others dance. Charts, pages, the player and rules read this and
nothing else.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Passage, Section
from build_tools.movement.canon_and_unison import (
    CANONS,
    PartSpan,
    part_spans,
    parts_in,
    passage_counts,
)
from build_tools.movement.roles import Places, part_places, rows_of
from build_tools.movement.whole import lengths
from build_tools.page_words.speaking import kept_by_language
from build_tools.page_words.words import N_, _
from build_tools.views.dance.left_open import is_left_open
from build_tools.views.words.plain_words import all_of
from build_tools.views.words.punctuation import capital

HOLD = "hold"
"""What is done by who has finished, and by whoever nothing else is said of."""
JOBS: Mapping[str, str] = {
    "hold": N_("hold still"),
    "watch": N_("watch"),
    "echo": N_("echo it, small"),
    "frame": N_("frame it, still"),
}


@dataclass(frozen=True, slots=True)
class RowSpan:
    """One thing done from `start` to `end`, in counts, by the rows `first` to `last`.

    Rows count from 1. What everyone does together covers every row. `what` is a motif or a
    development, or one of `JOBS` where `job` is true; `is_open` marks what pupils decide.
    """

    what: str
    start: Fraction
    end: Fraction
    first: int
    last: int
    job: bool = False
    is_open: bool = False


@dataclass(frozen=True, slots=True)
class PassageSpan:
    """A passage in its place: from `start` to `end`, in counts of the section."""

    passage: Passage
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class PartsOverCounts:
    """A section's rows over its counts; `names` says who each row is, `places` which places of a
    group it has (none where the unit does not say).

    `spans` holds what is danced, `jobs` what is done by those who are not dancing.
    """

    rows: int
    counts: Fraction
    spans: tuple[RowSpan, ...]
    names: tuple[str, ...]
    jobs: tuple[RowSpan, ...] = ()
    places: tuple[Places, ...] = ()
    passages: tuple[PassageSpan, ...] = ()

    @property
    def everything(self) -> tuple[RowSpan, ...]:
        """What is danced and what is done meanwhile, in the order in which it starts."""
        return in_order((*self.spans, *self.jobs))

    def at(self, row: int, count: Fraction) -> RowSpan | None:
        """What `row` does right after `count` counts; None past the end."""
        return next(
            (s for s in self.everything if s.first <= row <= s.last and s.start <= count < s.end),
            None,
        )


def in_order(spans: Iterable[RowSpan]) -> tuple[RowSpan, ...]:
    """Spans in the order in which they start, the upper rows first."""
    return tuple(sorted(spans, key=lambda span: (span.start, span.first, span.end)))


def parts_over_counts(dance: Dance, section: Section) -> PartsOverCounts:
    """The passages of `section` one after another, its length the section's or the last finish."""
    if dance.sections.get(section.letter) is section:
        return _of_section(dance, section.letter)
    return _worked_out(dance, section)


@kept_by_language(maxsize=32)
def _of_section(dance: Dance, letter: str) -> PartsOverCounts:
    """Rules, charts, pages and the player ask it of each section."""
    return _worked_out(dance, dance.sections[letter])


def _worked_out(dance: Dance, section: Section) -> PartsOverCounts:
    known, named = lengths(dance), _named_rows(section)
    rows = len(named) or max((parts_in(passage) for passage in section.danced), default=1)
    spans: list[RowSpan] = []
    jobs: list[RowSpan] = []
    passages: list[PassageSpan] = []
    start = Fraction(0)
    for passage in section.danced:
        who, end = _dancing(section, passage, rows, bool(named)), start
        danced: dict[int, list[tuple[Fraction, Fraction]]] = {row: [] for row in range(1, rows + 1)}
        for s in part_spans(passage, known):
            span = start + s.start, start + s.end
            spans += (
                RowSpan(s.what, *span, *run, is_open=is_left_open(dance, s.what))
                for run in _runs(who(s))
            )
            for row in who(s):
                danced[row].append(span)
        end = start + passage_counts(passage, known)
        after = HOLD if passage.fit in CANONS else passage.others
        jobs += _jobs(passage.others, after, danced, start, end)
        passages.append(PassageSpan(passage, start, end))
        start = end
    whole = max(start, section.counts or Fraction(0))
    jobs += _jobs(HOLD, HOLD, {row: [] for row in range(1, rows + 1)}, start, whole)
    return PartsOverCounts(
        rows=rows,
        counts=whole,
        spans=tuple(spans),
        names=tuple(name for name, _at in named)
        or tuple(_("part {number}", number=n) for n in range(1, rows + 1)),
        jobs=in_order(jobs),
        places=tuple(at for _name, at in named),
        passages=tuple(passages),
    )


def _named_rows(section: Section) -> tuple[tuple[str, Places], ...]:
    """The rows by their roles; none where a part of some passage is more than a dancer's role."""
    groups = section.groups
    if groups is None or any(part_places(groups, p) is None for p in section.danced):
        return ()
    return rows_of(section)


def _dancing(
    section: Section, passage: Passage, rows: int, named: bool
) -> Callable[[PartSpan], list[int]]:
    """The rows that dance a part of `passage`.

    Where rows are parts, fewer parts take every second, third … row, as places do.
    """
    everyone = list(range(1, rows + 1))
    parts = parts_in(passage)
    if parts == 1 and not passage.roles:
        return lambda _span: everyone
    places = part_places(section.groups, passage) if section.groups and named else None
    if places is None:
        return lambda span: everyone[span.part - 1 :: parts]
    at_rows = rows_of(section)
    return lambda span: [
        n for n, (_name, at) in enumerate(at_rows, start=1) if set(at) & set(places[span.part - 1])
    ]


def _jobs(
    others: str,
    after: str,
    danced: Mapping[int, list[tuple[Fraction, Fraction]]],
    start: Fraction,
    end: Fraction,
) -> list[RowSpan]:
    """What each row does from `start` to `end` where it does not dance.

    Who waits or stands between two turns does `others`, who has danced for the last time `after`:
    in a canon they hold, since its tail is a picture that grows.
    """
    idle: dict[tuple[Fraction, Fraction, str], list[int]] = {}
    for row, spans in danced.items():
        at = start
        for first, last in sorted(spans):
            if at < first:
                idle.setdefault((at, first, others), []).append(row)
            at = max(at, last)
        if at < end:
            job = after if spans else others
            idle.setdefault((at, end, job), []).append(row)
    return [
        RowSpan(job, first, last, *run, job=True)
        for (first, last, job), rows in idle.items()
        for run in _runs(rows)
    ]


def _runs(rows: list[int]) -> Iterator[tuple[int, int]]:
    """Rows in a row as first and last: 1, 2, 4 gives 1 to 2 and 4 to 4."""
    for n, row in enumerate(rows):
        if n == 0 or rows[n - 1] != row - 1:
            first = row
        if n == len(rows) - 1 or rows[n + 1] != row + 1:
            yield first, row


def who_in_words(span: RowSpan, names: tuple[str, ...]) -> str:
    """Who does `span`: everyone, or the rows by their names."""
    if is_everyone(span, names):
        return _("Everyone")
    return capital(all_of(names[span.first - 1 : span.last]))


def is_everyone(span: RowSpan, names: tuple[str, ...]) -> bool:
    """Whether all rows do it."""
    return span.last - span.first + 1 == len(names)
