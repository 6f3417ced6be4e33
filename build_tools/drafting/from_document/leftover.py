"""What of a file is in no field: every piece with where it stood; and what makes a text fit."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from build_tools.views.words.open_places import MARK
from build_tools.word_files.blocks import Paragraph

MOST_LINE = 400
"""Letters of a line, as `schema/shared.schema.json` has it."""
A_HEADING = "a heading"
_TAG = re.compile(r"<(?=[A-Za-z/!?])")
"""What a reader of units takes for raw HTML; with a space it is a sign like any other."""


@dataclass(frozen=True, slots=True)
class Piece:
    """Words that are in no field, and where in the file they stood."""

    where: str
    text: str


@dataclass(slots=True)
class Leftover:
    """What one lesson or the unit cannot place, what is open besides, and what was understood."""

    pieces: list[Piece] = field(default_factory=list)
    notes: list[Paragraph] = field(default_factory=list)
    """What its author wrote as notes."""
    open: list[str] = field(default_factory=list)
    """What is still to be said of a field that cannot stay empty, each as a sentence."""
    labels: set[str] = field(default_factory=set)
    """Words that named a field or one of its choices, and stand in the draft as that."""
    said_anyway: set[str] = field(default_factory=set)
    """Sentences that every page says by itself."""

    def keep(self, where: str, text: str) -> None:
        """Keep words that are in no field."""
        if text.strip():
            self.pieces.append(Piece(where, clean(text)))

    def keep_heading(self, text: str) -> None:
        """Keep a heading that is no field's; where lines under it are kept, they name it."""
        self.keep(A_HEADING, text)

    def settled(self) -> tuple[Piece, ...]:
        """Every piece that is in no field, a heading only where no line kept under it names it."""
        named = {piece.where for piece in self.pieces}
        return tuple(
            piece
            for piece in self.pieces
            if piece.where != A_HEADING or not any(_names(where, piece.text) for where in named)
        )

    def still(self, what: str) -> None:
        """Note what the author has still to say."""
        self.open.append(f"{MARK} {what}")


def under(heading: str) -> str:
    """The place under a heading, in words."""
    return f"under “{heading}”"


def _names(where: str, heading: str) -> bool:
    return where.startswith(under(heading))


def clean(text: str) -> str:
    """The words as they may stand in a unit."""
    return " ".join(_TAG.sub("< ", text).split())


def fitted(text: str, least: int, most: int) -> tuple[str | None, str]:
    """As much of the words as a field takes, and the rest; None where it takes none of them.

    A text is parted behind a sentence, else between two words.
    """
    words = clean(text)
    if len(words) < least:
        return None, words
    if len(words) <= most:
        return words, ""
    ends = [found.end() for found in re.finditer(r"[.!?…”](?= )", words[: most + 1])]
    at = ends[-1] if ends and ends[-1] >= least else words.rfind(" ", 0, most + 1)
    if at < least:
        return None, words
    return words[:at].strip(), words[at:].strip()


def put(
    fields: dict[str, object],
    name: str,
    text: str,
    where: str,
    left: Leftover,
    *,
    most: int = MOST_LINE,
    least: int = 1,
) -> None:
    """Write the words into a field that is still empty; what it does not take is kept."""
    if name in fields:
        left.keep(where, text)
        return
    kept, rest = fitted(text, least, most)
    if kept is not None:
        fields[name] = kept
    left.keep(where if kept is None else f"{where}, after what is written", rest)


def put_in_list(
    fields: dict[str, object], name: str, text: str, where: str, left: Leftover, most: int
) -> None:
    """Add the words to a list that takes so many lines; what it does not take is kept."""
    found = fields.get(name, [])
    assert isinstance(found, list)
    if len(found) == most:
        left.keep(where, text)
        return
    kept, rest = fitted(text, 1, MOST_LINE)
    if kept is not None:
        fields[name] = [*found, kept]
    left.keep(f"{where}, after what is written", rest)
