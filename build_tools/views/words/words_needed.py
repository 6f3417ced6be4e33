"""The words a lesson needs, each with its plain meaning."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.bank import Word
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit


@dataclass(frozen=True, slots=True)
class Meaning:
    """A word and what it means."""

    word: str
    plain: str


def words_needed(unit: Unit, lesson: Lesson, vocabulary: Mapping[str, Word]) -> tuple[Meaning, ...]:
    """The lesson's own words, then those its steps teach as the unit or the bank explains them."""
    found = dict(lesson.words)
    known = {word.casefold() for word in found}
    for taught in dict.fromkeys(word for step in lesson.steps for word in step.teaches):
        plain = _explained(taught, unit, vocabulary)
        if plain is not None and taught.casefold() not in known:
            found[taught] = plain
    return tuple(Meaning(word, plain) for word, plain in found.items())


def _explained(word: str, unit: Unit, vocabulary: Mapping[str, Word]) -> str | None:
    own = {name.casefold(): plain for name, plain in unit.words.items()}
    shared = {name.casefold(): entry.plain for name, entry in vocabulary.items()}
    return own.get(word.casefold(), shared.get(word.casefold()))
