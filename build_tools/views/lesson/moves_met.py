"""A move as a lesson meets it, what each step tells of moves, and each word told once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from build_tools.model.dance import Action, Dance
from build_tools.page_words.words import _
from build_tools.views.lesson.changed_return import part_alone
from build_tools.views.lesson.notes_read import Explained
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.sections_called import in_short


@dataclass(frozen=True, slots=True)
class MoveMet:
    """A move, or another word of the notes: `action` is None where it is no single move."""

    word: str
    means: str | None
    """The author's words; None where there are none and its picture has to say it."""
    action: Action | None
    before: Action | None = None
    seated: str | None = None
    """The author's words for one who sits on a chair, if there are any."""
    wheels: str | None = None
    """The same for one in a wheelchair, where it is another way."""
    motif: str | None = None
    """The motif or development that it is a move of."""


@dataclass(frozen=True, slots=True)
class MetBefore:
    """A move that a step makes and an earlier one told: its word, and that step's number."""

    word: str
    step: int


@dataclass(frozen=True, slots=True)
class StepMoves:
    """What a step tells of moves."""

    drawn: tuple[str, ...] = ()
    """Motifs and developments that are made in it, by name: each has a picture of its own."""
    made: tuple[MoveMet, ...] = ()
    """Moves of what is made or changed in it."""
    before: tuple[MetBefore, ...] = ()
    """The others of these, which an earlier step told."""
    danced: tuple[MoveMet, ...] = ()
    """Every move of what is made, changed or danced again in it, told or not."""
    again: tuple[MoveMet, ...] = ()
    """Moves danced again, in the first step that dances them."""
    parts: tuple[str, ...] = ()
    """Letters of the sections made in it."""
    parts_again: tuple[str, ...] = ()
    """Letters of the sections danced again in it for the first time today."""
    helps: tuple[str, ...] = ()
    """Paragraphs of the notes that are about it, in Markdown."""
    ways: tuple[Explained, ...] = ()
    """What the notes say of it, or of its part, for who sits or uses a wheelchair."""


@dataclass(frozen=True, slots=True)
class TodaysMoves:
    """The moves of a lesson step by step, and what of its notes is about no step."""

    steps: tuple[StepMoves, ...]
    notes: str


def once(moves: Sequence[MoveMet]) -> tuple[MoveMet, ...]:
    """Each word once: the first time that it comes."""
    found: dict[str, MoveMet] = {}
    for move in moves:
        found.setdefault(move.word.casefold(), move)
    return tuple(found.values())


def once_in_each_part(dance: Dance, moves: Sequence[MoveMet]) -> tuple[MoveMet, ...]:
    """Each word once, and again with its part where the author says another thing of it there.

    A run through all parts told "go" as the first has it, when the third goes another way.
    """
    found: dict[str, MoveMet] = {}
    for move in moves:
        first = found.setdefault(move.word.casefold(), move)
        part = part_alone(dance, move.motif)
        if part and move.means and first.means and move.means != first.means:
            # in the same part it is told apart by what it is danced in
            same = part_alone(dance, first.motif) == part
            called = name_in_words(move.motif) if same and move.motif else in_short(dance, part)
            named = _("{move} in {part}", move=move.word, part=called)
            found.setdefault(named.casefold(), replace(move, word=named))
    return tuple(found.values())
