"""The moves of a lesson in words, and who dances what, when, for the lesson page."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.dance.moves_today import danced_today


@dataclass(frozen=True, slots=True)
class MoveRow:
    """One move, or one section of the dance."""

    label: str
    """The move's own word, or the section's letter and name."""
    lines: tuple[str, ...]
    """What the body does, or what is danced over which counts and to what sound."""
    on_paper: bool
    """Whether there is room for it on the lesson's two printed sides."""


@dataclass(frozen=True, slots=True)
class MovesView:
    """The moves in words."""

    moves: tuple[MoveRow, ...]
    """Each move: what is made today, then what is danced again."""
    parts: tuple[MoveRow, ...]
    """Who dances what, when, in each section of today."""
    moves_on_paper: bool
    """Whether any move is printed."""
    parts_on_paper: bool
    """Whether any section is printed."""


def moves_view(unit: Unit, lesson: Lesson, fitting: int) -> MovesView:
    """What is danced today, in words; the first `fitting` of its four lists are printed too."""
    moves: list[MoveRow] = []
    parts: list[MoveRow] = []
    for index, danced in enumerate(danced_today(unit, lesson)):
        moves += [MoveRow(m.word, (m.does,), 2 * index < fitting) for m in danced.moves]
        parts += [
            MoveRow(
                f"Part {p.called}",
                (*p.danced, f"Sound: {p.sound}"),
                2 * index + 1 < fitting,
            )
            for p in danced.parts
        ]
    return MovesView(
        tuple(moves),
        tuple(parts),
        any(row.on_paper for row in moves),
        any(row.on_paper for row in parts),
    )
