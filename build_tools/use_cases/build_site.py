"""Building the site of a bank without errors into a folder, doing only what changed."""

from __future__ import annotations

import os
from dataclasses import dataclass, replace
from pathlib import Path

from build_tools.building.progress import Progress, no_progress
from build_tools.building.site import Built, Wanted, build_site
from build_tools.checking.check_bank import check_folder
from build_tools.disk.stray_files import is_stray
from build_tools.disk.whole_folder import staged
from build_tools.misuse import Misuse
from build_tools.shapes.schemas import SCHEMA_FOLDER


@dataclass(frozen=True, slots=True)
class SiteBuilt:
    """What was built: how many units, how many PDF files printed, and what was done for it."""

    units: int
    pdf_files: int
    done: Built


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
    wanted: Wanted,
    out: Path,
    record: Path | None = None,
    browser: Path | None = None,
    progress: Progress = no_progress,
) -> SiteBuilt:
    """Build the site that is `wanted` into `out`; until what is new is whole, `out` stands.

    What was built is kept in the file `record`, so that the next time only what changed is made.
    `browser` prints each unit's lessons, sheet and booklet to PDF files.
    """
    if not browser:
        built = build_site(wanted, out, record, progress)
        return SiteBuilt(built.units, 0, built)
    from build_tools.building.finishing.pdf_printing import print_units

    # All of it is made anew, since what prints may fail where pages are already in their place.
    with staged(out) as room:
        built = build_site(wanted, room, None, progress)
        return SiteBuilt(built.units, print_units(room, browser), built)


def reviewed(wanted: Wanted, content: Path) -> Wanted:
    """The same with the advisers' page on everything that checking finds in `content`."""
    from build_tools.building.shared_files import review_files
    from build_tools.unit_editions.earlier_editions import since_last_edition

    report = check_folder(content)
    if report.bank is None:
        return wanted
    since = {unit.slug: since_last_edition(content, unit.slug) for unit in report.bank.units}
    return replace(wanted, more=review_files(report.bank, report, since))
