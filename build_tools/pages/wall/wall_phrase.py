"""All the moves of a step on the wall, in words, so that they are seen at once."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.views.dance.phrase_rows import phrase_rows
from build_tools.views.dance.without_counts import is_counted
from build_tools.views.lesson.teachers_part import section_of

_FEWEST_ROWS = 2


@dataclass(frozen=True, slots=True)
class WallMove:
    """One move in a row."""

    word: str
    """The pupils' word."""
    counts: str
    """The counts it takes, as they are said; empty where nobody counts."""
    span: str
    """From which count to which it lasts, for scripts; empty where no count fits it."""


@dataclass(frozen=True, slots=True)
class WallRow:
    """One motif as it is danced."""

    name: str
    """What it is called."""
    who: str
    """Who dances it; empty where all do."""
    moves: tuple[WallMove, ...]
    """Its moves, in order."""


def is_uncounted(section: Section | None) -> bool:
    """Whether a step is for a section that nobody counts: numbers beside its moves would ask to."""
    return section is not None and section.counts is None


def wall_phrase(dance: Dance, step: Step) -> tuple[WallRow, ...]:
    """The rows of what is danced; none where a single drawing shows all there is."""
    section = section_of(dance, step)
    rows = phrase_rows(dance, step, section) if is_counted(dance) else ()
    if len(rows) < _FEWEST_ROWS:
        return ()
    return tuple(
        WallRow(
            row.name,
            row.who,
            tuple(
                WallMove(
                    move.word,
                    "" if is_uncounted(section) else move.counts,
                    f"{float(move.start):g}-{float(move.end):g}" if move.end else "",
                )
                for move in row.moves
            ),
        )
        for row in rows
    )
