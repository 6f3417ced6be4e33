"""What of a page's text its author wrote: runs of words that stand in the files of the unit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass, replace
from pathlib import Path
from typing import Any

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.shapes.schemas import schema
from build_tools.views.lesson.notes_read import Explained, notes_read

_WORD = re.compile(r"[^\W_]+")
_ADDRESS = re.compile(r"\b\S+[.](?:org|uk)/\S+")
_LEAST = 3
"""So many words in a row, as somewhere in the files, are the author's; fewer where the whole field
is no longer."""
_SCHEMAS = ("shared", "unit", "lesson", "words")


def words_of(text: str) -> tuple[str, ...]:
    """The words of a text, small, without what is between them; addresses are no words."""
    return tuple(word.casefold() for word in _WORD.findall(_ADDRESS.sub(" ", text)))


class Written:
    """All that a unit and its bank say, to be taken away from a page."""

    def __init__(self, bank: Bank, unit: Unit) -> None:
        listed = {words_of(word) for word in listed_words()}
        texts = {words_of(text) for text in _texts(unit)}
        self._whole = {one for one in texts if one and one not in listed}
        self._whole |= {words_of(move) for move in _moves(unit)} - {()}
        bank_alone = replace(bank, units=())
        shared = {words_of(text) for text in _texts(bank_alone)}
        self._whole |= {words_of(bank.name)}
        self._runs: set[tuple[str, ...]] = set()
        for text in texts | shared:
            self._runs |= {text[n : n + _LEAST] for n in range(len(text) - _LEAST + 1)}
        self._longest = max(map(len, self._whole))

    def left_of(self, text: str) -> str:
        """The words of `text` that the author did not write, with … for the others."""
        words = words_of(text)
        own = [False] * len(words)
        for n in range(len(words)):
            if words[n : n + _LEAST] in self._runs:
                own[n : n + _LEAST] = [True] * _LEAST
            for size in range(1, min(_LEAST, len(words) - n) + 1):
                if words[n : n + size] in self._whole:
                    own[n : n + size] = [True] * size
        kept = [word if not mine else "…" for word, mine in zip(words, own, strict=True)]
        if not any(_says(word) for word in kept):
            return ""
        once = [word for n, word in enumerate(kept) if word != "…" or n == 0 or kept[n - 1] != "…"]
        return " ".join(once)


def _moves(unit: Unit) -> Iterator[str]:
    """What the class calls the moves, what is said on counts and what notes explain in bold: an
    author's own words, even where a schema lists them too.
    """
    dance = unit.dance
    for motif in dance.motifs.values():
        yield from (action.word or "" for action in motif.actions)
    heard = [one.heard for one in dance.sections.values()]
    heard += [one.heard for one in dance.transitions]
    yield from (word for pieces in heard for piece in pieces for word in piece.says)
    for lesson in unit.lessons:
        notes = notes_read(lesson.notes)
        yield from (piece.word for piece in notes if isinstance(piece, Explained))


def _says(word: str) -> bool:
    """Whether it is a word in a language: letters, and more than the letter of a section."""
    return len(word) > 1 and any(sign.isalpha() for sign in word)


def _texts(part: object) -> Iterator[str]:
    if isinstance(part, str):
        yield part
        yield from re.split(r"(?<=[.?!:;])\s+|\n+", part)
    elif isinstance(part, Mapping):
        for name, inside in part.items():
            yield from _texts(name)
            yield from _texts(inside)
    elif isinstance(part, Iterable) and not isinstance(part, bytes):
        for inside in part:
            yield from _texts(inside)
    elif is_dataclass(part) and not isinstance(part, type):
        for one in fields(part):
            if one.name != "language":
                yield from _texts(getattr(part, one.name))
    elif isinstance(part, Path):
        return


def listed_words() -> Iterator[str]:
    """The words that the schemas list, which are the format's and no author's."""

    def look(part: Any) -> Iterator[str]:
        if isinstance(part, dict):
            yield from (word for word in part.get("enum", ()) if isinstance(word, str))
            for inside in part.values():
                yield from look(inside)
        elif isinstance(part, Sequence) and not isinstance(part, str):
            for inside in part:
                yield from look(inside)

    for name in _SCHEMAS:
        yield from look(schema(name))
