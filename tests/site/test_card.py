"""The card in a real browser: the time it takes, what it says when late, and that it never fails.

Sources: WCAG 2.2, success criteria 2.5.5 Target Size (Enhanced), 44 px; 1.4.12 Text Spacing;
1.4.10 Reflow, 320 px. Common practice, no source: 28 px type is read from a phone at arm's length;
a teacher says the time on a clock of twelve hours.
"""

from __future__ import annotations

import datetime
import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.support import axe
from tests.support.browser import address_of
from tests.support.built_sites import heaviest, heaviest_of_each_unit, lesson_pages
from tests.support.hall import (
    KEY,
    LETTERS_APART,
    REFUSED,
    TEN_PAST_ONE,
    font_sizes,
    opened,
    small_targets,
)
from tests.support.sound_bank import whole_bank

CARD = "units/rock-pool/lesson-3.html#card"
SAFE = ("warm-up", "cool-down", "look and talk")
LOCK = """
window.asked = 0;
Object.defineProperty(navigator, "wakeLock", { value: { request: async () => {
  window.asked += 1;
  if (%s) throw new DOMException("low battery", "NotAllowedError");
  window.lock = { released: false, release: async () => { window.lock.released = true; } };
  return window.lock;
} } });
"""


def start(page: Page) -> None:
    page.get_by_role("button", name="Start", exact=True).click()


def heading(page: Page) -> str:
    return page.locator(".step-card[data-now] h2").inner_text()


def pace(page: Page) -> str:
    return page.locator("[data-pace]").inner_text()


def on(page: Page, minutes: float) -> None:
    page.clock.fast_forward(round(minutes * 60_000))


def tap(page: Page, name: str) -> None:
    page.get_by_role("button", name=name, exact=True).click()


def test_start_takes_the_real_time_and_says_when_to_finish(browser: Browser, site: Path) -> None:
    with opened(browser, site, CARD) as at:
        expect(at.page.locator("[data-would-finish]")).to_have_text("Finish by 1.52")
        on(at.page, 2)
        expect(at.page.locator("[data-would-finish]")).to_have_text("Finish by 1.54")
        start(at.page)
        expect(at.page.locator("[data-finish]")).to_have_text("Finish by 1.54")
        assert heading(at.page) == "Side-step, bend, stop and bounce softly"
        assert at.said == []


@pytest.mark.parametrize(
    ("hour", "minute", "finish"),
    [
        (12, 20, "1.05"),
        pytest.param(11, 30, "12.15", marks=pytest.mark.thorough),
        pytest.param(8, 15, "9.00", marks=pytest.mark.thorough),
    ],
)
def test_the_clock_has_twelve_hours(
    browser: Browser, site: Path, hour: int, minute: int, finish: str
) -> None:
    time = TEN_PAST_ONE.replace(hour=hour, minute=minute)
    with opened(browser, site, CARD, time=time) as at:
        start(at.page)
        expect(at.page.locator("[data-finish]")).to_have_text(f"Finish by {finish}")


