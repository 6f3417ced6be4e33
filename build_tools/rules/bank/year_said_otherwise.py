"""The school year that a summary names is one of the unit's `years`.

The summary is what a teacher reads in the list of units. One that says Reception, over a dance for
Years 3 and 4, sends it to a class it was not made for.

Bad:
    years: [{nation: England, years: [3, 4]}]
    summary: A first dance for Reception about the sea.
Good:
    years: [{nation: England, years: [3, 4]}]
    summary: A dance for Years 3 and 4 about the sea.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.bank.stage_does_not_fit_nation import STAGES
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("year-unknown-in-nation",)

_YEARS = re.compile(r"\b[Yy]ears? (\d{1,2})(?:\s*(and|or|to|-|–)\s*(\d{1,2}))?\b")
_RECEPTION = re.compile(r"\bReception\b(?! (?:desk|hall|room))")
_SCOTLAND = re.compile(r"\b(?:P|S|Primary )([1-7])\b")
_STAGE = re.compile(r"\b(?:key stage|KS) ?(\d)\b", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the summary names a school year that the unit is not for."""
    here = {year for one in unit.years for year in one.years}
    for said, years in _named(unit.summary):
        if not here or here & years:
            continue
        yield Finding(
            unit.file,
            ("summary",),
            f"`summary` says `{said}`, but the unit's `years` are {listed(sorted(here))}",
            "name the years of the unit, or mend `years`",
        )
        return


def _named(text: str) -> Iterator[tuple[str, set[str]]]:
    """Each school year or stage that the text names, with the years that are meant by it."""
    for years in _YEARS.finditer(text):
        first, joined, last = years.groups()
        through = joined in ("to", "-", "–")
        named = range(int(first), int(last) + 1) if through else (int(first), int(last or first))
        yield years.group(), {str(year) for year in named}
    for reception in _RECEPTION.finditer(text):
        yield reception.group(), {"R"}
    for primary in _SCOTLAND.finditer(text):
        letter = primary.group()[0]
        yield primary.group(), {f"{letter}{primary.group(1)}"}
    for stage in _STAGE.finditer(text):
        name = f"key stage {stage.group(1)}"
        known = [stages[name] for stages in STAGES.values() if name in stages]
        yield stage.group(), {year for years in known for year in years}
