"""Seen or not yet: kept on this device, and the next lesson opens there.

What was seen decides where the next lesson starts: assessment for learning, Black and Wiliam,
"Inside the black box" (1998).
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page

from tests.support.browser import address_of, reader
from tests.support.built_sites import lesson_pages

REFUSED = """
Object.defineProperty(window, "localStorage", { get() { throw new Error("refused"); } });
"""
CHOSEN = '[data-part="last-time"] [aria-current]'


def two_lessons(site: Path) -> tuple[str, str]:
    first = lesson_pages(site)[0]
    assert first.endswith("lesson-1.html")
    return first, first.replace("lesson-1", "lesson-2")


def button(page: Page, name: str) -> Locator:
    return page.get_by_role("group", name="Did you see it?").get_by_role("button", name=name)


@pytest.mark.parametrize(
    ("name", "value"),
    [pytest.param("Seen", "seen", marks=pytest.mark.thorough), ("Not yet", "not-yet")],
)
def test_the_next_lesson_opens_with_the_start_that_was_chosen(
    browser: Browser, site: Path, name: str, value: str
) -> None:
    first, second = two_lessons(site)
    with reader(browser, site) as at:
        at.page.goto(address_of(site, first))
        start = at.page.locator(f'.talk [data-value="{value}"] dd').inner_text()
        pressed = button(at.page, name)
        assert pressed.get_attribute("aria-pressed") == "false"
        pressed.click()
        assert pressed.get_attribute("aria-pressed") == "true"
        said = at.page.locator('[data-part="seen"] [role="status"]').inner_text()
        assert "on this device only" in said
        at.page.get_by_role("navigation", name="Lessons").get_by_role("link").first.click()
        at.page.wait_for_url(f"{address_of(site, second)}**")
        assert at.page.url.partition("#")[0] == address_of(site, second)
        chosen = at.page.locator(CHOSEN)
        assert chosen.count() == 1
        assert chosen.locator("dd").inner_text() == start
        assert not at.violations()


def test_pressed_again_it_is_taken_back(browser: Browser, site: Path) -> None:
    first, second = two_lessons(site)
    with reader(browser, site) as at:
        at.page.goto(address_of(site, first))
        button(at.page, "Seen").click()
        button(at.page, "Seen").click()
        assert button(at.page, "Seen").get_attribute("aria-pressed") == "false"
        at.page.goto(address_of(site, second))
        assert at.page.locator(CHOSEN).count() == 0


def test_the_address_alone_carries_it(browser: Browser, site: Path) -> None:
    _, second = two_lessons(site)
    with reader(browser, site) as at:
        at.page.goto(address_of(site, second) + "#last=not-yet")
        chosen = at.page.locator(CHOSEN)
        assert chosen.get_attribute("data-value") == "not-yet"


def test_without_script_both_starts_are_there(browser: Browser, site: Path) -> None:
    first, second = two_lessons(site)
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, first))
        starts = at.page.locator(".talk [data-value] dd").all_text_contents()
        at.page.goto(address_of(site, second))
        assert len(starts) == 2
        assert at.page.locator('[data-part="last-time"] dd').all_text_contents() == starts


def test_where_nothing_can_be_kept_the_page_says_so_and_works(browser: Browser, site: Path) -> None:
    first, second = two_lessons(site)
    with reader(browser, site, extra_script=REFUSED) as at:
        at.page.goto(address_of(site, first))
        button(at.page, "Not yet").click()
        assert button(at.page, "Not yet").get_attribute("aria-pressed") == "true"
        said = at.page.locator('[data-part="seen"] [role="status"]').inner_text()
        assert "until you close this page" in said
        at.page.get_by_role("navigation", name="Lessons").get_by_role("link").first.click()
        at.page.wait_for_load_state()
        assert at.page.url.partition("#")[0] == address_of(site, second)
        assert at.page.locator(CHOSEN).get_attribute("data-value") == "not-yet"
