"""Two editions of a unit side by side: what changed, and which number that calls for."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.comparing.change import Change, Weight, WrittenUnit
from build_tools.comparing.compare import compare
from build_tools.comparing.edition_number import called_for, newer

HEADINGS = {
    Weight.DANCE: "What pupils make or dance, and what you may do with the unit",
    Weight.TEACHING: "How lessons run",
    Weight.WORDING: "Words",
    Weight.RECORD: "Who read it, which calls for no other edition",
}
"""What changes of each weight stand under, the weightiest first."""


@dataclass(frozen=True, slots=True)
class Comparison:
    """The changes between edition `before` and edition `after`, and the number they call for."""

    before: str
    after: str
    changes: tuple[Change, ...]
    called_for: str

    def under_headings(self) -> list[tuple[str, list[str]]]:
        """Each heading that has changes, with their sentences."""
        found = (
            (heading, [change.sentence for change in self.changes if change.weight == weight])
            for weight, heading in HEADINGS.items()
        )
        return [(heading, lines) for heading, lines in found if lines]

    def verdict(self) -> str:
        """Whether the number of the later edition is the one called for, in a few words."""
        if self.called_for == self.before:
            same = self.before == self.after
            return f"both are edition {self.after}" if same else self._without_need()
        if self.after == self.called_for or newer(self.after, self.called_for):
            return f"from edition {self.before} to {self.after}, as these changes call for"
        return f"these changes call for edition {self.called_for}; the unit says {self.after}"

    def _without_need(self) -> str:
        return f"nothing calls for another edition than {self.before}; the unit says {self.after}"


@dataclass(frozen=True, slots=True)
class SinceLast:
    """What is known of the edition before a unit's own."""

    place: str | None
    """Where that edition is kept, below the content folder; None where none is."""
    comparison: Comparison | None
    """The two side by side."""
    unreadable: tuple[str, ...]
    """What is kept under the unit's name and cannot be read, each with the reason."""


def compared(old: WrittenUnit, new: WrittenUnit) -> Comparison:
    """The editions `old` and `new` side by side."""
    changes = compare(old, new)
    before, after = str(old.fields["edition"]), str(new.fields["edition"])
    return Comparison(before, after, changes, called_for(before, changes))
