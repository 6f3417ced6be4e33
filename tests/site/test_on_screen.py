"""What the screen does for a teacher in a hurry: one tap for all, words that can be read.

Common practice, no source: 12 px is the least that can be read on a phone.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.support.browser import address_of, reader
from tests.support.built_sites import lesson_pages, lessons_to_open, pages_to_open

PHONE, PHONE_HEIGHT = 390, 844
LEAST_PX = 12
SIZES = """
() => [...document.querySelectorAll("svg text")].map((text) => {
  const { a, b } = text.getScreenCTM();
  return parseFloat(getComputedStyle(text).fontSize) * Math.hypot(a, b);
})
"""
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


def test_without_script_each_opens_alone_and_there_is_no_dead_button(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, lesson_pages(site)[0]))
        assert not [one for one in at.page.locator("main button").all() if one.is_visible()]
        count = at.page.locator(FOLDED).count()
        at.page.locator("details.range summary").first.click()
        assert at.page.locator(FOLDED).count() == count - 1


def test_words_in_drawings_can_be_read_on_a_phone(
    browser: Browser, site: Path, thorough: bool
) -> None:
    small, drawn = {}, 0
    with reader(browser, site, width=PHONE) as at:
        for path in pages_to_open(site, thorough):
            if "<text" not in (site / path.partition("#")[0]).read_text(encoding="utf-8"):
                continue
            at.page.goto(address_of(site, path))
            sizes: list[float] = at.page.evaluate(SIZES)
            drawn += bool(sizes)
            if sizes and min(sizes) < LEAST_PX:
                small[path] = min(sizes)
    assert small == {}
    assert drawn > 5


def test_a_phones_first_screen_shows_a_units_picture(browser: Browser, site: Path) -> None:
    with reader(browser, site, width=PHONE) as at:
        at.page.goto(address_of(site, "index.html"))
        box = at.page.locator(".unit-card img").first.bounding_box()
        assert box is not None
        assert box["y"] + box["height"] < PHONE_HEIGHT


FIRST_SCREEN = (".place span", "h1", ".lead", ".first > .figure svg", ".facts", ".get", ".start")
CHOICES = ["Teach it, step by step", "On the wall", "Print it", "Fit to my time"]


@pytest.mark.parametrize("width", [PHONE, 1280])
def test_a_lessons_first_screen_says_what_is_made_and_what_to_get_and_offers_four_ways_on(
    browser: Browser, site: Path, width: int, thorough: bool
) -> None:
    late = {}
    with reader(browser, site, width=width) as at:
        at.page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
        for path in lessons_to_open(site, thorough):
            at.page.goto(address_of(site, path))
            offered = at.page.locator(".start li").all_inner_texts()
            assert [words.partition(":")[0] for words in offered] == CHOICES, path
            for part in FIRST_SCREEN:
                box = at.page.locator(part).first.bounding_box()
                assert box is not None, (path, part)
                if box["y"] + box["height"] > PHONE_HEIGHT:
                    late[path, part] = box["y"] + box["height"]
            assert at.page.locator(".get li").count() <= 5, path
            assert 1 <= at.page.locator(".short-lines li").count() <= 7, path
    assert late == {}


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


def test_no_label_is_broken_within_a_word(browser: Browser, site: Path, thorough: bool) -> None:
    broken = {}
    with reader(browser, site) as at:
        for path in lessons_to_open(site, thorough):
            at.page.goto(address_of(site, path))
            at.page.evaluate("document.documentElement.dataset.whole = ''")
            for width in (1280, PHONE, 320):
                at.page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
                if found := at.page.evaluate(BROKEN):
                    broken[path, width] = found
        assert broken == {}
        # the look is at the labels: one squeezed to a letter a line is noticed
        at.page.evaluate("document.querySelector('.rows dt').style.width = '0'")
        assert len(at.page.evaluate(BROKEN)) == 1
