"""The day of issue, and each day on which a unit was read, is a day of the calendar.

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
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "ISO 8601-1: calendar dates, from memory"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each day that does not exist."""
    days: list[tuple[FieldPath, str]] = [(("issued",), unit.issued)]
    days += [(("read_by", n, "day"), one.day) for n, one in enumerate(unit.read_by)]
    for path, day in days:
        try:
            date.fromisoformat(day)
        except ValueError:
            yield Finding(
                unit.file,
                path,
                f"`{path[-1]}` is {day}, and that month has no such day",
                "write the day as year-month-day, such as 2026-11-20",
            )
