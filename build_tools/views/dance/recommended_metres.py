"""How much floor each pupil is recommended to have, and how large halls are.

How much a class of the day has is worked out on the page, in `sums/floor-metres-each.js`.
"""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.model.unit import SchoolYears

PRIMARY, SECONDARY = 3, 5
SOURCE = "One Dance UK, as restated in print: at least 3 m² a pupil in primary, 5 m² in secondary"
HALLS = {"full": 140, "half": 70, "classroom": 54}
"""Square metres; half is half of the full hall. Those of one county's brief for a primary school
(Oxfordshire County Council, 2007), as `site_overrides/lesson/fit/space.js` says."""


def recommended_least(years: Iterable[SchoolYears]) -> int:
    """The square metres a pupil recommended for these years: 5 if any is in secondary school."""
    secondary = any(_secondary(one.nation, year) for one in years for year in one.years)
    return SECONDARY if secondary else PRIMARY


def has_room_for(metres: float, least: int) -> int:
    """How many pupils have `least` square metres each on a floor of `metres` square metres."""
    return int(metres // least)


def _secondary(nation: str, year: str) -> bool:
    if nation == "Scotland":
        return year.startswith("S")
    return year.isdigit() and int(year) >= (8 if nation == "Northern Ireland" else 7)
