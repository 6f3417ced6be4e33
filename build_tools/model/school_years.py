"""School years and the ages of pupils in them, by nation.

Sources: CCEA, NI Curriculum Primary, 2007 (Northern Ireland); the rest from memory.
"""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.model.unit import SchoolYears
from build_tools.page_words.forms import row
from build_tools.page_words.words import _, of_schema


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
    named = [y == "R" or y[0] in "PS" for y in years.years]
    nation = of_schema(years.nation)
    if len(named) > 1 and not any(named):
        return _("Years {years} ({nation})", years=row(years.years), nation=nation)
    return f"{row([_year_in_words(y) for y in years.years])} ({nation})"


def _year_in_words(year: str) -> str:
    if year == "R":
        return _("Reception")
    return year if year[0] in "PS" else _("Year {year}", year=year)
