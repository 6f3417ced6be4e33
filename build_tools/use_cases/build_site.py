"""Building the site of a bank without errors: all its pages in a folder, whole or not at all."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

from build_tools.building.finishing.pdf_printing import print_units
from build_tools.building.site import build_review, build_site, published_units
from build_tools.checking.check_bank import Report
from build_tools.disk.stray_files import is_stray
from build_tools.disk.whole_folder import staged
from build_tools.misuse import Misuse
from build_tools.model.bank import Bank
from build_tools.schema_check.schemas import SCHEMA_FOLDER
from build_tools.unit_editions.earlier_editions import since_last_edition


@dataclass(frozen=True, slots=True)
class SiteBuilt:
    """What was built: how many units, and how many PDF files printed."""

    units: int
    pdf_files: int


def refuse_folder(content: Path, out: Path) -> None:
    """Raise Misuse where `out` holds something other than a site, which would be lost."""
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
    if out.is_dir() and not is_site and not all(is_stray(path.name) for path in out.iterdir()):
        raise Misuse(f"{out} holds something other than a site; publish into another folder")


def build(
    bank: Bank, content: Path, out: Path, review: Report | None = None, browser: Path | None = None
) -> SiteBuilt:
    """Build the site of `bank`, read from `content`, into `out`; until it is whole, `out` stands.

    `review` adds the advisers' page on that report; `browser` prints each unit's lessons, sheet
    and booklet to PDF files.
    """
    with staged(out) as fresh:
        build_site(bank, content, fresh)
        if review:
            since = {unit.slug: since_last_edition(content, unit.slug) for unit in bank.units}
            build_review(bank, review, since, fresh)
        printed = print_units(fresh, browser) if browser else 0
    return SiteBuilt(len(published_units(bank)), printed)
