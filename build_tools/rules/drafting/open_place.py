"""A draft says what there is still to write, place by place.

A draft from `new` is complete in shape; what only its author can write is marked with a pencil, ✎,
and a hint. This is the list of those places. When the list is empty, take `draft: true` out.

Bad:
    draft: true, task: ✎ what pupils try for part A
Good:
    draft: true, task: Rock like a boat at its mooring, small at first, then big.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.still_to_write import still_to_write

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each open place of a draft."""
    if unit.draft:
        yield from still_to_write(unit, "write it in your own words, and take the mark ✎ out")
