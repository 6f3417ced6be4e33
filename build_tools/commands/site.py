"""`site`: check the bank and, if it has no errors, publish its pages."""

from __future__ import annotations

import sys
from pathlib import Path

from build_tools.pipeline import check_folder
from build_tools.publishing.swap import staged
from build_tools.reports.text import as_text, counted, skipped_line
from build_tools.site_building import build_site, published_units


def run(content: Path, out: Path) -> int:
    """Build the site of `content` into `out`.

    Returns 0 when built; 1 when errors stand in the way, and then `out` is left as it was.
    """
    report = check_folder(content)
    if report.problems:
        print(as_text(report.problems, f"{content.name}/"))
    if note := skipped_line(report.skipped):
        print(note, file=sys.stderr)
    if report.bank is None or report.of_grade("error"):
        print(f"{counted(report.problems)}; the site was not built, and the last one still stands")
        return 1
    with staged(out) as fresh:
        build_site(report.bank, content, fresh)
    units = published_units(report.bank)
    drafts = len(report.bank.units) - len(units)
    left_out = f" ({drafts} draft{'' if drafts == 1 else 's'} left out)" if drafts else ""
    print(
        f"{counted(report.problems)}; {len(units)} unit{'' if len(units) == 1 else 's'}{left_out}"
    )
    print(f"open {(out / 'index.html').as_posix()}")
    return 0
