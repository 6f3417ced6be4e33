"""The page of counts held to axe-core while it plays, and with letters set apart.

Sources: WCAG 2.2, success criteria 1.4.10 Reflow (320 px), 1.4.12 Text Spacing, 2.5.8 Target Size
(24 px); axe-core's rules for levels A and AA.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.support import axe
from tests.support.hall import LETTERS_APART, opened, small_targets
from tests.support.sound_bank import real_unit

PAGE = f"units/{real_unit().slug}/counts.html"
SILENT = "delete window.AudioContext;"
BEAT_MS = 60_000 / 108
LEAST_TARGET = 24
CLIPPED = """
[...document.querySelectorAll("main :is(button, label, p, li, td, th, h2, h3, output)")]
  .filter((one) => one.checkVisibility() && !one.closest(".aside"))
  .filter((one) => one.clientWidth && one.scrollWidth > one.clientWidth + 1)
  .map((one) => one.textContent.trim().slice(0, 60))
"""
MOVING = """
document.getAnimations().filter((one) => one.playState === "running").length
"""


def play(page: Page, counts: float) -> None:
    """Start, and let the made-up clock go on for so many counts after the four of counting in."""
    page.get_by_role("button", name="Start").click()
    page.clock.run_for(round(150 + (4 + counts) * BEAT_MS))
    assert page.locator(".whole tr[data-lit]").count() > 0


@pytest.mark.parametrize(("width", "dark"), axe.looks(1280, 768, 320))
def test_it_breaks_no_rule_while_it_plays(
    browser: Browser, site: Path, width: int, dark: bool
) -> None:
    faults: list[str] = []
    with opened(
        browser, site, PAGE, size=(width, 800), dark=dark, served=True,
        extra_script=SILENT + axe.source(),
    ) as at:  # fmt: skip
        page = at.page

        def look(state: str) -> None:
            # axe-core waits for timers, which stand still while the clock is ours.
            page.clock.resume()
            found = axe.run(page)
            faults.extend(f"{state}: {fault}" for fault in found.violations)
            unsure = [one for one in found.incomplete if one.rule != "color-contrast"]
            faults.extend(f"{state}, for people to judge: {one}" for one in unsure)
            faint = [one.target for one in found.incomplete if one.rule == "color-contrast"]
            faults.extend(f"{state}: {fault}" for fault in axe.too_faint(page, faint))
            assert page.evaluate("document.documentElement.scrollWidth") <= width, state
            assert small_targets(page, LEAST_TARGET) == [], state

        # At rest it is looked at in test_every_page.py.
        page.fill("#counts-track", "soon")
        page.get_by_role("button", name="Tap here").press("Space")
        page.clock.pause_at(page.evaluate("Date.now()") + 1000)
        play(page, 2.5)
        assert page.get_by_text("1 tapped.").is_visible()
        look("playing, after a tap")
    assert faults == []


@pytest.mark.parametrize("width", [1280, 320])
def test_with_letters_set_apart_nothing_is_cut_off(
    browser: Browser, site: Path, width: int
) -> None:
    with opened(browser, site, PAGE, size=(width, 800), extra_script=SILENT) as at:
        at.page.clock.pause_at(at.page.evaluate("Date.now()") + 1000)
        play(at.page, 2.5)
        before = at.page.locator("main").inner_text()
        at.page.evaluate(LETTERS_APART)
        assert at.page.evaluate("document.documentElement.scrollWidth") <= width
        assert at.page.evaluate(CLIPPED) == []
        assert at.page.locator("main").inner_text().split() == before.split()


def test_nothing_moves_by_itself_for_those_who_asked_for_less_motion(
    browser: Browser, site: Path
) -> None:
    """WCAG 2.2, success criterion 2.3.3: the number changes, and nothing slides or fades."""
    with opened(browser, site, PAGE, extra_script=SILENT) as at:
        assert at.page.evaluate("matchMedia('(prefers-reduced-motion: reduce)').matches")
        at.page.clock.pause_at(at.page.evaluate("Date.now()") + 1000)
        play(at.page, 2.5)
        assert at.page.evaluate(MOVING) == 0
