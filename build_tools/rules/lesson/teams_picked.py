"""Groups come about by where pupils stand, and not by whom they like or who is picked.

Where captains pick, somebody is picked last; where friends come first, somebody is left. The
nearest pair, a number or a card does it in seconds and leaves nobody standing.

Bad:
    into: Choose your best friend.
Good:
    into: Turn to the nearest person. One over makes a three.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.picking_people import ANYBODY_GOES, TEAMS_PICKED

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"into", "say", "task", "you", "partners", "notes"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line by which pupils pick their friends or their teams."""
    yield from said_in_fields(
        unit,
        TEAMS_PICKED,
        _KINDS,
        "lets pupils pick those they like, or be picked",
        "say who with whom by place or number, such as: the two nearest pairs make a four",
        ANYBODY_GOES,
    )
