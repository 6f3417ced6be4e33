"""The stage of a curriculum link is one that its nation has, and fits the unit's years there.

Key stage 1 is Years 1 and 2 in England and Years 3 and 4 in Northern Ireland; Scotland has levels
and Wales has progression steps. A link to the wrong stage is a promise that nobody can check.

Bad:
    years: [{nation: England, years: [3, 4]}]
    curriculum: [{nation: Scotland, stage: key stage 2, …}]
Good:
    years: [{nation: England, years: [3, 4]}]
    curriculum: [{nation: England, stage: key stage 2, …}]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.school_years import youngest
from build_tools.model.unit import CurriculumLink, Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = (
    "CCEA, Northern Ireland Curriculum Primary, 2007, 1.2; Education Scotland, Curriculum for "
    "Excellence: codes such as EXA 2-08a; England and Wales from memory"
)
NEEDS = ("year-unknown-in-nation",)

_KS = re.compile(r"\b(?:key\s*stage|ks)\s*(\d)\b", re.IGNORECASE)
_LEVEL = re.compile(r"\b(early|first|second|third|fourth)\s+level\b", re.IGNORECASE)
_STEP = re.compile(r"\bprogression\s+step\s+(\d)\b", re.IGNORECASE)
_EARLY = re.compile(r"\b(?:EYFS|early years|foundation stage|reception)\b", re.IGNORECASE)
_EXA = re.compile(r"\bEXA\b[ -]?([0-9][\w-]*)?")
_EXA_CODE = re.compile(r"\bEXA ([0-4])-\d{2}[a-z]\b")

STAGES: dict[str, dict[str, tuple[str, ...]]] = {
    "England": {
        "foundation stage": ("R",),
        "key stage 1": ("1", "2"),
        "key stage 2": ("3", "4", "5", "6"),
        "key stage 3": ("7", "8", "9"),
    },
    "Northern Ireland": {
        "foundation stage": ("1", "2"),
        "key stage 1": ("3", "4"),
        "key stage 2": ("5", "6", "7"),
        "key stage 3": ("8", "9", "10"),
    },
    "Scotland": {
        "early level": ("P1",),
        "first level": ("P2", "P3", "P4"),
        "second level": ("P5", "P6", "P7"),
        "third level": ("S1", "S2", "S3"),
        "fourth level": ("S1", "S2", "S3"),
    },
    "Wales": {f"progression step {n}": () for n in range(1, 6)},
}
"""The school years of each stage; none where a stage is not tied to years."""
_LEVELS = ("early level", "first level", "second level", "third level", "fourth level")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each link to a stage, or with a code, that does not fit."""
    for n, link in enumerate(unit.curriculum):
        stages = _named(link)
        for stage in stages:
            if message := _misfit(unit, link.nation, stage):
                yield Finding(
                    unit.file,
                    ("curriculum", n, "stage"),
                    message,
                    f"write {listed(_fitting(unit, link.nation), 'or')} under `stage`",
                )
                break
        if link.nation == "Scotland":
            yield from _codes(unit, n, link, stages)


def _named(link: CurriculumLink) -> list[str]:
    """The stages that a link names, by the names they have in `STAGES`."""
    found = [f"key stage {m.group(1)}" for m in _KS.finditer(link.stage)]
    found += [f"{m.group(1).lower()} level" for m in _LEVEL.finditer(link.stage)]
    found += [f"progression step {m.group(1)}" for m in _STEP.finditer(link.stage)]
    if link.nation in ("England", "Northern Ireland") and _EARLY.search(link.stage):
        found.append("foundation stage")
    return found


def _misfit(unit: Unit, nation: str, stage: str) -> str | None:
    if stage not in STAGES[nation]:
        return f"`stage` is {stage}, but {nation} has no such stage"
    stage_years = STAGES[nation][stage]
    here = [y for one in unit.years if one.nation == nation for y in one.years]
    if not here or not stage_years or set(here) & set(stage_years):
        return None
    return (
        f"{stage} in {nation} is {_years(nation, stage_years)}, but the unit's `years` there are "
        f"{_years(nation, here)}"
    )


def _fitting(unit: Unit, nation: str) -> tuple[str, ...]:
    """The nation's stages that hold a year of the unit; all of them where none is known to."""
    here = {y for one in unit.years if one.nation == nation for y in one.years}
    return tuple(s for s, years in STAGES[nation].items() if here & set(years)) or tuple(
        STAGES[nation]
    )


def _years(nation: str, years: list[str] | tuple[str, ...]) -> str:
    ordered = sorted(set(years), key=lambda y: youngest(nation, y) or 0)
    names = [f"Year {y}" if y.isdigit() else "Reception" if y == "R" else y for y in ordered]
    return listed(names)


def _codes(unit: Unit, n: int, link: CurriculumLink, stages: list[str]) -> Iterator[Finding]:
    for match in _EXA.finditer(link.says):
        code = _EXA_CODE.match(link.says, match.start())
        level = _LEVELS[int(code.group(1))] if code else ""
        if code and (not stages or level in stages):
            continue
        written = match.group().strip()
        yield Finding(
            unit.file,
            ("curriculum", n, "says"),
            f"`{written}` is a code of the {level}, but `stage` says {listed(stages)}"
            if code
            else f"`{written}` is not written as Scotland writes its codes",
            f"write the {level} under `stage`, or use that level's code"
            if code
            else "write it with its level, a hyphen, two figures and a letter: EXA 2-08a",
        )
        return
