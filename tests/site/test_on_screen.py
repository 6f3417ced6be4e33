"""What the screen does for a teacher in a hurry: one tap for all, the first screen, whole words."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Browser

from tests.support.browser import address_of, reader
from tests.support.built_sites import lesson_pages, lessons_to_open

PHONE, PHONE_HEIGHT = 390, 844
BROKEN = """
() => [...document.querySelectorAll("dt")].filter((label) => {
  const words = document.createRange();
  words.selectNodeContents(label);
  const lines = new Set([...words.getClientRects()].map(({ top }) => Math.round(top)));
  return lines.size > label.textContent.trim().split(/\\s+/).length;
}).map((label) => label.textContent)
"""
FOLDED = "details.range:not([open])"


def test_one_button_opens_easier_and_harder_for_every_step_and_folds_them(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, lesson_pages(site)[0]))
        parts, folded = at.page.locator("details.range"), at.page.locator(FOLDED)
        count = parts.count()
        assert count > 3
        assert folded.count() == count
        at.page.get_by_role("button", name="Show easier and harder for every step").click()
        assert folded.count() == 0
        at.page.get_by_role("button", name="Fold easier and harder for every step").click()
        assert folded.count() == count
        parts.nth(1).locator("summary").click()
        assert folded.count() == count - 1
        at.page.get_by_role("button", name="Show easier and harder for every step").click()
        assert folded.count() == 0


def test_a_phones_first_screen_shows_a_units_picture(browser: Browser, site: Path) -> None:
    with reader(browser, site, width=PHONE) as at:
        at.page.goto(address_of(site, "index.html"))
        box = at.page.locator(".unit-card img").first.bounding_box()
        assert box is not None
        assert box["y"] + box["height"] < PHONE_HEIGHT


FIRST_SCREEN = (".place span", "h1", ".lead", ".first > .figure svg", ".facts", ".get", ".start")
BOTTOMS = """
(parts) => parts.map((part) => {
  const box = document.querySelector(part)?.getBoundingClientRect();
  return box && box.width ? box.bottom : null;
})
"""
CHOICES = ["Teach it, step by step", "On the wall", "Print it", "Fit to my time"]


def test_a_lessons_first_screen_says_what_is_made_and_what_to_get_and_offers_four_ways_on(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """On a phone and on a large screen; no label is broken within a word, on the narrowest too."""
    late, broken = {}, {}
    with reader(browser, site) as at:
        for path in lessons_to_open(site, thorough):
            at.page.goto(address_of(site, path))
            for width in (PHONE, 1280):
                at.page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
                offered = at.page.locator(".start li").all_inner_texts()
                assert [words.partition(":")[0] for words in offered] == CHOICES, path
                for part, bottom in zip(
                    FIRST_SCREEN, at.page.evaluate(BOTTOMS, list(FIRST_SCREEN)), strict=True
                ):
                    assert bottom is not None, (path, part)
                    if bottom > PHONE_HEIGHT:
                        late[path, width, part] = bottom
                assert at.page.locator(".get li").count() <= 5, path
                assert 1 <= at.page.locator(".short-lines li").count() <= 7, path
            at.page.evaluate("document.documentElement.dataset.whole = ''")
            for width in (1280, PHONE, 320):
                at.page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
                if found := at.page.evaluate(BROKEN):
                    broken[path, width] = found
        assert late == {}
        assert broken == {}
        # the look is at the labels: one squeezed to a letter a line is noticed
        at.page.evaluate("document.querySelector('.rows dt').style.width = '0'")
        assert len(at.page.evaluate(BROKEN)) == 1


def test_without_script_a_lesson_is_whole_and_offers_nothing_that_does_not_work(
    browser: Browser, site: Path, thorough: bool
) -> None:
    with reader(browser, site, script=False) as at:
        for path in lessons_to_open(site, thorough):
            at.page.goto(address_of(site, path))
            shown = [one for one in at.page.locator(".start li").all() if one.is_visible()]
            said = [one.inner_text().partition(":")[0] for one in shown]
            assert said == ["Teach it, step by step", "On the wall"], path
            assert at.page.locator(".step .task").count() == at.page.locator(".step").count()
            folded = at.page.locator(FOLDED).count()
            assert not [one for one in at.page.locator("main button").all() if one.is_visible()]
            at.page.locator("details.range summary").first.click()
            assert at.page.locator(FOLDED).count() == folded - 1
