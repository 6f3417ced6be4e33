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
from build_tools.sentences.ranking import WRITING
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"into", "say", "task", "harder"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step in which pupils write."""
    for found in unit_text(unit).saying(WRITING, _KINDS, meant=True):
        yield Finding(
            found.file,
            found.path,
            f'`{found.field.kind}` has pupils write ("{found.said.text}")',
            "let them tell a partner, point or show it; keep writing for the classroom",
        )
