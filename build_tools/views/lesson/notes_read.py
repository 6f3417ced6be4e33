"""A lesson's notes, read for what each of their pieces is about.

Authors explain a move in a list, its word in bold: "- **Rock**: lean away from the sea". Such a
line belongs in the step where the move is made. After "Seated:" and "On wheels:" it may say how
one dances it who sits on a chair or uses a wheelchair; a line of its own does so too, if it says
whom it is for before its colon or stands under a heading that says it (`notes_for_whom.py`). What
several lines say of one word is said together. A paragraph belongs to the step whose word of
dance, part or motif its first sentence names. What is about no step stays at the foot.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from build_tools.views.lesson.notes_for_whom import (
    Whom,
    for_whom_heading,
    for_whom_in_head,
    said_of_whom,
    ways_said,
)
from build_tools.views.words.punctuation import capital, stopped

_EXPLAINED = re.compile(r"(?P<hyphen>[-*] )?\*\*(?P<word>[^*]+?):?\*\*(?P<text>.*)", re.DOTALL)
_AFTER_WORD = re.compile(r"\s*[:\N{EN DASH}\N{EM DASH}-]?\s*:?\s?")
_NO_EXPLANATION = re.compile(r"\s*[,;]")
"""What goes on with the sentence that the word in bold began, and explains no word."""
_HEADING = re.compile(r"^(#{1,6} .*)$", re.MULTILINE)
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
    hyphen: bool = True
    """Whether it is a line of a list."""

    @property
    def written(self) -> str:
        """The whole line as its author wrote it, in Markdown."""
        ways = (("Seated", self.seated), ("On wheels", self.wheels))
        said = [self.text, *(f"{name}: {way}" for name, way in ways if way)]
        line = f"**{self.word}**: {' '.join(stopped(part) for part in said if part)}"
        return f"- {line}" if self.hyphen else line


@dataclass(frozen=True, slots=True)
class Paragraph:
    """A paragraph of the notes, or a list or heading that explains no word, as it is written.

    What stands in it after "Seated:" and "On wheels:" is how it goes there, as in a line of a list.
    """

    text: str

    @property
    def before_ways(self) -> str:
        """What stands before them: all of it where there are none, as it is written."""
        return ways_said(self.text)[0].strip()

    @property
    def seated(self) -> str | None:
        """How it goes on a chair; None where it does not say."""
        return ways_said(self.text)[1].get("seated")

    @property
    def wheels(self) -> str | None:
        """How it goes in a wheelchair; None where it does not say."""
        return ways_said(self.text)[1].get("wheels")

    @property
    def opening(self) -> str:
        """Its first sentence in small letters; nothing of a heading or a list."""
        if self.text.startswith(("#", "-", "*", "|", ">", "1.")):
            return ""
        found = _FIRST_SENTENCE.match(self.text)
        return (found[0] if found else self.text).casefold()


@lru_cache(maxsize=256)
def notes_read(notes: str) -> tuple[Explained | Paragraph, ...]:
    """The pieces of the notes in order, each word explained once: where it first is."""
    return tuple(_headings_with_something(_together(_read(notes))))


def _read(notes: str) -> Iterator[Explained | Paragraph]:
    under: tuple[Whom, ...] = ()
    for block in re.split(r"\n\s*\n", _HEADING.sub(r"\n\1\n", notes).strip()):
        for piece in _pieces(block.strip()):
            if not piece:
                continue
            if piece.startswith("#"):
                under = for_whom_heading(piece)
            yield _explained(piece, under) or Paragraph(piece)


def _pieces(block: str) -> Iterator[str]:
    """Lines that explain words one by one, also where others stand among them; the others whole.

    One line that explains nothing must not take the rest of its list out of their steps.
    """
    held: list[str] = []
    items = re.split(r"\n(?=[-*] |[-*+•·–—]?\s?\*\*[^*]+:?\*\*)", block)
    listed = all(item.startswith(("- ", "* ", "**")) for item in items)
    for item in items:
        if (listed or item.startswith(("- ", "* "))) and _explained(item, ()):
            if held:
                yield "\n".join(held)
            held = []
            yield item
        else:
            held.append(item)
    if held:
        yield "\n".join(held)


def _explained(piece: str, under: tuple[Whom, ...]) -> Explained | None:
    """A word that is explained; `under` is for whom the heading above it says that it is."""
    found = _EXPLAINED.fullmatch(piece)
    if found is None:
        return None
    word, whom, told = for_whom_in_head(found["word"].strip(), found["text"])
    hyphen = found["hyphen"] is not None
    if whom == () and (_NO_EXPLANATION.match(told) or not (hyphen or _colon(found))):
        return None
    text, said = ways_said(" ".join(_AFTER_WORD.sub("", told, count=1).split()))
    if not any(map(str.isalnum, text)):
        # "**Tug**. Seated: …" explains nothing but how it goes sitting
        text = ""
    if ways := whom or under:
        text, said = "", said_of_whom(ways, text, said)
    text = capital(text) if hyphen else text
    return Explained(word, text, said.get("seated"), said.get("wheels"), hyphen)


def _colon(found: re.Match[str]) -> bool:
    """Whether a colon stands behind the word in bold, which without a hyphen it has to."""
    return found["text"].lstrip().startswith(":") or ":**" in found[0]


def _together(pieces: Iterator[Explained | Paragraph]) -> list[Explained | Paragraph]:
    """What several lines say of one word, said where the first of them stands."""
    found: list[Explained | Paragraph] = []
    places: dict[str, int] = {}
    for piece in pieces:
        at = None if isinstance(piece, Paragraph) else places.get(piece.word.casefold())
        if isinstance(piece, Paragraph) or at is None:
            if isinstance(piece, Explained):
                places[piece.word.casefold()] = len(found)
            found.append(piece)
            continue
        first = found[at]
        assert isinstance(first, Explained)
        found[at] = Explained(
            first.word,
            _both(first.text, piece.text) or "",
            _both(first.seated, piece.seated),
            _both(first.wheels, piece.wheels),
            first.hyphen,
        )
    return found


def _both(first: str | None, then: str | None) -> str | None:
    if not first or not then or first == then:
        return first or then
    return f"{stopped(first)} {capital(then)}"


def _headings_with_something(
    pieces: list[Explained | Paragraph],
) -> Iterator[Explained | Paragraph]:
    """The pieces without a heading that only says whom the words under it are for.

    Where all under it are ways of moves, each is told as such where its move is.
    """
    for n, piece in enumerate(pieces):
        if isinstance(piece, Paragraph) and for_whom_heading(piece.text):
            after = pieces[n + 1] if n + 1 < len(pieces) else None
            if not isinstance(after, Paragraph) or after.text.startswith("#"):
                continue
        yield piece
