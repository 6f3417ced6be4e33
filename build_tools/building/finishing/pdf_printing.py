"""A finished site's pages to PDF files, printed by a browser that is installed already."""

from __future__ import annotations

import os
import re
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from build_tools.building.browsers import ToolMissingError, installed_browsers
from build_tools.building.finishing.squeezed_parts import unpacked
from build_tools.lifeline import programs
from build_tools.misuse import Misuse

PRINTED = re.compile(r"(lesson-[0-9]+|sheet|booklet)\.html")
SECONDS = 90


def browser_to_print() -> Path:
    """An installed browser; raises Misuse saying what to install where there is none."""
    try:
        found = next(installed_browsers(), None)
    except ToolMissingError as missing:
        raise Misuse(str(missing)) from missing
    if found is None:
        raise Misuse(
            "PDF files are printed by a browser, and none was found: install Chromium, Chrome or "
            "Edge (on Debian: `sudo apt-get install chromium`), or name one in BANK_CHROMIUM"
        )
    return found


def print_units(site: Path, browser: Path) -> int:
    """Write `pdf/` beside the pages of each unit of `site`; returns how many PDF files."""
    pages = list(pages_to_print(site))
    with tempfile.TemporaryDirectory(prefix="printing-", ignore_cleanup_errors=True) as profile:
        for page in pages:
            with _laid_out(page) as whole:
                print_page(browser, whole, page.parent / "pdf" / f"{page.stem}.pdf", Path(profile))
    return len(pages)


@contextmanager
def _laid_out(page: Path) -> Iterator[Path]:
    """A page as it is printed: a booklet's lessons are there before any script has run."""
    html = page.read_text(encoding="utf-8")
    if (whole := unpacked(html)) == html:
        yield page
        return
    copy = page.with_name(f"{page.stem}-laid-out.html")
    copy.write_text(whole, encoding="utf-8", newline="\n")
    try:
        yield copy
    finally:
        copy.unlink()


def pages_to_print(site: Path) -> Iterator[Path]:
    """The lessons, the sheet and the booklet of each unit."""
    for page in sorted((site / "units").glob("*/*.html")):
        if PRINTED.fullmatch(page.name):
            yield page


def print_page(browser: Path, page: Path, pdf: Path, profile: Path) -> None:
    """Print one page; `profile` keeps the browser apart from one that is open already."""
    pdf.parent.mkdir(exist_ok=True)
    command = [
        str(browser),
        "--headless",
        "--disable-gpu",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-dev-shm-usage",
        f"--user-data-dir={profile}",
        "--no-pdf-header-footer",
        f"--print-to-pdf={pdf}",
        page.resolve().as_uri(),
    ]
    if hasattr(os, "geteuid") and os.geteuid() == 0:
        command.insert(1, "--no-sandbox")
    try:
        done = programs.run(
            command,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE,
            encoding="utf-8",
            errors="replace",
            timeout=SECONDS,
        )
    except subprocess.TimeoutExpired as late:
        raise Misuse(f"{browser} took over {SECONDS} seconds to print {page.name}") from late
    except OSError as fault:
        raise Misuse(f"{browser} cannot be run: {fault.strerror}") from fault
    if done.returncode or not pdf.is_file():
        last = (done.stderr.strip().splitlines() or ["it said nothing"])[-1]
        raise Misuse(f"{browser} did not print {page.name}: {last}")
