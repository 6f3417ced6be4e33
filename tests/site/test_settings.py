"""A teacher's settings: kept, carried to the next page, and a working page whatever is found.

On a page of nothing but what keeps them; that a lesson's own page has it, on the published one.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser

from build_tools.views.lesson.step_facts import step_facts
from tests.support.banks import LOOKED_AT
from tests.support.browser import Reader, address_of, reader
from tests.support.settings_page import PAGE, settings_page
from tests.support.sound_bank import real_bank

LESSON_3 = PAGE
FIT = {"available": 38, "changing": 7, "dancing": 25, "watching": 2, "space": "half"}
CODE = "38-7-25-2-half"
KEY = "dance-unit-bank"
REFUSING = """
Object.defineProperty(window, "localStorage", {
  get() { throw new DOMException("denied", "SecurityError"); },
});
"""
FULL = (
    'Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); };'
)


@pytest.fixture(scope="module")
def small(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return settings_page(tmp_path_factory.mktemp("settings"))


FACTS = """
(html) => danceUnitBank.stepFacts(new DOMParser().parseFromString(html, "text/html"))
"""


@contextmanager
def lesson(
    browser: Browser,
    site: Path,
    fragment: str = "",
    extra: str = "",
    kept: str | None = None,
) -> Iterator[Reader]:
    """A fresh reader on lesson 3, with `kept` under the bank's key beforehand."""
    with reader(browser, site, extra_script=extra) as seen:
        if kept is not None:
            seen.page.goto(address_of(site, LESSON_3))
            seen.page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, kept])
        seen.page.goto(address_of(site, LESSON_3) + fragment)
        yield seen
        assert [line for line in seen.said if line.startswith(("error", "uncaught"))] == []


def said(seen: Reader, script: str) -> Any:
    return seen.page.evaluate(f"(() => {{ const s = window.danceUnitBank.settings; {script} }})()")


def kept_in(seen: Reader) -> Any:
    return json.loads(seen.page.evaluate(f"localStorage.getItem('{KEY}')"))


def carried(seen: Reader, file: str) -> str | None:
    return seen.page.locator(f'a[data-carry][href^="{file}"]').first.get_attribute("href")


