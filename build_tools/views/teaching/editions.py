"""How old the editions of a bank's units are, on the bank's own day."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from build_tools.views.teaching.covers import Covers
from build_tools.views.words.time_since import whole_months

BANDS = (
    (6, "less than 6 months"),
    (12, "6 months to 1 year"),
    (24, "1 to 2 years"),
    (36, "2 to 3 years"),
    (60, "3 to 5 years"),
)
"""Up to how many whole months each band goes, and its name."""
OLDER = "5 years or more"
UNDATED = "no day that the calendar has, or one after the bank’s own day"


@dataclass(frozen=True, slots=True)
class Band:
    """Editions of about one age, the oldest first."""

    name: str
    units: tuple[Covers, ...]


def bands(units: Sequence[Covers], as_of: str) -> tuple[Band, ...]:
    """The editions of `units` by age, the oldest band first; bands without any are left out."""
    found: dict[str, list[Covers]] = defaultdict(list)
    for unit in sorted(units, key=lambda one: (one.issued, one.slug)):
        found[_band(unit.issued, as_of)].append(unit)
    names = (OLDER, *(name for _, name in reversed(BANDS)), UNDATED)
    return tuple(Band(name, tuple(found[name])) for name in names if found[name])


def _band(issued: str, as_of: str) -> str:
    try:
        then, now = date.fromisoformat(issued), date.fromisoformat(as_of)
    except ValueError:
        return UNDATED
    if then > now:
        return UNDATED
    months = whole_months(then, now)
    return next((name for upto, name in BANDS if months < upto), OLDER)
