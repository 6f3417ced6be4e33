"""Every school year is one that its nation has.

Teachers find a unit by their year. Year 8 in Scotland, or P3 in England, finds nobody.

Bad:
    years: [{nation: England, years: [P3]}]
Good:
    years: [{nation: Scotland, years: [P3]}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.school_years import youngest
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "CCEA, Northern Ireland Curriculum Primary, 2007; the other nations from memory"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each school year that its nation does not have."""
    for i, one in enumerate(unit.years):
        for j, year in enumerate(one.years):
            if youngest(one.nation, year) is None:
                yield Finding(
                    unit.file,
                    ("years", i, "years", j),
                    f"`years` holds {year}, but {one.nation} has no such school year",
                    "write the year as that nation names it, or name the other nation",
                )
