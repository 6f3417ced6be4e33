"""Where the notes of a lesson stand in its steps, those that explain a move apart."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.lesson.notes_read import Explained, Paragraph, notes_read
from build_tools.views.words.plain_words import name_in_words

MAKING = frozenset({"explore", "make", "develop", "join", "rehearse"})
"""Kinds of step in which pupils work at the dance."""
_OF_A_GROUP = re.compile(r"in a (three|five|row)")


@dataclass(frozen=True, slots=True)
class NotesInSteps:
    """Notes step by step, and what is about no step, in Markdown."""

    words: tuple[tuple[Explained, ...], ...]
    """Words of the notes that a step's heading has and no move is called."""
    helps: tuple[tuple[str, ...], ...]
    """Paragraphs about what a step teaches or makes."""
    rest: str


def notes_in_steps(dance: Dance, lesson: Lesson, moves: frozenset[str]) -> NotesInSteps:
    """The notes of `lesson`, those left out that explain one of `moves` (in small letters)."""
    steps = lesson.steps
    words: list[list[Explained]] = [[] for _ in steps]
    helps: list[list[str]] = [[] for _ in steps]
    rest: list[str] = []
    last: int | None = None
    follows = False
    for piece in notes_read(lesson.notes):
        if isinstance(piece, Explained):
            if piece.word.casefold() in moves:
                continue
            place = _named_in(steps, piece.word)
            if place is None:
                rest.append(f"- **{piece.word}**: {piece.text}")
            else:
                words[place].append(piece)
            continue
        place = _about(dance, steps, piece)
        if place is None and last is not None and (follows or _OF_A_GROUP.match(piece.opening)):
            place = last
        last, follows = place, piece.text.endswith(":")
        (rest if place is None else helps[place]).append(piece.text)
    return NotesInSteps(tuple(map(tuple, words)), tuple(map(tuple, helps)), "\n\n".join(rest))


def danced_in(step: Step) -> tuple[str, ...]:
    """What a step joins, dances or shows."""
    return (*step.joins, *step.dances, *step.shows)


def _named_in(steps: Sequence[Step], word: str) -> int | None:
    """The first step of making whose heading has the word, in any form that begins so."""
    start = re.compile(rf"\b{re.escape(word.casefold())}")
    for n, step in enumerate(steps):
        if step.phase in MAKING and start.search(step.does.casefold()):
            return n
    return None


def _about(dance: Dance, steps: Sequence[Step], piece: Paragraph) -> int | None:
    """The step that a paragraph is about: what it teaches, or makes, stands in the opening."""
    if not piece.opening:
        return None
    for n, step in enumerate(steps):
        parts = (*step.makes, *(step.dances if step.phase in MAKING else ()))
        sections = [dance.sections[letter] for letter in letters_in(dance, parts)]
        made = (*step.makes, *step.develops)
        motifs = [name_in_words(x) for x in made if x in dance.motifs or x in dance.developments]
        names = [*step.teaches, *motifs, *(s.name for s in sections if s.name)]
        if any(re.search(rf"\b{re.escape(x.casefold())}\b", piece.opening) for x in names):
            return n
    return None
