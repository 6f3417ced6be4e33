"""A rule that only asks whether some fields say one thing, and tells it where they do."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from build_tools.model.unit import Unit
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.written.unit_text import unit_text


def said_in_fields(
    unit: Unit, saying: Saying, kinds: Collection[str], what: str, help_: str
) -> Iterator[Finding]:
    """A finding for each field of `kinds` that says it and means it: which, `what`, the words."""
    for found in unit_text(unit).saying(saying, kinds):
        message = f'`{found.field.kind}` {what} ("{found.said.text}")'
        yield Finding(found.file, found.path, message, help_)
