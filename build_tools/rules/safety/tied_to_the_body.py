"""Nothing is wound or tied round a finger, a hand, a wrist or a neck.

A scarf wound round the hand cannot slip free when one of two falls, and a thread round a finger
cuts. Held by its end, or pinched between finger and thumb, it can be let go.

Bad:
    task: Wind the scarf twice round your hand.
Good:
    task: Hold the end of the scarf in your hand, so that it can slip.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.tied import TIED
from build_tools.views.written.unit_text import DOING

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = DOING | {
    "easier", "safety", "notes", "show", "what", "how", "rules", "start", "place", "things",
    "classroom_first", "catch_up", "without_props", "wear", "partners", "content_note",
}  # fmt: skip


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that has something wound round a part of the body."""
    yield from said_in_fields(
        unit,
        TIED,
        _KINDS,
        "has something wound or tied round a part of the body",
        "let it be held by its end, so that it slips free",
    )
