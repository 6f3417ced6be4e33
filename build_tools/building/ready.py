"""Whether a checked bank can be published, and what of it: one unit's errors stop no other."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from build_tools.building.site import Wanted
from build_tools.checking.faulty_drafts import faulty_drafts, unit_of
from build_tools.checking.quick_check import QuickReport
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class Ready:
    """What of a bank can be published."""

    wanted: Wanted | None
    """None where the bank's own files have errors, or no unit is left to publish."""
    problems: tuple[Problem, ...]
    """Those of everything but the units that stay out."""
    faulty: Mapping[str, int]
    """The drafts with errors by their folders, and how many each has."""
    drafts: frozenset[str]
    """All drafts by their folders: none is published."""
    left: Mapping[str, int] = field(default_factory=dict)
    """The other units with errors, by their folders, and how many each has: they stay out, or are
    as they were made last."""


def ready_to_publish(report: QuickReport, content: Path, *, strict: bool = False) -> Ready:
    """What of the report on the folder `content` can be published.

    A unit with errors stays out, or as its pages were made last where those are kept; all stops
    where `strict`, or where nothing would be left.
    """
    faulty = faulty_drafts(content, report.problems)
    problems = tuple(one for one in report.problems if unit_of(one) not in faulty)
    outlines = {slug: seen.outline for slug, seen in report.units.items() if seen.outline}
    drafts = frozenset({*faulty, *(slug for slug, one in outlines.items() if one.draft)})
    errors = Counter(unit_of(one) for one in problems if one.severity == "error")
    shown = outlines.keys() - drafts - errors.keys()
    if errors and (strict or "" in errors or not shown):
        return Ready(None, problems, faulty, drafts)
    wanted = wanted_of(report, content, shown, errors.keys() & report.units.keys())
    kept = tuple(one for one in problems if unit_of(one) not in errors)
    return Ready(wanted, kept, faulty, drafts, {slug: errors[slug] for slug in sorted(errors)})


def wanted_of(
    report: QuickReport,
    content: Path,
    shown: Collection[str],
    standing: Collection[str] = frozenset(),
    faulty: Collection[str] = frozenset(),
) -> Wanted | None:
    """The site of the units `shown`, by their folders; None where the bank's files are broken.

    The pages of those `standing` stay as they were made last; those of the `faulty` among the
    shown do where they cannot be made.
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
        frozenset(faulty),
    )
