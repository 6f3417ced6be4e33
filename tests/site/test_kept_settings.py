"""What a page keeps is said on it and can be let go; it goes when the school year ends."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Locator, Page

from build_tools.disk.places import OVERRIDES
from tests.site.test_one_file import as_made_here
from tests.support.browser import Reader, address_of, reader
from tests.support.firefox import Firefox
from tests.support.settings_page import PAGE, settings_page
from tests.support.tabs import wait_for

KEY = "dance-unit-bank"
SLUG = "rock-pool"
UNIT = f"units/{SLUG}"
LESSON, CARD, WALL = (
    f"{UNIT}/lesson-2.html",
    f"{UNIT}/lesson-2.html#card",
    f"{UNIT}/wall.html#lesson-2",
)
OTHERS = [pytest.param(path, marks=pytest.mark.thorough) for path in (CARD, WALL)]
FIT = {"available": 38, "changing": 7, "dancing": 25, "watching": 2, "space": "half"}
STORES = re.compile(
    r"localStorage|sessionStorage|indexedDB|document\.cookie|\bcaches\b|openDatabase"
)
BEGUN = "2026-11-28T10:00:00"
KEEP_ALL = """
(fit) => {
  const { settings } = danceUnitBank;
  const kept = [settings.keepFit(fit), settings.keepSeen("rock-pool", 2, "seen"),
    settings.keep("card/rock-pool/2", { day: "2026-11-28", at: 3 }),
    settings.keep("wall/rock-pool/2", { day: "2026-11-28", at: 4 })];
  if (kept.includes(false)) throw new Error("not kept");
}
"""


@pytest.fixture(scope="module")
def small(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A page of nothing but what keeps settings."""
    return settings_page(tmp_path_factory.mktemp("settings"))


def part(page: Page) -> Locator:
    return page.locator('[data-part="kept"]')


def opened(page: Page) -> Locator:
    if page.locator("[data-steps] > summary").count():
        page.locator("[data-steps] > summary").click()
    part(page).locator("summary").click()
    return part(page)


def lines(page: Page) -> list[str]:
    return part(page).locator("li").all_inner_texts()


def kept_in(page: Page) -> Any:
    return json.loads(page.evaluate(f"localStorage.getItem('{KEY}')") or "null")


def keep_all(seen: Reader, site: Path) -> None:
    """Use a lesson, its card and its wall as a teacher does in a day."""
    page = seen.page
    page.goto(address_of(site, LESSON))
    page.evaluate(f"danceUnitBank.settings.keepFit({json.dumps(FIT)})")
    page.get_by_role("group", name="Did you see it?").get_by_role("button", name="Seen").click()
    page.goto(address_of(site, WALL))
    page.get_by_role("button", name="Next").click()
    page.goto(address_of(site, CARD))
    page.get_by_role("button", name="Start", exact=True).click()


def test_only_one_file_keeps_anything_and_it_keeps_one_thing() -> None:
    """So what the pages say of it is all there is."""
    found = {
        path.relative_to(OVERRIDES).as_posix(): set(STORES.findall(text))
        for path in sorted(OVERRIDES.rglob("*"))
        if path.suffix in (".js", ".html") and STORES.search(text := path.read_text("utf-8"))
    }
    assert found == {"sums/settings.js": {"localStorage"}}
    text = (OVERRIDES / "sums" / "settings.js").read_text("utf-8")
    assert set(re.findall(r"(?:get|set|remove)Item\((\w+)", text)) == {"KEY"}


_COUNTED = ("to-print.html", "dance.html")


def test_every_page_that_can_keep_something_says_so_and_no_other(site: Path) -> None:
    with_part, with_settings = set(), set()
    for path in site.rglob("*.html"):
        text = path.read_text("utf-8")
        name = path.relative_to(site).as_posix()
        scripts = re.findall(r'src="?[^" >]*assets/js/([^" >]+)', text)
        if any(KEY in (site / "assets" / "js" / one).read_text("utf-8") for one in scripts):
            with_settings.add(name)
        if re.search(r'data-part="?kept\b', text):
            with_part.add(name)
    assert {LESSON, f"{UNIT}/wall.html"} <= with_part
    # What is printed is counted for the class that was kept, and keeps nothing itself.
    only_read = {name for name in with_settings if name.endswith(_COUNTED)}
    assert with_part == with_settings - only_read


