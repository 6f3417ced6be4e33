"""Each picture, sound or poem of the stimulus comes with its file or with its words.

A title alone sends a teacher searching the evening before. A file, or what it shows in words, lets
the lesson go on without it.

Bad:
    items: [{title: Low tide, by: A painter, licence: CC0-1.0, source: A postcard}]
Good:
    items: [{title: Low tide, by: …, licence: …, source: …, text_version: A bowl of still water.}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each item that is only named."""
    for n, item in enumerate(unit.stimulus.items):
        if item.file is None and item.text_version is None:
            yield Finding(
                unit.file,
                ("stimulus", "items", n),
                f"`{item.title}` is only named: neither its file nor what is in it, in words, "
                "comes with the unit",
                "add `text_version`: what it shows or says, in a few sentences",
            )
