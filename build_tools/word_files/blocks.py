"""What stands in a word-processor file, one thing after another as it is read."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

ParagraphKind = Literal["text", "bullet", "number", "title", "subtitle"]


@dataclass(frozen=True, slots=True)
class Run:
    """Words of one look."""

    text: str
    strong: bool = False


@dataclass(frozen=True, slots=True)
class Paragraph:
    """One paragraph, or one line of a list."""

    runs: tuple[Run, ...]
    kind: ParagraphKind = "text"
    level: int = 0
    """How many lists a line of a list lies inside, from 0."""

    @property
    def text(self) -> str:
        """Its words."""
        return "".join(run.text for run in self.runs)


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading; `level` is 1 for the highest."""

    level: int
    text: str


Cell: TypeAlias = tuple[Paragraph, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """A table, whose first row heads it. `says` tells in a few words what it is."""

    rows: tuple[tuple[Cell, ...], ...]
    says: str = ""


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture as PNG or JPEG, with its text version; `data` is empty where only that is known."""

    data: bytes
    alt: str


Block: TypeAlias = Heading | Paragraph | Table | Picture


def words(text: str, kind: ParagraphKind = "text", level: int = 0) -> Paragraph:
    """A paragraph of plain words."""
    return Paragraph((Run(text),), kind, level)


def labelled(label: str, *runs: Run, kind: ParagraphKind = "text") -> Paragraph:
    """A paragraph that begins with its label, set strong and ended by a colon."""
    if not label:
        return Paragraph(runs, kind)
    end = "" if label.endswith((":", "?", "!", "…")) else ":"
    space = " " if runs else ""
    return Paragraph((Run(f"{label}{end}{space}", strong=True), *runs), kind)
