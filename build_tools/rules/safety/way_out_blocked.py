"""The way out stays free, and nothing is stacked higher than it stands safely.

Chairs before the door are in the way of thirty pupils who have to leave, and a stack as high as
they can reach comes down on whoever pulls at it. Adults move what is heavy, to one corner.

Bad:
    notes: Pupils stack the chairs in front of the door.
Good:
    notes: Adults stack the chairs in one corner, four high at most, away from the door.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.furniture import IN_THE_WAY_OUT
from build_tools.views.written.unit_text import DOING

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "The Regulatory Reform (Fire Safety) Order 2005, article 14: routes to emergency exits are "
    "kept clear at all times; of stacks: common practice, no source"
)
_KINDS = DOING | {
    "safety", "notes", "classroom_first", "room", "things", "classroom", "half_hall", "hall",
    "where", "show", "without_props", "sound_fails",
}  # fmt: skip


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that puts things in the way out, or stacks them high."""
    yield from said_in_fields(
        unit,
        IN_THE_WAY_OUT,
        _KINDS,
        "puts things in the way out, or higher than they stand",
        "say a corner away from every door, and how high at most",
    )
