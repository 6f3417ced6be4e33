"""From the bank's own documents and its units to the bank."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from build_tools.model.bank import Bank, Topic, Word
from build_tools.model.unit import Unit
from build_tools.source.document import Document


def build_bank(documents: Mapping[str, Document], units: Sequence[Unit]) -> Bank:
    """The bank, from its sound documents by file name."""
    bank = documents["bank.yml"].data
    topics = documents["vocabulary/topics.yml"].data
    words = documents["vocabulary/words.yml"].data
    safety = documents["safety.md"]
    return Bank(
        name=bank["name"],
        as_of=bank["as_of"],
        about=bank["about"],
        grades=dict(bank.get("grades", {})),
        topics={name: Topic(name, tuple(t["also"])) for name, t in topics.items()},
        words={w: Word(w, t["plain"], t.get("in_class"), t.get("under")) for w, t in words.items()},
        safety_title=safety.data["title"],
        safety_notes=safety.body,
        units=tuple(units),
    )
