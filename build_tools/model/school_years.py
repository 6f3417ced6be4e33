"""School years and the ages of pupils in them, by nation.

Sources: CCEA, NI Curriculum Primary, 2007 (Northern Ireland); the rest from memory.
"""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.model.unit import SchoolYears


def youngest(nation: str, year: str) -> int | None:
    """The age, in years, at which pupils start the school year; None if there is none."""
    if nation == "Scotland":
        if year[:1] not in "PS" or not year[1:].isdigit():
            return None
        return int(year[1:]) + (4 if year[0] == "P" else 11)
    if year == "R":
        return 4 if nation in ("England", "Wales") else None
    if not year.isdigit():
        return None
    first = 4 if nation == "Northern Ireland" else 5
    last = 10 if nation == "Northern Ireland" else 9
    return first + int(year) - 1 if int(year) <= last else None


def ages(years: Iterable[SchoolYears]) -> tuple[int, int] | None:
    """The youngest and the oldest age in all `years`; None if no year is known."""
    known = [
        age for one in years for y in one.years if (age := youngest(one.nation, y)) is not None
    ]
    return (min(known), max(known) + 1) if known else None


def in_words(years: SchoolYears) -> str:
    """School years as a teacher says them: Years 3 and 4 (England)."""
    names = [_year_in_words(y) for y in years.years]
    numbers = [n.removeprefix("Year ") for n in names]
    if len(names) > 1 and all(n.startswith("Year ") for n in names):
        return f"Years {', '.join(numbers[:-1])} and {numbers[-1]} ({years.nation})"
    text = ", ".join(names[:-1]) + (" and " if len(names) > 1 else "") + names[-1]
    return f"{text} ({years.nation})"


def _year_in_words(year: str) -> str:
    if year == "R":
        return "Reception"
    return year if year[0] in "PS" else f"Year {year}"
