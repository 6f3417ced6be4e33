"""A unit that is no longer a draft has nothing left to write.

Once `draft: true` is out, the unit is published as it stands, and a teacher would read a hint to
its author where the lesson should be.

Bad:
    no `draft` line, and task: ✎ what pupils try for part A
Good:
    task: Rock like a boat at its mooring, small at first, then big.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.still_to_write import still_to_write

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each open place of a unit that is no draft."""
    if not unit.draft:
        yield from still_to_write(unit, "write it, or put `draft: true` back until it is written")
