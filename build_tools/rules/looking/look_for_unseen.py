"""What to look for can be seen and pointed to.

Nobody can see whether a row enjoys it, does its best or has energy; two watchers will not agree,
and the dancers cannot mend it. Still feet, a late start, the end of a line can be seen by all.

Bad:
    looking_for: everyone enjoying it and doing their best
Good:
    looking_for: strong water and still anemones at the same time
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.unseen import UNSEEN

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"looking_for", "look_for"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each thing to look for that nobody can see."""
    yield from said_in_fields(
        unit,
        UNSEEN,
        _KINDS,
        "has what nobody can see and point to",
        "name one thing that can be seen, such as: starts on count 1, or all still at the end",
    )
