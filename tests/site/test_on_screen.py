"""What the screen does for a teacher in a hurry: one tap for all, the first screen, whole words."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.support.browser import address_of, reader
from tests.support.built_sites import lesson_pages, lessons_to_open

WIDE, PHONE, NARROW = 1280, 390, 320
PHONE_HEIGHT = 844
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
# All that there is to read on a page. A button is no text: it only does what a script does.
# A page without script keeps nothing, so it has nothing to say of that.
TEXT = """
() => {
  const copy = document.querySelector("main").cloneNode(true);
  const byScript = "button, .seen-here, .kept, #at-fit > :not(summary)";
  for (const added of copy.querySelectorAll(byScript)) added.remove();
  return copy.textContent.replace(/\\s+/g, " ");
}
"""


@dataclass(frozen=True, slots=True)
class Visit:
    """One lesson's page as it is with its scripts, and without."""

    offered: dict[int, list[str]]
    """The ways on by the width of the screen."""
    bottoms: dict[tuple[int, str], float | None]
    """How far down each part of the first screen reaches, by the width; None where it is not."""
    to_get: int
    short_lines: int
    broken: dict[int, list[str]]
    """Labels broken within a word, by the width."""
    squeezed: list[str]
    """The same once a label is squeezed."""
    text: str
    plain: Plain


@dataclass(frozen=True, slots=True)
class Plain:
    """The same page without script."""

    offered: list[str]
    steps: int
    tasks: int
    buttons: int
    unfolded_by_a_click: int
    text: str


@pytest.fixture(scope="module")
def visits(browser: Browser, site: Path, thorough: bool) -> dict[str, Visit]:
    """Each lesson that is opened, by its path: opened once in each way for all that is asked."""
    found = {}
    with reader(browser, site) as at, reader(browser, site, script=False) as plain:
        for path in lessons_to_open(site, thorough):
            plain.page.goto(address_of(site, path))
            at.page.goto(address_of(site, path))
            found[path] = _visited(at.page, _without_script(plain.page))
    assert found
    return found


def _visited(page: Page, plain: Plain) -> Visit:
    text = str(page.evaluate(TEXT))
    offered: dict[int, list[str]] = {}
    bottoms: dict[tuple[int, str], float | None] = {}
    broken: dict[int, list[str]] = {}
    for width in (PHONE, WIDE):
        page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
        offered[width] = page.locator(".start li").all_inner_texts()
        reach = page.evaluate(BOTTOMS, list(FIRST_SCREEN))
        bottoms |= {(width, part): at for part, at in zip(FIRST_SCREEN, reach, strict=True)}
    to_get, short = (page.locator(one).count() for one in (".get li", ".short-lines li"))
    page.evaluate("document.documentElement.dataset.whole = ''")
    for width in (WIDE, PHONE, NARROW):
        page.set_viewport_size({"width": width, "height": PHONE_HEIGHT})
        broken[width] = page.evaluate(BROKEN)
    page.evaluate("document.querySelector('.rows dt').style.width = '0'")
    return Visit(offered, bottoms, to_get, short, broken, page.evaluate(BROKEN), text, plain)


def _without_script(page: Page) -> Plain:
    text = str(page.evaluate(TEXT))
    offered = [one.inner_text() for one in page.locator(".start li").all() if one.is_visible()]
    buttons = len([one for one in page.locator("main button").all() if one.is_visible()])
    steps, tasks = (page.locator(one).count() for one in (".step", ".step .task"))
    folded = page.locator(FOLDED).count()
    page.locator("details.range summary").first.click()
    return Plain(offered, steps, tasks, buttons, folded - page.locator(FOLDED).count(), text)


def ways(offered: list[str]) -> list[str]:
    return [words.partition(":")[0] for words in offered]


def test_a_lessons_first_screen_says_what_is_made_and_what_to_get_and_offers_four_ways_on(
    visits: dict[str, Visit],
) -> None:
    """On a phone and on a large screen."""
    for path, one in visits.items():
        assert [ways(offered) for offered in one.offered.values()] == [CHOICES] * 2, path
        for part, bottom in one.bottoms.items():
            assert bottom is not None, (path, part)
            assert bottom <= PHONE_HEIGHT, (path, part)
        assert one.to_get <= 5, path
        assert 1 <= one.short_lines <= 7, path


def test_no_label_is_broken_within_a_word_on_the_narrowest_screen_too(
    browser: Browser, site: Path, visits: dict[str, Visit]
) -> None:
    assert {
        path: found for path, one in visits.items() if any((found := one.broken).values())
    } == {}
    # the look is at the labels: one squeezed to a letter a line is noticed
    with reader(browser, site) as at:
        at.page.goto(address_of(site, next(iter(visits))))
        at.page.evaluate("document.documentElement.dataset.whole = ''")
        at.page.evaluate("document.querySelector('.rows dt').style.width = '0'")
        assert len(at.page.evaluate(BROKEN)) == 1


def test_without_script_a_lesson_is_whole_and_offers_nothing_that_does_not_work(
    visits: dict[str, Visit],
) -> None:
    for path, one in visits.items():
        assert ways(one.plain.offered) == ["Teach it, step by step", "On the wall"], path
        assert one.plain.tasks == one.plain.steps > 0, path
        assert one.plain.buttons == 0, path
        assert one.plain.unfolded_by_a_click == 1, path


def test_every_lesson_reads_the_same_without_script(visits: dict[str, Visit]) -> None:
    for path, one in visits.items():
        assert len(one.text) > 2000, path
        assert one.text == one.plain.text, path
