"""A unit's edition was issued on a day that has been, as the bank counts days.

Teachers see by the day of issue whether they have the newest edition. A day after the bank's own
`as_of` has not come yet, and every later edition will look older than this one.

Bad:
    in bank.yml: as_of: 2026-11-29
    in the unit: issued: 2027-02-28
Good:
    in bank.yml: as_of: 2026-11-29
    in the unit: issued: 2026-11-29
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.bank import BankOutline
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each unit issued after the bank's day; drafts are not issued yet."""
    for unit in bank.units:
        # written year-month-day, days sort as texts
        if not unit.draft and unit.issued > bank.as_of:
            yield Finding(
                unit.file,
                ("issued",),
                f"`issued` is {unit.issued}, but the bank's own day, `as_of` in bank.yml, is "
                f"{bank.as_of}",
                "write the day on which this edition was issued, or bring `as_of` up to date",
            )
