"""The plan of a year in a browser: by keyboard, narrow, in print, by hand, and held to axe-core.

Source of the keyboard and of 320 px: WCAG 2.2, success criteria 2.1.1 and 1.4.10.
"""

from __future__ import annotations

import io
from pathlib import Path

import pdfplumber
import pytest
from playwright.sync_api import Browser

from build_tools import cli
from tests.support import axe
from tests.support.banks import CONTENT
from tests.support.browser import address_of, reader
from tests.support.shared import made_once

ASKED = ("--year", "4", "--term", "Autumn: 6 from 2026-09-07, 6", "--term", "Spring: 5")
SCROLLS = "document.documentElement.scrollWidth"


def make(at: Path) -> None:
    out = str(at / "plan")
    site = str(at / "none")
    given = ["plan", "--content", str(CONTENT), "--out", out, "--site", site, *ASKED]
    assert cli.main(given) == 0


@pytest.fixture(scope="module")
def plan(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return made_once(tmp_path_factory, "year-plan", make) / "plan"


@pytest.mark.parametrize(("width", "dark"), axe.looks(1280, 320))
def test_it_breaks_no_rule_of_access_and_fits_the_screen(
    browser: Browser, plan: Path, width: int, dark: bool
) -> None:
    with reader(
        browser, plan, width=width, dark=dark, served=True, extra_script=axe.source()
    ) as at:
        at.page.goto(address_of(plan, "plan.html", served=True))
        found = axe.run(at.page)
        assert found.violations == ()
        assert at.page.evaluate(SCROLLS) <= width


def test_by_hand_and_by_keys_alone_the_cover_is_said_at_once(browser: Browser, plan: Path) -> None:
    with reader(browser, plan, width=320) as at:
        at.page.goto(address_of(plan, "plan.html"))
        said = at.page.locator('[data-part="said"]')
        before, missing = (
            said.inner_text(),
            at.page.locator('[data-part="missing"]').all_inner_texts(),
        )
        for _ in range(20):
            at.page.keyboard.press("Tab")
            if at.page.evaluate("document.activeElement.tagName") == "SELECT":
                break
        at.page.keyboard.press("ArrowDown")
        assert "Nothing" in at.page.locator('[data-slot="1"] [data-part="unit"]').inner_text()
        assert said.inner_text() != before
        assert at.page.locator('[data-part="missing"]').all_inner_texts() != missing
        assert "--unit 1=" not in at.page.locator('[data-part="command"]').inner_text()
        # what stands in the second slot comes a second time
        second = at.page.locator('[data-slot="2"] select option').first.inner_text()
        at.page.locator('[data-slot="1"] select').select_option(label=second)
        assert "comes a second time" in at.page.locator('[data-part="notes"]').inner_text()


def test_it_is_whole_without_scripts_and_prints_on_a4(browser: Browser, plan: Path) -> None:
    with reader(browser, plan, script=False) as at:
        at.page.goto(address_of(plan, "plan.html"))
        paper = at.page.pdf(format="A4", prefer_css_page_size=True)
    with pdfplumber.open(io.BytesIO(paper)) as document:
        text = " ".join(side.extract_text() for side in document.pages)
        for side in document.pages:
            assert all(w["x0"] >= 0 and w["x1"] <= side.width for w in side.extract_words())
    for words in ("A year of dance: Year 4 (England)", "7 September 2026", "Missing", "--year 4"):
        assert words in text
