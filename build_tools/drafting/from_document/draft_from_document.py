"""A draft's files from what stands in a word-processor file, and what is to be said of them."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from build_tools.drafting.asked import BankFacts
from build_tools.drafting.draft import page
from build_tools.drafting.from_document.leftover import Leftover, Piece
from build_tools.drafting.from_document.lesson_found import lesson_found, ordered
from build_tools.drafting.from_document.notes_written import notes_written
from build_tools.drafting.from_document.rights_found import rights_found
from build_tools.drafting.from_document.splitting import stretches
from build_tools.drafting.from_document.unit_found import unit_fields_of, unit_found
from build_tools.model.unit import SchoolYears
from build_tools.word_files.reading.document import ReadDocument

MOST_LESSONS = 12


@dataclass(frozen=True, slots=True)
class Kept:
    """What of one file's notes could not be placed, and what the notes have no room for."""

    file: str
    pieces: tuple[Piece, ...]
    over: tuple[Piece, ...]


@dataclass(frozen=True, slots=True)
class DraftFromDocument:
    """A draft: the text of each file, and where every word is that is in no field."""

    files: dict[str, str]
    lessons: int
    steps: int
    kept: tuple[Kept, ...]
    labels: tuple[str, ...]
    """Words that named a field or one of its choices, and stand as that."""
    said_anyway: tuple[str, ...]
    """Sentences left out, since every page says them."""


@dataclass(frozen=True, slots=True)
class NoDraft:
    """Why there is no draft, and what to do."""

    reason: str


def draft_from_document(
    document: ReadDocument,
    asked: tuple[SchoolYears, ...],
    facts: Callable[[str], BankFacts],
) -> DraftFromDocument | NoDraft:
    """The draft; `asked` are the years that were typed, `facts` gives the bank's for some words."""
    found = stretches(document.blocks)
    lessons = [one for one in found if one.is_lesson]
    if not lessons:
        return NoDraft(
            "no step was found in it: write one heading a lesson and one table a step, with "
            "labels such as Minutes, Say and Pupils in the table's first column"
        )
    if len(lessons) > MOST_LESSONS:
        return NoDraft(
            f"it has {len(lessons)} lessons, and a unit {MOST_LESSONS} at most: split it"
        )
    rights = rights_found(document.blocks)
    if rights and not rights.may_be_changed:
        return NoDraft(f"its licence, {rights.called}, lets no changed copy be shared")
    unit = unit_found(found)
    school_years = asked or unit.years
    if not school_years:
        return NoDraft(
            "it does not say for which school years it is: add --years, as in "
            '--years "England 3 and 4"'
        )
    for one in document.beside:
        unit.left.keep(one.where, one.text)
    words = f"{unit.fields.get('title', '')} {unit.fields.get('summary', '')}"
    fields = unit_fields_of(unit, facts(words), school_years, rights)
    notes, over = notes_written(unit.left)
    files = {"unit.md": page("unit", fields, notes)}
    kept = [Kept("unit.md", unit.left.settled(), over)]
    lefts: list[Leftover] = [unit.left]
    steps = 0
    for number, stretch in enumerate(lessons, start=1):
        lesson = lesson_found(stretch, number)
        notes, over = notes_written(lesson.left)
        file = f"lesson-{number}.md"
        files[file] = page("lesson", ordered(lesson), notes)
        kept.append(Kept(file, lesson.left.settled(), over))
        lefts.append(lesson.left)
        steps += len(lesson.steps)
    return DraftFromDocument(
        files=files,
        lessons=len(lessons),
        steps=steps,
        kept=tuple(kept),
        labels=_all(left.labels for left in lefts),
        said_anyway=_all(left.said_anyway for left in lefts),
    )


def _all(found: Iterable[set[str]]) -> tuple[str, ...]:
    return tuple(sorted({one for each in found for one in each}))
