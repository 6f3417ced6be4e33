"""What the bank says when something needs mending."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

Grade = Literal["error", "question", "note"]
GRADES: tuple[Grade, ...] = ("error", "question", "note")

FieldPath: TypeAlias = tuple[str | int, ...]
"""A place inside a document, from the outside in: ("steps", 2, "minutes")."""


@dataclass(frozen=True, slots=True, order=True)
class Problem:
    """One thing to mend, signed with its rule and its place.

    `file` is relative to the checked folder, with `/`; `line` and `column` count from 1.
    `message` says what is wrong and shows the arithmetic; `help` says how to mend it.
    """

    file: str
    line: int
    column: int
    rule: str
    severity: Grade
    message: str
    help: str


@dataclass(frozen=True, slots=True)
class Fault:
    """A problem found while reading one text, before it has a file: line and column from 1."""

    rule: str
    line: int
    column: int
    message: str
    help: str

    def at(self, file: str) -> Problem:
        """The same fault as a problem of `file`. Faults of reading are always errors."""
        return Problem(file, self.line, self.column, self.rule, "error", self.message, self.help)
