"""A dance lesson is danced and talked about; what is to be written is written in the classroom.

Half a page takes young pupils a whole lesson, on a floor, without a table. Telling a partner one
thing takes a minute, and every pupil does it.

Bad:
    task: Write half a page on what you saw, with reasons.
Good:
    task: Tell your partner one thing you saw. Then share with the class.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.writing import WRITING

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"into", "say", "task", "harder"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step in which pupils write."""
    yield from said_in_fields(
        unit,
        WRITING,
        _KINDS,
        "has pupils write",
        "let them tell a partner, point or show it; keep writing for the classroom",
    )
