"""A unit builds on units for the same school years or earlier ones.

What pupils will do next year cannot be what this year's dance stands on.

Bad:
    in boats: years: [{nation: England, years: [1, 2]}], builds_on: {units: [rivers], …}
    in rivers: years: [{nation: England, years: [5, 6]}]
Good:
    in boats: years: [{nation: England, years: [5, 6]}], builds_on: {units: [rivers], …}
    in rivers: years: [{nation: England, years: [1, 2]}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.bank import BankOutline, UnitOutline
from build_tools.model.school_years import ages
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding where all of an earlier unit's years come after, or a later one's before."""
    by_slug = {unit.slug: unit for unit in bank.units}
    for unit in bank.units:
        for n, name in enumerate(unit.builds_on.units):
            other = by_slug.get(name)
            if other and _all_after(other, unit):
                yield Finding(
                    unit.file,
                    ("builds_on", "units", n),
                    f"this unit is for ages {_ages(unit)}, but it builds on `{name}`, which is "
                    f"for ages {_ages(other)}",
                    f"name `{name}` under `leads_to`, or look at the years of both",
                )
        for n, name in enumerate(unit.leads_to.units):
            other = by_slug.get(name)
            if other and _all_after(unit, other):
                yield Finding(
                    unit.file,
                    ("leads_to", "units", n),
                    f"this unit is for ages {_ages(unit)}, but it leads to `{name}`, which is for "
                    f"ages {_ages(other)}",
                    f"name `{name}` under `builds_on`, or look at the years of both",
                )


def _all_after(later: UnitOutline, earlier: UnitOutline) -> bool:
    one, other = ages(later.years), ages(earlier.years)
    return one is not None and other is not None and one[0] >= other[1]


def _ages(unit: UnitOutline) -> str:
    low, high = ages(unit.years) or (0, 0)
    return f"{low} to {high}"