def test_it_says_how_far_behind_or_ahead_in_words_and_with_a_bar(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        start(page)
        bar = page.locator("[data-bar]")
        on(page, 4.5)
        assert pace(page) == "On time"
        assert bar.get_attribute("width") == "0"
        on(page, 3)
        assert pace(page) == "2 minutes behind"
        assert (bar.get_attribute("x"), bar.get_attribute("width")) == ("100", "20")
        tap(page, "Next")
        tap(page, "Next")
        assert pace(page) == "1 minute ahead"
        assert (bar.get_attribute("x"), bar.get_attribute("width")) == ("90", "10")


def test_it_never_goes_on_by_itself_and_makes_no_sound(browser: Browser, site: Path) -> None:
    listen = (
        "window.heard = 0; window.AudioContext = class { constructor() { window.heard += 1; } };"
    )
    with opened(browser, site, CARD, extra_script=listen) as at:
        start(at.page)
        on(at.page, 70)
        assert heading(at.page) == "Side-step, bend, stop and bounce softly"
        assert "its time is over" in at.page.locator(".step-card[data-now] .where").inner_text()
        assert at.page.evaluate("window.heard") == 0


def test_a_step_jumped_over_is_not_counted_as_taught(browser: Browser, site: Path) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        start(page)
        on(page, 5)
        tap(page, "Next")
        tap(page, "Next")  # the recall is jumped over
        assert pace(page) in ("3 minutes ahead", "4 minutes ahead")
        for _ in range(5):
            on(page, 4)
            tap(page, "Next")
        on(page, 3)
        tap(page, "End")
        assert page.locator("[data-untaught]").inner_text() == (
            "Not taught: Dance the anemones again."
        )
        assert page.locator("[data-ended]").inner_text().startswith("It ended at 1.35; 1.52")
        assert page.get_by_text("Did you see it?").is_visible()


def test_back_pause_a_minute_more_and_undo_are_reached_by_tab_too(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        start(page)
        on(page, 5)
        tap(page, "Next")
        first = heading(page)
        tap(page, "Back")
        assert heading(page) != first
        tap(page, "Next")
        assert heading(page) == first
        tap(page, "Pause")
        on(page, 3)
        assert pace(page) in ("Paused. 3 minutes behind", "Paused. 2 minutes behind")
        tap(page, "Go on")
        on(page, 4)
        late = int(pace(page).split()[0])
        tap(page, "+1 minute")
        on(page, 0.1)
        assert int(pace(page).split()[0]) == late + 1
        tap(page, "Undo")
        on(page, 0)
        assert int(pace(page).split()[0]) == late
        assert page.get_by_role("button", name="Undo").count() == 0
        page.locator("main").focus()
        reached: list[str] = []
        for _ in range(20):
            page.keyboard.press("Tab")
            reached.append(page.evaluate("document.activeElement.textContent.trim()"))
        for name in ("If …", "Pause", "+1 minute", "Make up time", "Next", "All steps"):
            assert name in reached


def test_catch_up_says_in_one_line_what_it_changed_and_can_be_undone(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        start(page)
        tap(page, "Make up time")
        changed = page.locator("[data-change]")
        assert changed.inner_text() == "You are not behind. Nothing is changed."
        on(page, 7)
        tap(page, "Next")
        tap(page, "Make up time")
        assert changed.inner_text().startswith("Shorter: ")
        assert "Left out" not in changed.inner_text()
        assert pace(page) == "On time"
        tap(page, "Undo")
        assert pace(page) == "2 minutes behind"
        on(page, 8)
        tap(page, "Make up time")
        assert "Left out: Dance the crabs' meeting." in changed.inner_text()
        assert "Leave out rehearsing." in changed.inner_text()
        page.get_by_text("All steps").click()
        left = page.locator("[data-list] li", has_text="Dance the crabs' meeting")
        assert left.inner_text().endswith("left out")
        page.keyboard.press("Escape")
        for _ in range(3):
            on(page, 1)
            tap(page, "Next")
        assert heading(page) == "Answer it bigger or smaller"
        tap(page, "Next")
        assert heading(page) == "Watch another pair's crabs"


CATCH_UP = """
(html) => {
  const { card } = window.danceUnitBank.hall;
  const facts = window.danceUnitBank.stepFacts(new DOMParser().parseFromString(html, "text/html"));
  const of = (step) => facts.find((one) => one.number === step);
  const planned = facts.map((one) => ({ step: one.number, minutes: one.minutes }));
  const all = planned.reduce((sum, one) => sum + one.minutes, 0);
  const found = [];
  for (let at = 0; at < facts.length; at += 1) {
    for (const late of [1, 2, 3.5, 5, 8, 13, 20, 60]) {
      for (const had of [0, 1.25, 4]) {
        let state = card.start(card.fresh("day", 0, planned, all), 0);
        const before = planned.slice(0, at).reduce((sum, one) => sum + one.minutes, 0) + late;
        if (at) state = card.go(state, at, before * 60000);
        const now = (before + had) * 60000;
        if (card.behind(state, now) < 60000) continue;
        const { state: after, left, over } = card.catchUp(state, of, now);
        found.push({
          at, late, had, over,
          behind: card.behind(after, now),
          left: left.map((index) => ({ ...facts[index], index })),
          rest: after.plan.slice(at + 1).map((one) => ({
            phase: of(one.step).phase, minutes: one.time / 60000,
            least: of(one.step).least,
            planned: of(one.step).minutes, left: one.left, canWait: of(one.step).canWait,
          })),
        });
      }
    }
  }
  return found;
}
"""


def one_that_can_wait() -> str:
    """The page of a lesson of which a step can wait, which the heaviest may not have."""
    return next(
        f"units/{unit.slug}/lesson-{lesson.number}.html"
        for unit in whole_bank().units
        for lesson in unit.lessons
        if any(step.can_wait for step in lesson.steps)
    )


def test_catch_up_never_cuts_warm_up_cool_down_or_the_closing_question(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """At every step, a little late to an hour late: on the heaviest lessons, or on every one."""
    every = lesson_pages(site)
    cards = every if thorough else [*heaviest_of_each_unit(site, every), one_that_can_wait()]
    waited, cut = 0, 0
    cases: list[tuple[str, dict[str, Any]]] = []
    with opened(browser, site, CARD) as at:
        for path in cards:
            html = (site / path).read_text(encoding="utf-8")
            found: list[dict[str, Any]] = at.page.evaluate(CATCH_UP, html)
            assert len(found) > 100
            cases += [(path, case) for case in found]
    for name, case in cases:
        steps, where = case["rest"], (name, case["at"], case["late"], case["had"])
        looking = [n for n, one in enumerate(steps) if one["phase"] == "look and talk"]
        for n, one in enumerate(steps):
            closing = one["phase"] in ("warm-up", "cool-down") or n in looking[-1:]
            assert not (closing and one["left"]), where
            assert one["left"] or one["minutes"] >= min(one["least"], one["planned"]), where
            assert one["minutes"] <= one["planned"] or not one["left"], where
        cut += len(case["left"])
        waited += len([one for one in case["left"] if one["canWait"]])
        # others are left out only after all that can wait
        if any(not one["canWait"] for one in case["left"]):
            assert all(one["left"] for one in steps if one["canWait"]), where
        if not case["over"]:
            assert abs(case["behind"]) < 1000, where
    assert waited > 0
    assert cut > waited


def test_a_lesson_is_taught_with_keys_alone(browser: Browser, site: Path) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        keys = page.keyboard
        keys.press("Tab")
        keys.press("Escape")
        page.locator("main").focus()
        keys.press(" ")
        expect(page.locator("[data-finish]")).to_have_text("Finish by 1.52")
        page.locator("main").focus()
        keys.press(" ")
        assert page.get_by_role("button", name="Go on").is_visible()
        keys.press(" ")
        assert page.get_by_role("button", name="Pause").is_visible()
        seen = [heading(page)]
        for key in ("ArrowRight", "PageDown", "b", ".", "ArrowLeft", "PageUp", "PageDown"):
            keys.press(key)
            seen.append(heading(page))
        assert [seen.index(name) for name in seen] == [0, 1, 2, 2, 2, 1, 0, 1]
        on(page, 0)
        page.locator("[data-if]").focus()
        keys.press("Enter")
        assert page.get_by_text("It gets silly").is_visible()
        keys.press("Escape")
        assert not page.get_by_text("It gets silly").is_visible()
        for _ in range(8):
            keys.press("PageDown")
        assert page.locator("[data-ended]").is_visible()
        keys.press("PageDown")
        assert page.locator("[data-ended]").is_visible()
        keys.press("ArrowLeft")
        assert heading(page) == "Hide, stretch and breathe"
        assert at.said == []


def test_it_survives_a_reload_and_another_day_or_lesson_starts_fresh(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        start(page)
        on(page, 8)
        tap(page, "Next")
        tap(page, "Pause")
        before = heading(page)
        page.reload()
        assert heading(page) == before
        expect(page.locator("[data-finish]")).to_have_text("Finish by 1.52")
        assert pace(page) == "Paused. 3 minutes behind"
        page.clock.set_system_time(TEN_PAST_ONE + datetime.timedelta(days=1))
        page.reload()
        assert page.get_by_role("button", name="Start", exact=True).is_visible()
        assert page.locator(".step-card[data-now]").count() == 0
        start(page)
        page.goto(page.url.replace("lesson-3", "lesson-2"))
        assert page.get_by_role("button", name="Start", exact=True).is_visible()


KEPT_WRONG: list[Any] = [
    7,
    {"day": "2026-11-25"},
    {"day": "2026-11-25", "plan": [{"step": 99, "time": 1, "left": False}], "at": 0},
    {"day": "2026-11-25", "plan": [], "at": -4, "spent": "x"},
]


@pytest.mark.parametrize(
    "kept",
    [*(pytest.param(one, marks=pytest.mark.thorough) for one in KEPT_WRONG[:3]), *KEPT_WRONG[3:]],
)
def test_a_kept_card_that_makes_no_sense_starts_fresh(
    browser: Browser, site: Path, kept: object
) -> None:
    held = json.dumps({"version": 1, "kept": {"card/rock-pool/3": kept}})
    plant = f"localStorage.setItem({json.dumps(KEY)}, {json.dumps(held)});"
    with opened(browser, site, CARD, extra_script=plant) as at:
        start(at.page)
        assert heading(at.page) == "Side-step, bend, stop and bounce softly"
        assert at.said == []


def test_a_spoilt_store_gets_a_plain_sentence_and_a_working_card(
    browser: Browser, site: Path
) -> None:
    plant = f"localStorage.setItem({json.dumps(KEY)}, '{{nonsense');"
    with opened(browser, site, CARD, extra_script=plant) as at:
        assert "could not be read" in at.page.locator("[data-said]").inner_text()
        start(at.page)
        expect(at.page.locator("[data-finish]")).to_have_text("Finish by 1.52")


@pytest.mark.parametrize(
    "fragment",
    [
        "&fit=5-9-0-0-moon&last=%",
        pytest.param("&fit=x", marks=pytest.mark.thorough),
        pytest.param("&last=perhaps", marks=pytest.mark.thorough),
    ],
)
def test_a_nonsense_address_gets_a_plain_sentence_and_a_working_card(
    browser: Browser, site: Path, fragment: str
) -> None:
    with opened(browser, site, CARD + fragment) as at:
        assert "could not be read" in at.page.locator("[data-said]").inner_text()
        start(at.page)
        expect(at.page.locator("[data-finish]")).to_have_text("Finish by 1.52")


def test_where_storage_is_refused_the_card_works_until_it_is_closed(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD, extra_script=REFUSED) as at:
        start(at.page)
        on(at.page, 5)
        tap(at.page, "Next")
        assert heading(at.page) == "Dance the anemones again"
        assert "keeps nothing" in at.page.locator("[data-said]").inner_text()


def test_the_screen_stays_awake_and_is_asked_again_when_the_page_is_seen_again(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, CARD, extra_script=LOCK % "false") as at:
        page = at.page
        assert page.evaluate("window.asked") == 0
        start(page)
        page.wait_for_function("window.asked === 1")
        assert page.locator("[data-said]").inner_text() == ""
        # a browser lets go of the lock when the page is hidden
        page.evaluate("window.lock.released = true")
        page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
        page.wait_for_function("window.asked === 2")
        page.reload()
        page.wait_for_function("window.asked === 1")
        for _ in range(9):
            page.keyboard.press("PageDown")
        page.wait_for_function("window.lock.released")


@pytest.mark.parametrize(
    "lock",
    [
        LOCK % "true",
        pytest.param(
            "Object.defineProperty(navigator, 'wakeLock', { value: undefined });",
            marks=pytest.mark.thorough,
        ),
    ],
    ids=["refused", "absent"],
)
def test_without_the_lock_there_is_one_quiet_line(browser: Browser, site: Path, lock: str) -> None:
    with opened(browser, site, CARD, extra_script=lock) as at:
        start(at.page)
        expect(at.page.locator("[data-said]")).to_contain_text("may let its screen go dark")
        assert at.said == []


def test_it_follows_the_fitted_lesson(browser: Browser, site: Path) -> None:
    with opened(browser, site, f"{CARD}&fit=45-8-27-2-half") as at:
        page = at.page
        assert "37 minutes to teach" in page.locator("[data-plan]").inner_text()
        page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        start(page)
        expect(page.locator("[data-finish]")).to_have_text("Finish by 1.44")
        shares: list[int] = page.evaluate(
            "danceUnitBank.sums.lessonToday(danceUnitBank.stepFacts(document), "
            "danceUnitBank.settings.fit()).sittings[0].map((one) => one.minutes)"
        )
        for share in shares:
            where = page.locator(".step-card[data-now] .where").inner_text()
            assert f"{share} minutes left" in where
            if "Step 4" in where:
                assert "Twelve pairs and one three" in where
            page.keyboard.press("PageDown")
        href = page.locator(".panel .ways a").first.get_attribute("href")
        assert href == "wall.html#lesson-3&fit=45-8-27-2-half"


def test_a_lesson_too_long_for_its_slot_is_taught_in_two_sittings(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, f"{CARD}&fit=28-4-27-0-full") as at:
        page = at.page
        assert "two sittings of 24 minutes" in page.locator("[data-plan]").inner_text()
        tap(page, "Second sitting")
        start(page)
        expect(page.locator("[data-finish]")).to_have_text("Finish by 1.31")
        headings = []
        while page.locator(".step-card[data-now]").count():
            headings.append(heading(page))
            page.keyboard.press("PageDown")
        assert headings[:2] == [
            "Side-step, bend, stop and bounce softly",
            "Dance again what you made",
        ]
        assert headings[-2:] == ["Watch another pair's crabs", "Hide, stretch and breathe"]


def test_what_is_read_is_large_and_what_is_pressed_is_large(browser: Browser, site: Path) -> None:
    with opened(browser, site, CARD) as at:
        page = at.page
        assert small_targets(page) == []
        start(page)
        # what is said can be read at arm's length; the rest makes way for it, so that a step is
        # one screen
        assert min(font_sizes(page.locator(".step-card .say"))) >= 28
        page.keyboard.press("PageDown")
        for summary in page.locator(".step-card[data-now] summary").all():
            summary.click()
        held = page.locator(
            ".step-card h2, .step-card p:not(.where, .can-wait, .strip-name), .step-card p > b, "
            ".step-card strong, .step-card summary, .finish, .panel dd, .panel dt"
        )
        page.locator("[data-if]").click()
        expect(page.locator("[data-trouble]")).to_contain_text("Every time: floor clear")
        assert len(font_sizes(held)) > 15
        assert min(font_sizes(held)) >= 19.9
        assert small_targets(page) == []
        page.get_by_text("All steps").click()
        assert small_targets(page) == []
        for _ in range(9):
            page.keyboard.press("PageDown")
        assert small_targets(page) == []


UNDER_THE_BAR = """
() => {
  const said = document.querySelector(".step-card[data-now] .say");
  const bar = document.querySelector(".bar").getBoundingClientRect();
  return said ? said.getBoundingClientRect().bottom - bar.top : 0;
}
"""


def test_on_a_phone_what_is_said_is_seen_without_scrolling(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """On a small phone too, 390 x 664 between the browser's own bars."""
    low = {}
    every = lesson_pages(site)
    with opened(browser, site, CARD, size=(390, 664)) as at:
        for path in every if thorough else heaviest(site, every):
            at.page.goto(address_of(site, f"{path}#card"))
            start(at.page)
            for _ in range(at.page.locator(".step-card[data-minutes]").count()):
                over = at.page.evaluate(UNDER_THE_BAR)
                if over > 1:
                    low[path, heading(at.page)] = over
                at.page.keyboard.press("PageDown")
    assert low == {}


@pytest.mark.parametrize(("width", "dark"), axe.looks(1280, 768, 320))
def test_the_card_breaks_no_rule_of_access(
    browser: Browser, site: Path, width: int, dark: bool
) -> None:
    with opened(
        browser,
        site,
        CARD,
        size=(width, 800),
        dark=dark,
        extra_script=axe.source(),
    ) as at:
        page = at.page
        faults: list[str] = []

        def look() -> None:
            # axe-core waits for timers, which stand still while the clock is ours.
            page.clock.resume()
            page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
            # What lies half under the bar just now can be scrolled out from under it.
            page.evaluate("document.querySelector('.bar').style.position = 'static'")
            found = axe.run(page)
            faults.extend(str(fault) for fault in found.violations)
            unsure = [one for one in found.incomplete if one.rule != "color-contrast"]
            faults.extend(f"for people to judge: {one}" for one in unsure)
            assert page.evaluate("document.documentElement.scrollWidth") <= width
            page.evaluate(
                "for (const one of document.querySelectorAll('details')) one.open = false"
            )
            page.evaluate("document.querySelector('.bar').style.position = ''")

        # Before it starts it is looked at in test_every_page.py.
        start(page)
        on(page, 9)
        tap(page, "Next")
        tap(page, "Make up time")
        look()
        for _ in range(9):
            page.keyboard.press("PageDown")
        look()
        assert faults == []


@pytest.mark.parametrize("width", [pytest.param(390, marks=pytest.mark.thorough), 320])
def test_with_letters_set_apart_nothing_is_cut_off(
    browser: Browser, site: Path, width: int
) -> None:
    with opened(browser, site, CARD, size=(width, 800)) as at:
        start(at.page)
        at.page.evaluate(LETTERS_APART)
        assert at.page.evaluate("document.documentElement.scrollWidth") <= width
        clipped = at.page.evaluate(
            "[...document.querySelectorAll('button, .step-card p, h2')]"
            ".filter(one => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)"
            ".map(one => one.textContent)"
        )
        assert clipped == []
