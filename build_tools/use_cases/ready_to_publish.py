"""Whether a checked bank can be published, and what of it: a draft's errors stop nobody."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.check_bank import Report
from build_tools.checking.faulty_drafts import faulty_drafts, unit_of
from build_tools.model.bank import Bank
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class Ready:
    """What of a bank can be published."""

    bank: Bank | None
    """None where anything but a draft has errors."""
    problems: tuple[Problem, ...]
    """Those of everything but the drafts with errors."""
    faulty: Mapping[str, int]
    """The drafts with errors by their folders, and how many each has."""
    drafts: frozenset[str]
    """All drafts by their folders: none is published."""


def ready_to_publish(report: Report, content: Path) -> Ready:
    """What of the report on the folder `content` can be published."""
    faulty = faulty_drafts(content, report.problems)
    problems = tuple(one for one in report.problems if unit_of(one) not in faulty)
    units = report.bank.units if report.bank else ()
    drafts = frozenset({*faulty, *(unit.slug for unit in units if unit.draft)})
    stopped = any(one.severity == "error" for one in problems)
    return Ready(None if stopped else report.bank, problems, faulty, drafts)
