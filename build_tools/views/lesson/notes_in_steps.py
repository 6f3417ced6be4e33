"""Where the notes of a lesson stand in its steps, those that explain a move apart."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.lesson.move_lines import notes_as_meant
from build_tools.views.lesson.notes_read import Explained, Paragraph, notes_read
from build_tools.views.lesson.step_named import step_headed, step_named
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.punctuation import capital

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
    ways: tuple[tuple[Explained, ...], ...]
    """What the notes say of a step, or of the part in it, for who sits or uses a wheelchair."""
    rest: str


def notes_in_steps(dance: Dance, lesson: Lesson, moves: frozenset[str]) -> NotesInSteps:
    """The notes of `lesson`, those left out that explain one of `moves` (in small letters)."""
    steps = lesson.steps
    words: list[list[Explained]] = [[] for _ in steps]
    helps: list[list[str]] = [[] for _ in steps]
    ways: list[list[Explained]] = [[] for _ in steps]
    rest: list[str] = []
    last: int | None = None
    follows = False
    for piece in notes_read(notes_as_meant(lesson.notes, dance)):
        if isinstance(piece, Explained):
            if piece.word.casefold() in moves:
                continue
            ways_told = bool(piece.seated or piece.wheels)
            place = step_named(steps, piece.word) if ways_told else None
            if place is not None:
                piece = replace(piece, word=_called(dance, steps[place]))
            else:
                place = _named_in(dance, steps, piece.word)
            if place is None and ways_told:
                place = step_headed(steps, piece.word)
            if place is None:
                rest.append(piece.written)
                continue
            if piece.text:
                words[place].append(piece)
            if ways_told:
                ways[place].append(piece)
            continue
        place = _step_of_ways(steps, piece)
        if place is None:
            place = _about(dance, steps, piece)
        if place is None and last is not None and (follows or _OF_A_GROUP.match(piece.opening)):
            place = last
        last, follows = place, piece.text.endswith(":")
        if place is None:
            rest.append(piece.text)
            continue
        if piece.seated or piece.wheels:
            called = _called(dance, steps[place])
            ways[place].append(Explained(called, "", piece.seated, piece.wheels))
        if piece.before_ways and not _only_named(dance, steps, place, piece.before_ways):
            helps[place].append(piece.before_ways)
    return NotesInSteps(
        tuple(map(tuple, words)),
        tuple(map(tuple, helps)),
        _carried_on(dance, steps, ways),
        "\n\n".join(rest),
    )


def _carried_on(
    dance: Dance, steps: Sequence[Step], ways: Sequence[Sequence[Explained]]
) -> tuple[tuple[Explained, ...], ...]:
    """The same ways in later steps that dance no more than a step with ways of its own does.

    Who shows part B needs the room and the moves that they had when they made it.
    """
    names = [_danced_names(dance, step) for step in steps]
    found = [tuple(own) for own in ways]
    for n, own in enumerate(ways):
        if own or not names[n]:
            continue
        told = (m for m in range(n - 1, -1, -1) if ways[m] and names[n] <= names[m])
        found[n] = next((tuple(ways[m]) for m in told), ())
    return tuple(found)


def _danced_names(dance: Dance, step: Step) -> frozenset[str]:
    """The parts that a step makes or dances, and the motifs that it names by themselves."""
    named = (*step.makes, *step.develops, *danced_in(step))
    motifs = (name for name in named if name in dance.motifs or name in dance.developments)
    return frozenset((*letters_in(dance, named), *motifs))


def danced_in(step: Step) -> tuple[str, ...]:
    """What a step joins, dances or shows."""
    return (*step.joins, *step.dances, *step.shows)


def _named_in(dance: Dance, steps: Sequence[Step], word: str) -> int | None:
    """The first step of making whose heading has the word, in any form that begins so.

    Else the first that makes or dances the part of that name: "storm", or "Part D".
    """
    start = re.compile(rf"\b{re.escape(word.casefold())}")
    for n, step in enumerate(steps):
        if step.phase in MAKING and start.search(step.does.casefold()):
            return n
    named = word.casefold().removeprefix("the ")
    for n, step in enumerate(steps):
        letters = letters_in(dance, (*step.makes, *danced_in(step)))
        names = {f"part {letter}".casefold() for letter in letters}
        names |= {(dance.sections[letter].name or "").casefold() for letter in letters}
        if named in names:
            return n
    return None


def _step_of_ways(steps: Sequence[Step], piece: Paragraph) -> int | None:
    """The step that a paragraph with ways in it begins with: "In the cool-down, lean a little"."""
    if not (piece.seated or piece.wheels):
        return None
    begins = piece.before_ways
    named = step_named(steps, begins)
    return step_headed(steps, begins) if named is None else named


def _only_named(dance: Dance, steps: Sequence[Step], place: int, said: str) -> bool:
    """Whether it only says which step it is about, as "Step 3." does, and nothing of it."""
    step = steps[place]
    letters = letters_in(dance, (*step.makes, *danced_in(step)))
    names = {f"step {place + 1}", step.does.casefold(), _called(dance, step).casefold()}
    names |= {f"part {letter}".casefold() for letter in letters}
    return said.casefold().removeprefix("in ").strip(" .:;,–—-") in names


def _called(dance: Dance, step: Step) -> str:
    """What a step is called where its ways are told: the part that it makes, or its heading."""
    parts = letters_in(dance, (*step.makes, *danced_in(step)))
    names = [dance.sections[letter].name for letter in parts]
    return capital(names[0]) if len(names) == 1 and names[0] else step.does


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
