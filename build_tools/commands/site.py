"""`site`: check the bank and, if it has no errors, publish its pages."""

from __future__ import annotations

import os
from pathlib import Path

from build_tools.building.finishing.pdf_printing import browser_to_print, print_units
from build_tools.building.site import build_review, build_site, published_units
from build_tools.checking.report_text import counted
from build_tools.commands.bank_to_build import checked_for_building
from build_tools.misuse import Misuse
from build_tools.publishing.swap import staged
from build_tools.schema_check.schemas import SCHEMA_FOLDER


def run(content: Path, out: Path, *, review: bool = False, pdf: bool = False) -> int:
    """Build the site of `content` into `out`, with the advisers' page where `review` asks for it,
    and PDF files of each unit's lessons, sheet and booklet where `pdf` does.

    Returns 0 when built; 1 when errors stand in the way, and then `out` is left as it was. Raises
    Misuse where `out` holds something other than a site, since a new site takes its place, and
    where there is no browser to print PDF files.
    """
    _refuse_other_folders(content, out)
    browser = browser_to_print() if pdf else None
    checked = checked_for_building(content, "the site was not built, and the last one still stands")
    if checked is None:
        return 1
    bank, report = checked
    with staged(out) as fresh:
        build_site(bank, content, fresh)
        if review:
            build_review(bank, report, content, fresh)
        printed = print_units(fresh, browser) if browser else 0
    units = published_units(bank)
    drafts = len(bank.units) - len(units)
    left_out = f" ({drafts} draft{'' if drafts == 1 else 's'} left out)" if drafts else ""
    print(
        f"{counted(report.problems)}; {len(units)} unit{'' if len(units) == 1 else 's'}{left_out}"
    )
    print(f"open {(out / 'index.html').as_posix()}")
    if browser:
        print(f"{printed} PDF files in {(out / 'units').as_posix()}/<unit>/pdf")
    if review:
        print(f"for advisers: {(out / 'review.html').as_posix()}")
    return 0


def _refuse_other_folders(content: Path, out: Path) -> None:
    if content.is_relative_to(out) or out.is_relative_to(content):
        raise Misuse(f"{out} and {content} lie in one another; publish into another folder")
    if SCHEMA_FOLDER.is_relative_to(out):
        raise Misuse(f"{out} holds this project; publish into another folder")
    above = next(folder for folder in out.parents if folder.exists())
    if not above.is_dir() or not os.access(above, os.W_OK):
        raise Misuse(f"{out} cannot be made, since nothing can be written in {above}")
    if out.exists() and not out.is_dir():
        raise Misuse(f"{out} is a file; give the name of a folder")
    is_site = (out / "index.html").is_file() and (out / "assets").is_dir()
    if out.is_dir() and any(out.iterdir()) and not is_site:
        raise Misuse(f"{out} holds something other than a site; publish into another folder")
