"""Pictures of the site for people to look at: python -m tests.site.screenshots FOLDER [SITE].

Saves into FOLDER the front, unit, lesson, words and rules pages at 1280 and 390 px and in dark
colours, and each side of the prints of every lesson and of one unit. SITE is a built site; without
it, one is built from the content folder.
"""

from __future__ import annotations

import argparse
import io
import os
import tempfile
from pathlib import Path

import pdfplumber
from playwright.sync_api import Browser

from build_tools.project.tools_for_tests import tools
from tests.support.browser import address_of, launched, reader
from tests.support.built_sites import CONTENT, build, html_pages, lesson_pages

LOOKS = {"1280": (1280, False), "390": (390, False), "dark": (1280, True)}
PIXELS_PER_INCH = 110


def shown_pages(site: Path) -> dict[str, str]:
    """The pages to look at, by the name of their picture."""
    unit = next(path for path in html_pages(site) if path.startswith("units/"))
    return {
        "front": "index.html",
        "unit": f"{Path(unit).parent.as_posix()}/index.html",
        "lesson": lesson_pages(site)[0],
        "words": "words.html",
        "rules": "rules.html",
    }


def save_screens(browser: Browser, site: Path, folder: Path) -> None:
    """Save each page in each look, the whole page long."""
    for look, (width, dark) in LOOKS.items():
        with reader(browser, site, width=width, dark=dark) as at:
            for name, path in shown_pages(site).items():
                at.page.goto(address_of(site, path))
                at.page.screenshot(path=folder / f"{name}-{look}.png", full_page=True)


def save_prints(browser: Browser, site: Path, folder: Path) -> None:
    """Save each side of the prints of every lesson and of the unit that is shown."""
    with reader(browser, site) as at:
        for path in [*lesson_pages(site), shown_pages(site)["unit"]]:
            at.page.goto(address_of(site, path))
            pdf = at.page.pdf(format="A4", prefer_css_page_size=True, print_background=True)
            with pdfplumber.open(io.BytesIO(pdf)) as document:
                for side in document.pages:
                    picture = side.to_image(resolution=PIXELS_PER_INCH)
                    name = "-".join(Path(path).with_suffix("").parts[-2:])
                    picture.save(folder / f"print-{name}-{side.page_number}.png")


def main() -> None:
    """Read the command line, build the site if none is given, and save the pictures."""
    parser = argparse.ArgumentParser(description="Save pictures of the site for people to look at.")
    parser.add_argument("folder", type=Path, help="where the pictures are saved")
    parser.add_argument("site", type=Path, nargs="?", help="a built site")
    given = parser.parse_args()
    given.folder.mkdir(parents=True, exist_ok=True)
    os.environ.update(tools().environment())
    with tempfile.TemporaryDirectory() as scratch, launched() as browser:
        site = given.site or Path(scratch) / "site"
        if not given.site:
            build(CONTENT, site)
        save_screens(browser, site, given.folder)
        save_prints(browser, site, given.folder)
    print(f"saved in {given.folder}")


if __name__ == "__main__":
    main()
