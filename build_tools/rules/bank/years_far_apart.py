"""The school years of a unit follow one another, and those of two nations are of one age.

A unit for Years 1 and 6 has a gap in which nobody is taught it, and one for Year 3 in England and
P1 in Scotland is for pupils three years apart. One of the numbers is a slip.

Bad:
    years: [{nation: England, years: [3, 4]}, {nation: Scotland, years: [P1]}]
Good:
    years: [{nation: England, years: [3, 4]}, {nation: Scotland, years: [P4, P5]}]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.school_years import ages, in_words, youngest
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "CCEA, NI Curriculum Primary, 2007, on Northern Ireland's years; the rest from memory"
NEEDS = ("year-unknown-in-nation",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for a gap in a nation's years, and for nations whose ages never meet."""
    for n, entry in enumerate(unit.years):
        known = sorted(a for year in entry.years if (a := youngest(entry.nation, year)) is not None)
        gap = next(((a, b) for a, b in pairwise(known) if b - a > 1), None)
        if gap:
            yield Finding(
                unit.file,
                ("years", n, "years"),
                f"`years` has {in_words(entry)}, which leave out the pupils who start the year at "
                f"{gap[0] + 1}",
                "write the years in between as well, or take one end out",
            )
    first = ages(unit.years[:1])
    for n, entry in enumerate(unit.years[1:], start=1):
        here = ages((entry,))
        if first is None or here is None or (here[0] < first[1] and first[0] < here[1]):
            continue
        yield Finding(
            unit.file,
            ("years", n, "years"),
            f"pupils of {in_words(entry)} are aged {here[0]} to {here[1]}, and those of "
            f"{in_words(unit.years[0])} {first[0]} to {first[1]}",
            "write the years in which pupils are of the same age",
        )
