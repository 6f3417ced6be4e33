"""The unit says how much floor each pupil needs, and it is enough for a class to travel.

"A clear hall" tells a teacher nothing about a small one. With a figure, the teacher knows before
the lesson whether to dance the class in halves.

Bad:
    hall: A clear hall
Good:
    hall: A clear hall, about 3 square metres for each pupil
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = (
    "One Dance UK, as used in afPE's Safe Practice in Physical Education: at least 3 square metres "
    "for each primary pupil and 5 for each secondary pupil in dance"
)
NEEDS = ("year-unknown-in-nation",)
PRIMARY, SECONDARY = 3, 5
SECONDARY_AGE = 11
A_CLASS = 30
"""Pupils in a class where nothing else is said; common practice, no source."""

_FIGURE = re.compile(
    r"(\d+)(?:\.\d+)?\s*(?:square\s+metres|sq\.?\s*m|m2|m²)"
    r"(\W+(?:for\s+)?(?:each|a|per|every)\s+(?:pupil|child|dancer))?",
    re.IGNORECASE,
)
_SIDES = re.compile(r"(\d+)\s*(?:m|metres?)?\s*(?:by|x|×)\s*(\d+)", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where `space` gives no figure for the hall, or too small a one."""
    known = ages(unit.years)
    least = SECONDARY if known and known[0] >= SECONDARY_AGE else PRIMARY
    hall = unit.space.hall
    help_ = f"write how much each needs: about {least} square metres for each pupil"
    if figure := _FIGURE.search(hall):
        metres, each = int(figure.group(1)), bool(figure.group(2))
    elif sides := _SIDES.search(hall):
        metres, each = int(sides.group(1)) * int(sides.group(2)), False
    else:
        yield Finding(
            unit.file, ("space", "hall"), "`hall` does not say how many square metres", help_
        )
        return
    if each and metres < least:
        yield Finding(
            unit.file,
            ("space", "hall"),
            f"`hall` gives each pupil {metres} square metres, and {least} is the least at this age",
            help_,
        )
    elif not each and metres < least * A_CLASS:
        yield Finding(
            unit.file,
            ("space", "hall"),
            f"{metres} square metres is room for {metres // least} pupils at {least} each, and a "
            f"class may be {A_CLASS}",
            f"write about {least * A_CLASS} square metres, or let half the class dance at a time",
        )
