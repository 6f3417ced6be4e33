"""An easier task asks for less than the task, and not for more.

A hop on one leg in place of a jump, twice as fast, or with eyes shut: a pupil who needs the easier
way is given one that fewer can do, and lands on one foot.

Bad:
    easier: Hop it on one foot, twice.
Good:
    easier: Step it in place of jumping.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.help_taken import ASKS_FOR_MORE

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `easier` that asks for more."""
    yield from said_in_fields(
        unit,
        ASKS_FOR_MORE,
        frozenset({"easier"}),
        "asks for more than the task",
        "ask for less: slower, lower, fewer, on two feet, with a card or a partner",
    )
