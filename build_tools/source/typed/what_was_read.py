"""What was read of typed fields: the data, where each field stands, remarks, guesses and faults."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from build_tools.problem import Fault, FieldPath

READ_AS = "read-as"
"""The rule that notes are signed with: how something was read that YAML reads otherwise."""


@dataclass(frozen=True, slots=True)
class Guess:
    """Something read as what it plainly is, at a line and column of the file."""

    line: int
    column: int
    message: str
    path: FieldPath = ()


@dataclass(slots=True)
class Reading:
    """What is known of a text while it is read, and afterwards."""

    data: Any = None
    places: dict[FieldPath, tuple[int, int]] = field(default_factory=dict)
    before: dict[FieldPath, list[str]] = field(default_factory=dict)
    """The remarks and empty lines above a field; those at the very end are above nothing: ()."""
    beside: dict[FieldPath, str] = field(default_factory=dict)
    """The remark at the end of a field's line, with its number sign."""
    texts: dict[FieldPath, tuple[int, int, int]] = field(default_factory=dict)
    """Where a text starts, line and letters before it, and the line where it ends."""
    aside: list[Any] = field(default_factory=list)
    """What stands in fields that were written before; a fault tells of each."""
    guesses: list[Guess] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    def guess(self, line: int, column: int, message: str, path: FieldPath = ()) -> None:
        """Note how something was read."""
        self.guesses.append(Guess(line, column, message, path))

    def fault(self, rule: str, line: int, column: int, message: str, help_: str) -> None:
        """Note what cannot be read."""
        self.faults.append(Fault(rule, line, column, message, help_))


def shown(text: str) -> str:
    """A text cut to a length that a line can hold."""
    text = " ".join(text.split())
    return text if len(text) <= 40 else text[:39] + "…"