def test_settings_are_kept_and_found_again(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        assert said(seen, "return s.fit();") is None
        assert said(seen, f"return s.keepFit({json.dumps(FIT)});") is True
        assert kept_in(seen) | {"day": ""} == {
            "version": 1,
            "day": "",
            "fit": FIT,
            "seen": {},
            "kept": {},
        }
        seen.page.reload()
        assert said(seen, "return [s.fit(), s.code(s.fit()), s.trouble];") == [FIT, CODE, ""]
        assert said(seen, "s.keepFit(null); return s.fit();") is None
        assert kept_in(seen)["fit"] is None


def test_settings_out_of_range_are_not_kept(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        for change in ({"available": 7}, {"dancing": 0}, {"space": "barn"}, {"watching": 1.5}):
            assert said(seen, f"return s.keepFit({json.dumps(FIT | change)});") is False
        assert said(seen, "return s.fit();") is None


def test_links_carry_the_settings_and_the_start_of_the_next_lesson(
    site: Path, browser: Browser
) -> None:
    with lesson(browser, site) as seen:
        said(seen, f"s.keepFit({json.dumps(FIT)}); s.keepSeen('rock-pool', 3, 'not-yet');")
        assert carried(seen, "lesson-4.html") == f"lesson-4.html#fit={CODE}&last=not-yet"
        assert carried(seen, "lesson-2.html") == f"lesson-2.html#fit={CODE}"
        assert said(seen, "return s.linked('lesson-4.html#at-steps');") == "lesson-4.html#at-steps"
        once = f"counts.html#fit={CODE}"
        assert said(seen, f"return s.linked(s.linked('{once}'));") == once
        seen.page.goto("about:blank")
        next_lesson = address_of(site, "units/rock-pool/lesson-4.html")
        seen.page.goto(f"{next_lesson}#fit={CODE}&last=not-yet")
        assert said(seen, "return [s.fit(), s.seen('rock-pool', 3)];") == [FIT, "not-yet"]
        said(seen, "s.keepFit(null); s.keepSeen('rock-pool', 3, null);")
        assert carried(seen, "lesson-5.html") == "lesson-5.html"


def test_the_address_wins_over_what_is_kept_and_a_place_on_the_page_loses_nothing(
    small: Path, browser: Browser
) -> None:
    other = json.dumps({"version": 1, "fit": FIT | {"dancing": 30}, "seen": {}, "kept": {}})
    with lesson(browser, small, f"#fit={CODE}", kept=other) as seen:
        assert said(seen, "return s.fit();") == FIT
        seen.page.evaluate("location.hash = '#at-content'")
        assert said(seen, "return [s.fit(), s.trouble];") == [FIT, ""]
        seen.page.reload()
        assert said(seen, "return s.fit();") == FIT


def test_a_changed_address_tells_those_who_listen(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        seen.page.evaluate("window.told = 0; danceUnitBank.settings.onChange(() => { told += 1; })")
        seen.page.evaluate(f"location.hash = '#fit={CODE}'")
        seen.page.wait_for_function("window.told === 1")
        said(seen, f"s.keepFit({json.dumps(FIT | {'dancing': 30})});")
        assert seen.page.evaluate("[told, location.hash]") == [2, "#fit=38-7-30-2-half"]


ODD_ADDRESSES = (
    *("#fit=", "#fit=99", "#fit=38-7-25-2-barn", "#last=perhaps", "#fit=%E0%A4%A"),
    "#fit=<b>&last=",
)


def test_nonsense_in_the_address_gets_a_plain_sentence(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        for fragment in ODD_ADDRESSES:
            seen.page.goto("about:blank")
            seen.page.goto(address_of(small, LESSON_3) + fragment)
            assert said(seen, "return s.fit();") is None, fragment
            assert said(seen, "return s.trouble;") == (
                "The settings in this page’s address could not be read, so they are left out."
            ), fragment
            assert said(seen, f"s.keepFit({json.dumps(FIT)}); return s.trouble;") == "", fragment
            said(seen, "s.forget();")


CORRUPT = (
    *("{", "null", "[]", '"x"', '{"version":2}', '{"version":1,"fit":{"available":"many"}}'),
    *('{"version":1,"fit":7}', '{"version":1,"seen":{"rock-pool/3":"maybe"}}', ""),
)


def test_corrupt_settings_are_as_if_there_were_none(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        for kept in CORRUPT:
            seen.page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, kept])
            seen.page.reload()
            found = said(seen, "return [s.fit(), s.seen('rock-pool', 3), s.get('tempo')];")
            assert found == [None] * 3, kept
            assert said(seen, "return s.trouble;").startswith("What was kept on this device"), kept
        assert said(seen, f"return s.keepFit({json.dumps(FIT)});") is True
        seen.page.reload()
        assert said(seen, "return [s.fit(), s.trouble];") == [FIT, ""]


@pytest.mark.parametrize("extra", [REFUSING, FULL], ids=["refused", "full"])
def test_where_nothing_can_be_kept_the_page_works_and_says_so(
    small: Path, browser: Browser, extra: str
) -> None:
    with lesson(browser, small, extra=extra) as seen:
        said(seen, f"s.keepFit({json.dumps(FIT)}); s.keepSeen('rock-pool', 3, 'seen');")
        said(seen, "s.keep('tempo', { beats: 96 });")
        assert said(seen, "return [s.fit(), s.seen('rock-pool', 3), s.get('tempo')];") == [
            FIT,
            "seen",
            {"beats": 96},
        ]
        assert said(seen, "return s.trouble;").startswith("This browser keeps nothing")
        assert carried(seen, "lesson-4.html") == f"lesson-4.html#fit={CODE}&last=seen"


def test_with_nothing_kept_the_address_holds_the_settings(small: Path, browser: Browser) -> None:
    with lesson(browser, small, extra=REFUSING) as seen:
        said(seen, f"s.keepFit({json.dumps(FIT)});")
        seen.page.reload()
        assert said(seen, "return s.fit();") == FIT


def test_other_parts_keep_what_they_like_by_name(small: Path, browser: Browser) -> None:
    with lesson(browser, small) as seen:
        said(seen, "s.keep('card/rock-pool/3', { started: 5, gone: [1, 2] });")
        seen.page.reload()
        assert said(seen, "return s.get('card/rock-pool/3');") == {"started": 5, "gone": [1, 2]}
        said(seen, "s.keep('card/rock-pool/3', null);")
        assert said(seen, "return s.get('card/rock-pool/3');") is None
        assert said(seen, "return s.get('__proto__');") is None


def test_the_page_says_of_its_steps_what_the_bank_knows(
    site: Path, browser: Browser, thorough: bool
) -> None:
    with lesson(browser, site) as seen:
        for unit in real_bank().units:
            if not thorough and unit.slug not in LOOKED_AT:
                continue
            for one in unit.lessons[:: 1 if thorough else 3]:
                path = site / "units" / unit.slug / f"lesson-{one.number}.html"
                found = seen.page.evaluate(FACTS, path.read_text(encoding="utf-8"))
                for facts, on_page in zip(step_facts(unit, one), found, strict=True):
                    shown = facts.showing
                    assert on_page == {
                        "number": facts.number,
                        "minutes": facts.minutes,
                        "least": facts.least,
                        "phase": facts.phase,
                        "grouping": facts.grouping,
                        "sits": facts.sits,
                        "shows": shown
                        and {"each": shown.each, "talk": shown.talk, "atOnce": shown.at_once},
                        "canWait": facts.can_wait,
                        "travels": facts.travels,
                        "parts": list(facts.parts),
                        "onSpots": facts.on_spots,
                        "stands": facts.stands,
                        "halves": facts.halves,
                        **({"before": list(facts.made_before)} if facts.made_before else {}),
                    }
