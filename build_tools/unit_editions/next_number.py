"""Whether a unit that is to be published carries the edition number that its changes call for."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.comparison import Comparison, compared
from build_tools.comparing.edition_number import newer
from build_tools.source.folder import read_unit_folder
from build_tools.unit_editions.earlier_editions import since_last_edition
from build_tools.unit_editions.kept_with_pages import readers_have

MOST_SAID = 6
"""Changes said of one unit: the weightiest, which call for the number."""


@dataclass(frozen=True, slots=True)
class WrongNumber:
    """A unit whose number is not the one that its changes since the edition `before` call for."""

    slug: str
    line: int
    """Of the edition in its unit.md, from 1."""
    where: str
    """Where that edition is, in words."""
    comparison: Comparison

    def said(self) -> str:
        """What is wrong, with the numbers."""
        one = self.comparison
        if one.called_for == one.before:
            return f"{self.where} edition {one.before}; the unit says {one.after}, which is older"
        return (
            f"{self.where} edition {one.before}, and what changed since calls for edition "
            f"{one.called_for}; the unit says {one.after}"
        )

    def changes(self) -> list[str]:
        """What changed, the weightiest first, a line each."""
        lines = [line for _, lines in self.comparison.under_headings() for line in lines]
        left = len(lines) - MOST_SAID
        return lines if left < 2 else [*lines[:MOST_SAID], f"and {left} more changes"]

    def help(self) -> str:
        """How to mend it."""
        return f"write `edition: {self.comparison.called_for}`, and the day of issue in `issued`"


def wrong_number(
    content: Path, slug: str, unit: WrittenUnit, target: Path | None
) -> WrongNumber | None:
    """What is wrong with the number of the `unit`, whose folder is `slug`; None where nothing is.

    It is compared with the edition that readers of the folder `target` have; where that does not
    tell, with the last that is kept in the bank.
    """
    before = readers_have(target, slug) if target else None
    if before is not None and _publisher(before) == _publisher(unit):
        where, found = "readers have", compared(before, unit)
    else:
        since = since_last_edition(content, slug)
        if since.comparison is None:
            return None
        where, found = f"{since.place} is", since.comparison
    # an edition that is newer than is called for is its author's own choice
    right = found.after == found.called_for or newer(found.after, found.called_for)
    return None if right else WrongNumber(slug, _line(content, slug), where, found)


def _publisher(unit: WrittenUnit) -> object:
    return unit.fields.get("publisher")


def _line(content: Path, slug: str) -> int:
    read = read_unit_folder(content, slug).unit
    return read.locate(("edition",))[0] if read is not None else 1
