"""A unit was read at the edition that it is, or at one before it.

A reading of an edition that is still to come was copied from another unit, or the unit's own
number was forgotten; either way nobody can tell what was read.

Bad:
    edition: 2.1.0
    read_by:
      - {role: Dance adviser, edition: 3.0.0, day: 2026-11-20, for: [truth]}
Good:
    edition: 2.1.0
    read_by:
      - {role: Dance adviser, edition: 2.1.0, day: 2026-11-20, for: [truth]}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each reading of an edition after the unit's own."""
    for n, reading in enumerate(unit.read_by):
        if _order(reading.edition) > _order(unit.edition):
            yield Finding(
                unit.file,
                ("read_by", n, "edition"),
                f"the unit was read at edition {reading.edition}, and it is edition {unit.edition}",
                "write the edition that was read, or bring the unit's own up to date",
            )


def _order(edition: str) -> list[int]:
    return [int(number) for number in edition.split(".")]
