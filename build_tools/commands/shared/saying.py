"""What a check found, said to whoever typed the command."""

from __future__ import annotations

import sys
from pathlib import Path

from build_tools.checking.check_bank import Report
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.model.bank import Bank


def say_skipped(skipped: int) -> None:
    """Say on the side that some rules were not run, where that is so."""
    if note := skipped_line(skipped):
        print(note, file=sys.stderr)


def bank_without_errors(report: Report, content: Path, otherwise: str) -> Bank | None:
    """The bank of a report, whose problems are said.

    None where it has errors; then `otherwise` is said too: what was not done, and what stands.
    """
    if report.problems:
        print(as_text(report.problems, f"{content.name}/"))
    say_skipped(report.skipped)
    if report.bank is None or report.of_grade("error"):
        print(f"{counted(report.problems)}; {otherwise}")
        return None
    return report.bank
