"""What a check found, said to whoever typed the command."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.check_bank import Report
from build_tools.checking.faulty_drafts import faulty_drafts, unit_of
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.model.bank import Bank
from build_tools.problem import Problem
from build_tools.views.words.plain_words import how_many


def say_skipped(skipped: int) -> None:
    """Say on the side that some rules were not run, where that is so."""
    if note := skipped_line(skipped):
        print(note, file=sys.stderr)


@dataclass(frozen=True, slots=True)
class ToPublish:
    """A bank that can be published, the problems of what is published, and the drafts left out."""

    bank: Bank
    problems: tuple[Problem, ...]
    drafts: frozenset[str]


def bank_to_publish(report: Report, content: Path, otherwise: str) -> ToPublish | None:
    """What of a report can be published; its problems are said, of drafts with errors in one line.

    None where anything else has errors; then `otherwise` is said too: what was not done, and what
    stands.
    """
    faulty = faulty_drafts(content, report.problems)
    problems = tuple(one for one in report.problems if unit_of(one) not in faulty)
    if problems:
        print(as_text(problems, f"{content.name}/"))
    if faulty:
        print(_left_out(faulty, content))
    if report.bank is None or any(one.severity == "error" for one in problems):
        say_skipped(report.skipped)
        print(f"{counted(problems)}; {otherwise}")
        return None
    drafts = {unit.slug for unit in report.bank.units if unit.draft}
    return ToPublish(report.bank, problems, frozenset({*drafts, *faulty}))


def _left_out(faulty: Mapping[str, int], content: Path) -> str:
    named = ", ".join(
        f"{content.name}/units/{slug} ({how_many(errors, 'error')})"
        for slug, errors in faulty.items()
    )
    return f"left out, being drafts with errors: {named}; `check` says what to mend"
