"""Pupils are not asked before the class about their families, their money or their troubles.

Somebody in the class lost a home, a parent or a job in the family, and a question to all leaves
them to lie or to tell it. Ask about the people of the story, and let the class speak of them.

Bad:
    classroom_first: [Read the storm lines. Ask who has been in a flood.]
Good:
    classroom_first: [Read the storm lines. Ask what the people in it did.]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.own_lives import NOT_LIKED, OWN_LIFE

GRADE: Grade = "question"
READS = "en"
SOURCE = "UK General Data Protection Regulation, article 5(1)(c): data minimisation"
_KINDS = frozenset(
    {
        "classroom_first",
        "say",
        "task",
        "you",
        "question",
        "notes",
        "content_note",
        "show",
        "look_for",
        "into",
    }
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that asks pupils about their own lives."""
    yield from said_in_fields(
        unit,
        OWN_LIFE,
        _KINDS,
        "asks pupils about their own lives",
        "ask about the people in the story or the picture instead",
        NOT_LIKED,
    )
