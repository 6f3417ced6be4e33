"""Where dancers face is somewhere that their formation has.

A row has no centre to face, and pupils scattered over the hall have no partner in front of them.
Where the front is in the middle, or watchers sit all round, a row may face the centre.

Bad:
    start: {formation: line, facing: centre, …}
Good:
    start: {formation: circle, facing: centre, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.watchers import watchers
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_NO_CENTRE = ("line", "file", "V")
_NO_PARTNER = ("scattered", "file", "V", "semicircle", "horseshoe", "cluster")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each start or end whose facing its formation has not got."""
    in_the_round = watchers(unit.dance) not in ("at the front", "at the tables")
    for letter, section in unit.dance.sections.items():
        for end, standing in (("start", section.start), ("end", section.end)):
            formation, facing = standing.formation, standing.facing
            middle = facing in ("centre", "outwards") and formation in _NO_CENTRE
            if not (middle and not in_the_round) and not (
                facing == "partner" and formation in _NO_PARTNER
            ):
                continue
            lacks = "a partner in front of each" if facing == "partner" else "a centre"
            yield Finding(
                unit.file,
                ("sections", letter, end, "facing"),
                f"section {letter} has `formation: {formation}` and `facing: {facing}` at its "
                f"{end}, "
                f"and {'that' if facing == 'partner' else f'a {formation}'} has not got {lacks}",
                "write another facing, or the formation that has it, such as "
                + ("pairs" if facing == "partner" else "circle"),
            )
