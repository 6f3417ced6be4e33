"""A pupil who cannot do a move, or is one over, dances it another way, and is not sent to watch.

Whoever sits out for a wheelchair, a plaster or for being last in the row learns that the dance is
for the others. Nearly every move has another form: from a chair, with the head, in a three.

Bad:
    easier: Anyone who cannot spin watches that part.
Good:
    easier: Turn only the head for the spin.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.sitting_out import LEFT_WITHOUT, SENT_TO_WATCH

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset(
    {
        "say",
        "task",
        "you",
        "into",
        "easier",
        "partners",
        "room",
        "things",
        "cue",
        "notes",
        "safety",
        "stuck",
        "classroom_first",
    }
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that sends somebody to watch."""
    yield from said_in_fields(
        unit,
        SENT_TO_WATCH,
        _KINDS,
        "sends a pupil to watch",
        "write another form of it, or a part for one over: from a chair, or as a three",
        LEFT_WITHOUT,
    )
