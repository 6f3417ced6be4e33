"""The day of issue is a day of the calendar.

A day that never comes is a slip of the keyboard, and nobody can tell which day was meant.

Bad:
    issued: 2026-02-30
Good:
    issued: 2026-02-28
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "ISO 8601-1: calendar dates, from memory"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if the day of issue does not exist."""
    try:
        date.fromisoformat(unit.issued)
    except ValueError:
        yield Finding(
            unit.file,
            ("issued",),
            f"`issued` is {unit.issued}, and that month has no such day",
            "write the day as year-month-day, such as 2026-11-20",
        )
