"""Check and rebuild while an author writes: which pages a change touches, and doing them anew."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from build_tools.building.site import build_site, build_unit_pages
from build_tools.checking.check_bank import Report, check_folder, check_unit
from build_tools.checking.quick_check import QuickReport
from build_tools.model.bank import Bank
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class Touched:
    """What a change touches: some units by their folders' names, or everything."""

    slugs: frozenset[str]
    everything: bool


def touched(content: Path, changed: Iterable[Path]) -> Touched:
    """Which units the `changed` files belong to; a file outside the units touches everything."""
    slugs = set()
    for path in changed:
        try:
            parts = path.relative_to(content).parts
        except ValueError:
            continue
        if len(parts) < 3 or parts[0] != "units":
            return Touched(frozenset(), True)
        slugs.add(parts[1])
    return Touched(frozenset(slugs), False)


def again(content: Path, before: Report, what: Touched, now: QuickReport) -> Report:
    """The report after a change: what was touched is read anew, everything else is as it was.

    `now` holds the problems of the whole folder as it is.
    """
    if before.bank is None or what.everything:
        return check_folder(content)
    units = {unit.slug: unit for unit in before.bank.units if unit.slug not in what.slugs}
    for slug in what.slugs:
        unit = check_unit(content, slug, before.bank.grades).unit
        if unit is not None:
            units[slug] = unit
    bank = replace(before.bank, units=tuple(units[slug] for slug in sorted(units)))
    return Report(bank, now.problems, before.allowances, now.skipped)


def standing_in_the_way(report: Report, slug: str) -> tuple[Problem, ...]:
    """The errors of one unit; while there are any, its last good pages stand."""
    return tuple(p for p in report.of_grade("error") if p.file.startswith(f"units/{slug}/"))


def sound_bank(report: Report) -> Bank | None:
    """The bank with the units that have no errors, drafts among them as if they were finished."""
    if report.bank is None:
        return None
    units = tuple(
        replace(unit, draft=False)
        for unit in report.bank.units
        if not standing_in_the_way(report, unit.slug)
    )
    return replace(report.bank, units=units)


def rebuild(content: Path, out: Path, what: Touched, report: Report) -> list[str]:
    """Write anew below `out` what was touched; returns what was written, in words.

    A unit that was not shown before brings every page anew, so that the front page leads to it.
    """
    bank = sound_bank(report)
    if bank is None:
        return []
    shown = {unit.slug for unit in bank.units if (out / "units" / unit.slug).is_dir()}
    if what.everything or any(u.slug in what.slugs - shown for u in bank.units):
        build_site(bank, content, out)
        return ["every page"]
    written = []
    for unit in bank.units:
        if unit.slug in what.slugs:
            build_unit_pages(bank, unit, content, out)
            written.append(f"the pages of {unit.slug}")
    return written
