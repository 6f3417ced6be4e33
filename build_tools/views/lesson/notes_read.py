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

    @property
    def written(self) -> str:
        """The whole line as its author wrote it, in Markdown."""
        ways = (("Seated", self.seated), ("On wheels", self.wheels))
        said = [self.text, *(f"{name}: {way}" for name, way in ways if way)]
        return f"- **{self.word}**: {' '.join(part for part in said if part)}"


@dataclass(frozen=True, slots=True)
class Paragraph:
    """A paragraph of the notes, or a list or heading that explains no word, as it is written.

    What stands in it after "Seated:" and "On wheels:" is how it goes there, as in a line of a list.
    """

    text: str

    @property
    def before_ways(self) -> str:
        """What stands before them: all of it where there are none."""
        return _FOR_WHOM.split(self.text, maxsplit=1)[0].strip()

    @property
    def seated(self) -> str | None:
        """How it goes on a chair; None where it does not say."""
        return _ways(self.text)[1].get("Seated")

    @property
    def wheels(self) -> str | None:
        """How it goes in a wheelchair; None where it does not say."""
        return _ways(self.text)[1].get("On wheels")

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
    text, said = _ways(found["text"])
    word = found["word"].strip().rstrip(":")
    return Explained(word, capital(text), said.get("Seated"), said.get("On wheels"))


def _ways(text: str) -> tuple[str, dict[str, str]]:
    """What a text says for everybody, and what it says after each name of `_FOR_WHOM`."""
    told, *ways = _FOR_WHOM.split(" ".join(text.split()))
    said: dict[str, str] = {}
    for whom, way in zip(ways[::2], ways[1::2], strict=True):
        said[whom] = f"{said[whom]} {way}" if whom in said else way
    return told, said