@pytest.mark.parametrize("path", [LESSON, *OTHERS])
def test_it_says_what_is_kept_and_until_when_and_lets_it_go(
    browser: Browser, site: Path, path: str
) -> None:
    with reader(browser, site) as seen:
        page = seen.page
        page.clock.install(time=BEGUN)
        page.goto(address_of(site, path))
        opened(page)
        assert lines(page) == ["Nothing so far."]
        assert page.get_by_role("button", name="Forget all of it").is_disabled()
        keep_all(seen, site)
        page.goto(f"{address_of(site, path)}{'&' if '#' in path else '#'}fit=38-7-25-2-half")
        if path == WALL:
            page.get_by_role("button", name="Back").click()
        opened(page)
        assert lines(page) == [
            "The time, class and space you fit lessons to: 38 minutes, 7 of them changing, "
            "and 25 dancing.",
            "Seen or not yet, as you marked it for 1 lesson.",
            "Where you are today on the card of 1 lesson, with its times.",
            "Where you are today on the wall of 1 lesson.",
        ]
        assert "goes after 31 August 2027" in part(page).inner_text()
        for width in (1280, 390):
            page.set_viewport_size({"width": width, "height": 900})
            assert page.evaluate("document.documentElement.scrollWidth") <= width
        page.get_by_role("button", name="Forget all of it").click()
        assert part(page).get_by_role("status").inner_text() == "Forgotten."
        assert lines(page) == ["Nothing so far."]
        assert page.evaluate("localStorage.length") == 0
        assert "fit" not in page.url.partition("#")[2]
        page.reload()
        assert page.evaluate("danceUnitBank.settings.fit()") is None
        assert page.evaluate("danceUnitBank.settings.seen('rock-pool', 2)") is None
        assert page.evaluate("localStorage.length") == 0
        assert not seen.violations()
        assert [line for line in seen.said if line.startswith(("error", "uncaught"))] == []


def test_what_is_forgotten_here_is_forgotten_on_every_open_page(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site) as seen:
        seen.page.goto(address_of(site, LESSON))
        seen.page.evaluate(KEEP_ALL, FIT)
        other = seen.page.context.new_page()
        other.goto(address_of(site, LESSON) + "#fit=38-7-25-2-half")
        assert other.locator('.seen-here [aria-pressed="true"]').count() == 1
        seen.page.goto(address_of(site, f"{UNIT}/lesson-3.html"))
        opened(seen.page)
        seen.page.get_by_role("button", name="Forget all of it").click()
        other.wait_for_function("danceUnitBank.settings.fit() === null")
        assert "#" not in other.url
        assert other.locator('.seen-here [aria-pressed="true"]').count() == 0
        assert seen.page.evaluate("localStorage.length") == 0


LATER = {
    "2026-11-29T10:00:00": True,
    "2027-08-31T23:59:00": True,
    "2027-09-01T00:01:00": False,
    "2028-03-01T10:00:00": False,
    # a clock that went wrong when something was kept, and right again
    "2025-11-28T10:00:00": False,
}


def test_it_is_forgotten_when_the_school_year_ends(browser: Browser, small: Path) -> None:
    with reader(browser, small) as seen:
        page = seen.page
        page.clock.install(time=BEGUN)
        page.goto(address_of(small, PAGE))
        page.evaluate(KEEP_ALL, FIT)
        kept = page.evaluate(f"localStorage.getItem('{KEY}')")
        assert json.loads(kept)["day"] == "2026-11-28"
        for later, there in LATER.items():
            page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, kept])
            page.clock.set_system_time(later)
            page.goto("about:blank")
            page.goto(address_of(small, PAGE))
            seen_it = page.evaluate("danceUnitBank.settings.seen('rock-pool', 2)") == "seen"
            assert (page.evaluate("danceUnitBank.settings.fit()") == FIT) == there, later
            assert seen_it == there, later
            assert (page.evaluate("localStorage.length") == 1) == there, later
            # where somebody was on a card or a wall is of that day
            assert page.evaluate("danceUnitBank.settings.everything().kept") == {}
            assert page.evaluate("danceUnitBank.settings.trouble") == ""


