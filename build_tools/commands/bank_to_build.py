"""A bank checked for building: what is wrong is printed, and errors stand in the way."""

from __future__ import annotations

import sys
from pathlib import Path

from build_tools.checking.check_bank import Report, check_folder
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.model.bank import Bank


def checked_for_building(content: Path, otherwise: str) -> tuple[Bank, Report] | None:
    """The bank in `content` and the report on it, whose problems are printed.

    None where it has errors; then `otherwise` is said too: what was not done, and what stands.
    """
    report = check_folder(content)
    if report.problems:
        print(as_text(report.problems, f"{content.name}/"))
    if note := skipped_line(report.skipped):
        print(note, file=sys.stderr)
    if report.bank is None or report.of_grade("error"):
        print(f"{counted(report.problems)}; {otherwise}")
        return None
    return report.bank, report
