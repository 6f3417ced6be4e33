"""Checking a bank: everything is read, and what lies in some places is reported."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from build_tools.checking.quick_check import QuickReport, quick_check
from build_tools.model.bank import UnitOutline
from build_tools.problem import Problem


def check(content: Path, wanted: Sequence[str], kept_in: Path | None) -> QuickReport:
    """Check the folder `content`; report the problems below `wanted`, or all where it is empty.

    `wanted` are paths relative to the folder, with `/`. What each unit's files said is kept in
    the file `kept_in`, if given, for the next time.
    """
    report = quick_check(content, kept_in)
    problems = tuple(one for one in report.problems if _is_wanted(one, wanted))
    return replace(report, problems=problems)


def outlines_in(report: QuickReport, wanted: Sequence[str]) -> tuple[UnitOutline, ...]:
    """The sound units that lie at, below or around the places `wanted`, or all of them."""
    found = (seen.outline for seen in report.units.values() if seen.outline)
    return tuple(
        one
        for one in found
        if not wanted
        or any(
            place in (".", "units") or f"{place}/".startswith(f"units/{one.slug}/")
            for place in wanted
        )
    )


def stands_in_the_way(problems: Sequence[Problem], *, strict: bool) -> bool:
    """Whether a problem is an error, or a question too when `strict`."""
    grades = {"error", "question"} if strict else {"error"}
    return any(one.severity in grades for one in problems)


def kept_file(project: Path, content: Path) -> Path:
    """Where results for the folder `content` are kept from one check to the next."""
    name = hashlib.sha256(str(content).encode("utf-8", "surrogateescape")).hexdigest()[:16]
    return project / ".kept" / f"{name}.json"


def _is_wanted(problem: Problem, wanted: Sequence[str]) -> bool:
    return not wanted or any(
        place == "." or problem.file == place or problem.file.startswith(f"{place}/")
        for place in wanted
    )