def test_what_was_kept_before_days_were_written_down_is_dated_today(
    browser: Browser, small: Path
) -> None:
    with reader(browser, small) as seen:
        page = seen.page
        page.clock.install(time=BEGUN)
        page.goto(address_of(small, PAGE))
        old = json.dumps({"version": 1, "fit": FIT, "seen": {f"{SLUG}/2": "seen"}, "kept": {}})
        page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, old])
        page.reload()
        assert page.evaluate("danceUnitBank.settings.fit()") == FIT
        assert kept_in(page) == {"day": "2026-11-28"} | json.loads(old)


def test_a_day_that_is_none_is_over(browser: Browser, small: Path) -> None:
    with reader(browser, small) as seen:
        page = seen.page
        page.goto(address_of(small, PAGE))
        for day in ('"never"', "7", "null", "{}", '"9999-99-99"'):
            text = f'{{"version":1,"day":{day},"fit":{json.dumps(FIT)}}}'
            page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, text])
            page.reload()
            assert page.evaluate("danceUnitBank.settings.fit()") is None, day
            assert page.evaluate("localStorage.length") == 0, day


def test_where_the_browser_keeps_nothing_that_is_what_is_said(browser: Browser, site: Path) -> None:
    refusing = """Object.defineProperty(window, "localStorage", {
      get() { throw new DOMException("denied", "SecurityError"); },
    });"""
    with reader(browser, site, extra_script=refusing) as seen:
        page = seen.page
        page.goto(address_of(site, LESSON))
        page.evaluate(f"danceUnitBank.settings.keepFit({json.dumps(FIT)})")
        opened(page)
        assert "This browser keeps nothing" in part(page).inner_text()
        page.get_by_role("button", name="Forget all of it").click()
        assert page.evaluate("danceUnitBank.settings.fit()") is None
        assert lines(page) == ["Nothing so far."]


@pytest.mark.parametrize("path", [LESSON, *OTHERS])
def test_without_script_nothing_is_kept_and_nothing_is_said(
    browser: Browser, site: Path, path: str
) -> None:
    with reader(browser, site, script=False) as seen:
        seen.page.goto(address_of(site, path))
        assert part(seen.page).count() == 1
        assert not part(seen.page).is_visible()


@pytest.mark.parametrize("path", [LESSON, *OTHERS])
def test_it_is_no_part_of_the_print(browser: Browser, site: Path, path: str) -> None:
    with reader(browser, site) as seen:
        seen.page.goto(address_of(site, path))
        seen.page.emulate_media(media="print")
        assert not part(seen.page).is_visible()


def test_it_is_no_part_of_the_page_to_keep(site: Path) -> None:
    assert "this device keeps" not in as_made_here(site, f"{UNIT}/lesson-2.html")


@pytest.mark.thorough
def test_in_firefox_each_page_of_a_folder_lets_go_what_it_kept(
    firefox: Firefox, site: Path
) -> None:
    firefox.fresh()
    firefox.open(address_of(site, LESSON))
    assert firefox.evaluate(f"danceUnitBank.settings.keepFit({json.dumps(FIT)})")
    firefox.open(address_of(site, LESSON))
    assert firefox.evaluate("danceUnitBank.settings.fit()") == FIT
    firefox.click('[data-part="kept"] summary')
    assert "each page may keep it by itself" in firefox.evaluate(
        "document.querySelector('[data-part=kept]').innerText"
    )
    firefox.click("[data-part=kept] button")
    wait_for(firefox, "localStorage.length === 0")
    firefox.open(address_of(site, LESSON))
    assert firefox.evaluate("danceUnitBank.settings.fit()") is None
