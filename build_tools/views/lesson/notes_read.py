"""A lesson's notes, read for what each of their pieces is about.

Authors explain a move in a list, its word in bold: "- **Rock**: lean away from the sea". Such a
line belongs in the step where the move is made. After "Seated:" and "On wheels:" it may say how
one dances it who sits on a chair or uses a wheelchair. A paragraph belongs to the step whose word
of dance, part or motif its first sentence names. What is about no step stays at the foot.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from build_tools.views.words.punctuation import capital

_EXPLAINED = re.compile(r"[-*] \*\*(?P<word>[^*]+?)\*\*:? ?:?(?P<text>.*)", re.DOTALL)
_FOR_WHOM = re.compile(r"\s*\b(Seated|On wheels): ")
_FIRST_SENTENCE = re.compile(r".*?[.?!](?=\s|$)", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Explained:
    """A word of the notes in bold, and the text after it."""

    word: str
    text: str
    seated: str | None = None
    """How it goes on a chair; None where the notes do not say."""
    wheels: str | None = None
    """How it goes in a wheelchair, where that is another way."""


@dataclass(frozen=True, slots=True)
class Paragraph:
    """A paragraph of the notes, or a list or heading that explains no word, as it is written."""

    text: str

    @property
    def opening(self) -> str:
        """Its first sentence in small letters; nothing of a heading or a list."""
        if self.text.startswith(("#", "-", "*", "|", ">", "1.")):
            return ""
        found = _FIRST_SENTENCE.match(self.text)
        return (found[0] if found else self.text).casefold()


@lru_cache(maxsize=256)
def notes_read(notes: str) -> tuple[Explained | Paragraph, ...]:
    """The pieces of the notes in order."""
    return tuple(
        _explained(piece) or Paragraph(piece)
        for block in re.split(r"\n\s*\n", notes.strip())
        for piece in _pieces(block.strip())
        if piece
    )


def _pieces(block: str) -> Iterator[str]:
    """A list that explains words item by item, whatever else whole."""
    items = re.split(r"\n(?=[-*] )", block)
    if all(_EXPLAINED.fullmatch(item) for item in items):
        yield from items
    else:
        yield block


def _explained(piece: str) -> Explained | None:
    found = _EXPLAINED.fullmatch(piece)
    if found is None:
        return None
    text, *ways = _FOR_WHOM.split(" ".join(found["text"].split()))
    said = dict(zip(ways[::2], ways[1::2], strict=True))
    word = found["word"].strip().rstrip(":")
    return Explained(word, capital(text), said.get("Seated"), said.get("On wheels"))
