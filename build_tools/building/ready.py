"""Whether a checked bank can be published, and what of it: a draft's errors stop nobody."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.building.site import Wanted
from build_tools.checking.faulty_drafts import faulty_drafts, unit_of
from build_tools.checking.quick_check import QuickReport
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class Ready:
    """What of a bank can be published."""

    wanted: Wanted | None
    """None where anything but a draft has errors."""
    problems: tuple[Problem, ...]
    """Those of everything but the drafts with errors."""
    faulty: Mapping[str, int]
    """The drafts with errors by their folders, and how many each has."""
    drafts: frozenset[str]
    """All drafts by their folders: none is published."""


def ready_to_publish(report: QuickReport, content: Path) -> Ready:
    """What of the report on the folder `content` can be published."""
    faulty = faulty_drafts(content, report.problems)
    problems = tuple(one for one in report.problems if unit_of(one) not in faulty)
    outlines = {slug: seen.outline for slug, seen in report.units.items() if seen.outline}
    drafts = frozenset({*faulty, *(slug for slug, one in outlines.items() if one.draft)})
    stopped = any(one.severity == "error" for one in problems)
    wanted = None if stopped else wanted_of(report, content, outlines.keys() - drafts)
    return Ready(wanted, problems, faulty, drafts)


def wanted_of(
    report: QuickReport,
    content: Path,
    shown: Collection[str],
    standing: Collection[str] = frozenset(),
) -> Wanted | None:
    """The site of the units `shown`, by their folders; None where the bank's files are broken.

    The pages of those `standing` stay as they were made last.
    """
    if report.settings is None:
        return None
    there = {*shown, *standing}
    leads = {}
    for slug in shown:
        outline = report.units[slug].outline
        named = (*outline.builds_on.units, *outline.leads_to.units) if outline else ()
        leads[slug] = tuple(sorted({*named} & there))
    return Wanted(
        report.settings,
        content,
        {slug: report.units[slug].digest for slug in sorted(shown)},
        leads,
        frozenset(standing),
    )
