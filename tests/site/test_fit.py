"""Fit my lesson on the real pages: by keyboard, in print, carried on, and whatever is written.

What fits is asked of the sums apart from the page, which tests/sums holds to their laws and to an
independent solver. Text spacing: WCAG 2.2, success criterion 1.4.12; narrow
screens: 1.4.10; keyboard: 2.1.1. What a fit must keep, warm-up, cool-down and the closing question:
common practice, no source.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from contextlib import contextmanager
from html import unescape
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, expect

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.paths.hall import KNOWN_HALLS, Hall
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.lesson.class_groups import class_groups
from build_tools.views.lesson.odd_groups_said import odd_groups_said
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.paper.paper_size import on_paper
from build_tools.views.words.room_said import room_in_words
from tests.sums.page_facts import page_facts
from tests.support import axe
from tests.support.browser import Reader, address_of, reader
from tests.support.built_sites import part_of
from tests.support.page_script import ask
from tests.support.paper import printed, squeezed
from tests.support.sound_bank import real_bank, whole_bank

LESSON_3 = "units/rock-pool/lesson-3.html"
CODE = "33-7-25-2-half"
ROOMY = "45-7-25-2-half"
REFUSING = """
Object.defineProperty(window, "localStorage", {
  get() { throw new DOMException("denied", "SecurityError"); },
});
"""
NO_CLIPBOARD = """
Object.defineProperty(navigator, "clipboard", {
  configurable: true,
  value: { writeText: () => Promise.reject(new DOMException("denied", "NotAllowedError")) },
});
"""
CLIPBOARD = """
Object.defineProperty(navigator, "clipboard", {
  configurable: true,
  value: { writeText: async (text) => { window.copiedText = text; } },
});
"""
# The minutes of each step as the page says them, and the short lines.
RESULT = ".fit-minutes .time"
"""What is told of a fitted lesson comes with the floor, a moment after the page."""
ON_PAGE = """
() => ({
  steps: [...document.querySelectorAll(".step")].map((step) => [
    step.querySelector(".time").textContent, step.querySelector(".minutes").textContent]),
  short: [...document.querySelectorAll(".short-lines li")].map((line) => line.innerText.trim()),
  whole: document.querySelector(".first .facts strong").textContent.replace("\\u00a0", " "),
  tries: [...document.querySelectorAll(".step")].map(
    (step) => step.querySelector(".tries")?.textContent ?? null),
  result: [...document.querySelectorAll(".fit-minutes .time")].map((time) => time.textContent),
})
"""
SPACED = """
() => {
  for (const element of document.querySelectorAll("body *")) {
    element.style.setProperty("line-height", "1.5", "important");
    element.style.setProperty("letter-spacing", "0.12em", "important");
    element.style.setProperty("word-spacing", "0.16em", "important");
    if (element.matches("p")) element.style.setProperty("margin-bottom", "2em", "important");
  }
}
"""
CLIPPED = """
() => [...document.querySelectorAll("main :is(p, dd, dt, li, label, button, summary, h2, h3, h4)")]
  .filter((one) => one.getClientRects().length && !one.closest(".aside"))
  .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth
    && getComputedStyle(one).overflowX !== "visible")
  .map((one) => one.outerHTML.slice(0, 80))
"""


@contextmanager
def lesson(
    browser: Browser,
    site: Path,
    fragment: str = "",
    path: str = LESSON_3,
    **how: Any,
) -> Iterator[Reader]:
    """A fresh reader on a lesson, where nothing is complained of from beginning to end."""
    with reader(browser, site, **how) as seen:
        seen.page.goto(address_of(site, path, served=bool(how.get("served"))) + fragment)
        yield seen
        no_complaints(seen)


def no_complaints(seen: Reader) -> None:
    assert [line for line in seen.said if line.startswith(("error", "uncaught"))] == []
    assert seen.violations() == []


def visit(seen: Reader, site: Path, path: str, fragment: str) -> None:
    """Another page in the same window, or the same with another fragment, opened anew."""
    no_complaints(seen)
    seen.page.goto("about:blank")
    seen.page.goto(f"{address_of(site, path)}{fragment}")


def lessons() -> Iterator[tuple[str, Unit, Lesson]]:
    for unit in real_bank().units:
        for one in unit.lessons:
            yield f"units/{unit.slug}/lesson-{one.number}.html", unit, one


def the_lesson(path: str) -> tuple[Unit, Lesson]:
    return next((unit, one) for found, unit, one in lessons() if found == path)


def fitted_to(seen: Reader, code: str) -> Any:
    seen.page.evaluate(
        f"(({{ settings }}) => settings.keepFit(settings.fromCode('{code}')))(window.danceUnitBank)"
    )
    return seen.page.evaluate(ON_PAGE)


def times(shares: list[int]) -> list[str]:
    ends = [sum(shares[: n + 1]) for n in range(len(shares))]
    return [f"{end - share} to {end}" for share, end in zip(shares, ends, strict=True)]


def beside(seen: Reader, field: str) -> str:
    # What is due at once comes by a timer of no length, which goes before this one.
    seen.page.evaluate("new Promise((done) => setTimeout(done, 0))")
    place = seen.page.locator(f"#at-fit-{field}-said")
    return place.text_content() or ""


def said(seen: Reader) -> str:
    return seen.page.locator("[data-fit-said]").inner_text()


def test_nothing_is_asked_before_it_shows_a_code_is_taken_in_and_without_script_is_nothing(
    site: Path, browser: Browser
) -> None:
    with lesson(browser, site) as seen:
        assert seen.page.locator("#at-fit").get_attribute("open") is None
        assert seen.page.locator("#at-fit summary").is_visible()
        assert said(seen) == ""
        a_code_or_a_link_from_a_colleague_is_taken_in(seen)
    with reader(browser, site, script=False) as bare:
        bare.page.goto(address_of(site, LESSON_3))
        assert not bare.page.locator("#at-fit").is_visible()
        assert not bare.page.locator('a[href="#at-fit"]').is_visible()
        assert bare.page.locator(".step .time").first.inner_text().startswith("0 to")


def a_code_or_a_link_from_a_colleague_is_taken_in(seen: Reader) -> None:
    seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
    given = seen.page.locator("#at-fit-given")
    given.fill(f" {ROOMY} ")
    assert seen.page.locator("#at-fit-available").input_value() == "45"
    assert seen.page.locator("#at-fit-dancing").input_value() == "25"
    assert beside(seen, "given") == "Taken in."
    given.fill("https://bank.test/units/rock-pool/lesson-2.html#fit=50-0-30-0-12x8m&last=seen")
    assert seen.page.locator("#at-fit-long").input_value() == "12"
    given.fill("25 pupils")
    given.blur()
    assert beside(seen, "given").startswith("This holds no code.")
    assert seen.page.evaluate("danceUnitBank.settings.fit().available") == 50


def test_the_page_has_the_minutes_that_fitting_gives(
    site: Path, browser: Browser, thorough: bool
) -> None:
    """Whatever the slot, warm-up, cool-down and the closing question keep their least."""
    one_sitting = two_sittings = too_short = 0
    with reader(browser, site) as seen:
        for path, unit, one in [*lessons()][:: 1 if thorough else 7]:
            seen.page.goto(address_of(site, path))
            planned = seen.page.evaluate(ON_PAGE)
            facts = page_facts(unit, one)
            slots = {8, one.minutes * 2 // 3, one.minutes - 5, one.minutes, one.minutes + 9}
            for slot in sorted(slots | {*range(12, one.minutes, 4 if thorough else 12)}):
                # in no hall, since teams of one have half of their own minutes to try a part in
                found = fitted_to(seen, f"{slot + 6}-6-27-0-unknown")
                assert short_care(unit, one, found) == [], (path, slot)
                shares = ask("sums.shareMinutes", facts, slot)
                two = ask("sums.sittings", facts, slot)
                if shares is not None:
                    one_sitting += 1
                    assert [time for time, _ in found["steps"]] == times(shares)
                    assert found["result"] == times(shares)
                    assert [int(re.split(r"\D", said)[0]) for _, said in found["steps"]] == shares
                    assert found["whole"] == f"{slot} minutes"
                    for share, tries in zip(shares, found["tries"], strict=True):
                        assert tries is None or tries.split()[0] == str(max(1, share // 2))
                elif two["parts"]:
                    two_sittings += 1
                    expected = [
                        times([part["minutes"] for part in parts]) for parts in two["parts"]
                    ]
                    assert found["result"] == [*expected[0], *expected[1]]
                    for number, (shown, _) in enumerate(found["steps"], start=1):
                        own = [
                            time
                            for parts, at in zip(two["parts"], expected, strict=True)
                            for part, time in zip(parts, at, strict=True)
                            if part["step"] == number
                        ]
                        assert shown.split(", then ") == list(dict.fromkeys(own))
                    assert found["whole"] == f"Two sittings of {slot} minutes"
                    assert seen.page.locator(".sitting").count() == 1
                else:
                    too_short += 1
                    assert found["steps"] == planned["steps"]
                    assert found["short"] == planned["short"]
                    assert two["sentence"] in said(seen)
                if slot == one.minutes:
                    assert found["steps"] == planned["steps"]
                    assert found["short"] == planned["short"]
            seen.page.evaluate("danceUnitBank.settings.keepFit(null)")
            assert seen.page.evaluate(ON_PAGE) == planned
        assert seen.said == []
    assert min(one_sitting, two_sittings, too_short) >= 3


def short_care(unit: Unit, one: Lesson, found: Any) -> list[str]:
    """The times of warm-up, cool-down and talk that are shorter than their least."""
    kept = [
        facts
        for facts in step_facts(unit, one)
        if facts.phase in ("warm-up", "look and talk", "cool-down")
    ]
    assert len(kept) >= 2
    return [
        time
        for facts in kept
        for time in found["steps"][facts.number - 1][0].split(", then ")
        if minutes_of(time) < facts.least
    ]


def minutes_of(time: str) -> int:
    start, end = (int(part) for part in time.split(" to "))
    return end - start


def test_groups_showing_and_floor_are_said_in_plain_sentences(site: Path, browser: Browser) -> None:
    unit, one = the_lesson(LESSON_3)
    with lesson(browser, site, "#fit=45-0-27-1-half") as seen:
        seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        told = seen.page.locator("[data-results]").inner_text()
        groupings = [step.grouping for step in one.steps]
        for grouping in {*groupings} - {"alone", "whole class"}:
            words = ask("sums.groupsInWords", class_groups(groupings, grouping, 27))
            assert words[0].upper() + words[1:] in told
            assert words[0].upper() + words[1:] in seen.page.locator(".steps").inner_text()
        assert "Say “Find your group from earlier lessons.”" in told, "pairs are not made again"
        # what a three changes: the author's own words, for pairs; in fours it is another three
        odd = odd_groups_said(unit, one)
        assert odd["pairs"]["3"] in told
        assert odd["pairs"]["3"] != odd.get("fours", {}).get("3")
        assert "One team dances at a time, and the others watch." in told
        assert one.look_and_talk is not None
        assert one.look_and_talk.looking_for[1:] in told
        assert "Watchers sit with their feet in, facing the pair they look at." in told
        assert "The one who cannot dance today watches with them." in told
        floor = ask("sums.floorSpace", 27, 70, recommended_least(unit.years))
        assert f"{floor['each']} for each pupil, with 27 on 70 m²." in told
        for source in ("the page on safety says by whom", "Oxfordshire County Council, 2007"):
            assert source in told
        half = unit_room(unit, 27, KNOWN_HALLS["half"])
        assert half.turns > 1
        assert room_in_words(half) in told
        assert one.change["room"] not in told, "two ways at once are one too many"
        assert not re.search(r"cannot(?! dance today)|not enough|impossible", told)


def test_in_a_small_hall_each_step_says_which_team_and_what_the_step_says_itself_stands(
    site: Path, browser: Browser
) -> None:
    """Teachers of Years 1 and 6 read turns that the step contradicts, and teams nobody had."""
    path = "units/seeds-on-the-move/lesson-1.html"
    with lesson(browser, site, "#fit=30-0-28-0-14x10m", path=path) as seen:
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        told = seen.page.locator("[data-results]").text_content() or ""
        assert "The step says who dances and who watches." in told
        assert "Stay in your teams" not in told
    path = "units/rope-bridge/lesson-1.html"
    turns = {2: 4, 3: 6, 4: 5, 5: 3}
    with lesson(browser, site, "#fit=60-10-30-0-14x10m", path=path) as seen:
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        told = seen.page.locator("[data-results]").text_content() or ""
        assert "each team dances as often as its minutes allow, once at least" in told
        groups = seen.page.locator(".step .grouping").all_text_contents()
        for number, minutes in turns.items():
            assert f"team 1, then team 2, {minutes} minutes each" in groups[number - 1]
        tries = seen.page.locator(".step[data-step='4'] .tries").inner_text()
        assert tries == "2 minutes", "half of what each team has"
        assert "The step says how they are made." in told
    turned = "units/gathering-peascods/lesson-1.html"
    with lesson(browser, site, "#fit=40-0-30-0-12x9m", path=turned) as seen:
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        front = seen.page.locator(".part-room p")
        assert "The front is a short wall, where watchers sit." in (front.text_content() or "")
        seen.page.evaluate("danceUnitBank.settings.keepFit(null)")
        assert "The front is one long wall" in (front.text_content() or "")
    # the steps of a card that are not on the screen too: somebody may read ahead
    with lesson(browser, site, "#card&fit=60-10-30-0-14x10m", path=path) as seen:
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        card = seen.page.locator(".step-card [data-groups]").all_text_contents()
        for number, minutes in turns.items():
            assert f"team 1, then team 2, {minutes} minutes each" in card[number - 1]


def test_who_is_left_over_is_told_only_where_somebody_is(site: Path, browser: Browser) -> None:
    """A teacher of thirty read what a seventh does in a ring of six."""
    with lesson(browser, site) as seen:
        lines = seen.page.locator(".left-over")
        written = lines.all_text_contents()
        assert all("Left over" in line for line in written)
        for pupils, told in ((28, [""] * len(written)), (27, written), (28, [""] * len(written))):
            fitted_to(seen, f"45-7-{pupils}-0-18x12m")
            expect(seen.page.locator(RESULT).first).to_be_attached()
            assert lines.all_text_contents() == told, pupils
        seen.page.evaluate("danceUnitBank.settings.keepFit(null)")
        assert lines.all_text_contents() == written


@pytest.mark.parametrize(
    "space",
    [
        "12x9s",
        pytest.param("15x10m", marks=pytest.mark.thorough),
        pytest.param("full", marks=pytest.mark.thorough),
    ],
)
def test_the_lesson_and_the_dance_from_above_say_the_same_of_a_hall(
    site: Path, browser: Browser, space: str
) -> None:
    """As the page Get ready says it for thirty."""
    unit, _ = the_lesson(LESSON_3)
    named = KNOWN_HALLS.get(space) or Hall(*(float(side) for side in space[:-1].split("x")))
    wanted = room_in_words(unit_room(unit, 30, named))
    with lesson(browser, site, f"#fit=45-0-30-0-{space}") as seen:
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        assert wanted in (seen.page.locator("[data-results]").text_content() or "")
        drawn_for = {for_whom(seen)}
        above = seen.page.get_by_role("link", name="The dance from above").get_attribute("href")
        page, _, fitted = (above or "").partition("#")
        visit(seen, site, f"units/rock-pool/{page}", f"#{fitted}")
        assert seen.page.locator("[data-walls]").inner_text() == wanted
        for kind, place in (("lesson-3.html", "#card&"), ("wall.html", "#lesson-3&")):
            path = LESSON_3.replace("lesson-3.html", kind)
            visit(seen, site, path, f"{place}fit=45-0-30-0-{space}")
            drawn_for.add(for_whom(seen))
    assert len(drawn_for) == 1, "lesson, card and wall draw one floor"
    ready = (site / "units/rock-pool/ready.html").read_text(encoding="utf-8")
    assert room_in_words(unit_room(unit, 30, Hall(15.0, 10.0))) in unescape(ready)


def for_whom(seen: Reader) -> tuple[str, ...]:
    """What each plan of the page says of the class and the hall that it is drawn for."""
    seen.page.wait_for_selector(".for-whom", state="attached")
    return tuple(seen.page.locator(".for-whom").all_text_contents())


@pytest.mark.parametrize(
    ("space", "on_screen", "in_print"),
    [
        (
            "14x10m",
            "Drawn for all 28, in a hall 14 metres along the front and 10 deep.",
            "Drawn for 28 pupils, 14 by 10 m.",
        ),
        (
            "unknown",
            "Drawn for 30 pupils in a hall 18 metres along the front and 10 deep, not for your "
            "class and hall.",
            "Drawn for 30 pupils, 18 by 10 m.",
        ),
    ],
)
def test_every_plan_of_a_fitted_lesson_says_for_whom_it_is_drawn(
    site: Path, browser: Browser, space: str, on_screen: str, in_print: str
) -> None:
    """On screen beside it, on paper in it: a plan without it was taken for that of the class."""
    path = next(
        f"units/{unit.slug}/lesson-{one.number}.html"
        for unit in whole_bank().units
        for one in unit.lessons
        if on_paper(unit, one).plans
    )
    with lesson(browser, site, f"#fit=45-0-28-0-{space}", path=path) as seen:
        seen.page.wait_for_selector(".for-whom", state="attached")
        steps = seen.page.locator(".step-plan")
        assert steps.count() == seen.page.locator(".step-plan .for-whom").count() > 0
        assert set(seen.page.locator(".for-whom").all_text_contents()) == {on_screen}
        paper = seen.page.locator(".plans figure")
        assert paper.count() > 0
        for figure in paper.all():
            assert in_print in figure.locator("svg text").all_text_contents()


def test_halves_that_a_step_sends_somewhere_are_not_sent_elsewhere(
    site: Path, browser: Browser
) -> None:
    """The step has one half sit along the front; the fit had each stand on a side of the hall."""
    path = "units/rock-pool/lesson-1.html"
    _, one = the_lesson(path)
    halves = next(step for step in one.steps if step.grouping == "half class")
    assert "nearer the sea, sit along the front wall" in (halves.into or "")
    with lesson(browser, site, "#fit=50-0-28-0-25x15m", path=path) as seen:
        told = seen.page.locator("[data-results]").text_content() or ""
        assert "Recommended" in told
        assert "on each side of the hall" not in told


def test_watchers_sit_where_the_dance_has_its_front(site: Path, browser: Browser) -> None:
    path = "units/rock-pool/lesson-6.html"
    unit, _ = the_lesson(path)
    with lesson(browser, site, "#fit=50-0-27-0-half", path=path) as seen:
        told = seen.page.locator("[data-results]").text_content() or ""
        assert "Watchers sit close together along the front" in told
        assert unit.dance.front[1:].rstrip(".") in told


def test_it_is_all_done_from_the_keyboard(site: Path, browser: Browser) -> None:
    with lesson(browser, site) as seen:
        keyboard = seen.page.keyboard
        seen.page.get_by_role("link", name="Fit to my time", exact=True).focus()
        keyboard.press("Enter")
        for text in ("33", "7", "25", "2"):
            keyboard.press("Control+A")
            keyboard.type(text)
            keyboard.press("Tab")
        keyboard.type("I paced")
        keyboard.press("Tab")
        for text in ("14", "9"):
            keyboard.type(text)
            keyboard.press("Tab")
        settings = "danceUnitBank.settings.code(danceUnitBank.settings.fit())"
        assert seen.page.evaluate(settings) == "33-7-25-2-14x9s"
        assert "two sittings of 26 minutes" in said(seen)
        focused = "document.activeElement.matches({!r})"
        assert seen.page.evaluate(focused.format("[data-code]"))
        for _ in range(5):
            keyboard.press("Tab")
        assert seen.page.evaluate(focused.format("[data-as-planned]"))
        keyboard.press("Enter")
        assert seen.page.evaluate("danceUnitBank.settings.fit()") is None
        assert said(seen) == ""
        values = "[...document.querySelectorAll('#at-fit [data-field]')].map((one) => one.value)"
        assert seen.page.evaluate(values) == ["45", "0", "30", "0", "unknown", "", ""]
        seen.page.locator("#at-fit summary").focus()
        keyboard.press("Enter")
        assert seen.page.locator("#at-fit").get_attribute("open") is None


NONSENSE = (
    ("available", "soon", "Write it in figures, such as 38."),
    ("available", "0", "Write 1 or more."),
    ("available", "500", "Write 240 minutes or fewer."),
    ("available", "37.5", "Write a whole number, such as 38."),
    ("available", "", "Write a number, 1 or more."),
    ("changing", "45", "Changing takes all 45 minutes, so none is left to teach in."),
    ("changing", "-3", "Write 0 or more."),
    ("dancing", "500", "Write 120 pupils or fewer: one class at a time."),
    ("dancing", "0", "Write 1 or more."),
    ("watching", "a few", "Write it in figures, such as 38."),
    ("watching", "<b>2</b>", "Write it in figures, such as 38."),
)


def test_what_is_typed_is_answered_beside_its_field(site: Path, browser: Browser) -> None:
    with lesson(browser, site, f"#fit={ROOMY}") as seen:
        seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
        nonsense_gets_a_sentence_and_nothing_else_changes(seen)
        a_side_that_is_no_number_is_told(seen)
        half_written_numbers_are_not_spoken_of_at_once(seen)


def nonsense_gets_a_sentence_and_nothing_else_changes(seen: Reader) -> None:
    before = seen.page.evaluate(ON_PAGE)
    for field, text, words in NONSENSE:
        at = seen.page.locator(f"#at-fit-{field}")
        good = at.input_value()
        at.fill(text)
        at.blur()
        told = f"{words} The page stays as it was until this is mended."
        assert beside(seen, field) == told, text
        assert at.get_attribute("aria-invalid") == "true"
        assert seen.page.locator("[data-field][aria-invalid]").count() == 1
        assert seen.page.evaluate(ON_PAGE) == before, text
        assert seen.page.evaluate("danceUnitBank.settings.fit().dancing") == 25
        at.fill(good)
        assert beside(seen, field) == ""
        assert at.get_attribute("aria-invalid") is None


def a_side_that_is_no_number_is_told(seen: Reader) -> None:
    assert not seen.page.locator("#at-fit-long").is_visible()
    seen.page.locator("#at-fit-space").select_option("m")
    seen.page.locator("#at-fit-long").fill("120")
    seen.page.locator("#at-fit-wide").fill("9")
    seen.page.locator("#at-fit-wide").blur()
    assert beside(seen, "long").startswith("Write 99 or less.")
    seen.page.locator("#at-fit-long").fill("12")
    assert "4.3 m² for each pupil, with 25 on 108 m²." in (
        seen.page.locator("[data-results]").inner_text()
    )


def half_written_numbers_are_not_spoken_of_at_once(seen: Reader) -> None:
    available = seen.page.locator("#at-fit-available")
    available.focus()
    available.select_text()
    seen.page.keyboard.type("4")
    assert beside(seen, "changing") == ""
    seen.page.keyboard.type("0")
    seen.page.wait_for_timeout(700)
    assert beside(seen, "changing") == ""
    assert seen.page.evaluate("danceUnitBank.settings.fit().available") == 40


def test_storage_refused_leaves_a_working_form_that_says_so(site: Path, browser: Browser) -> None:
    with lesson(browser, site, extra_script=REFUSING) as seen:
        seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
        seen.page.locator("#at-fit-available").fill("50")
        assert "50 minutes to teach" in said(seen)
        assert "This browser keeps nothing for this page" in said(seen)
        assert seen.page.evaluate(ON_PAGE)["whole"] == "50 minutes"


# What else is kept in vain: test_settings.py.
CORRUPT = ("{", '{"version":1,"fit":{"available":"x"}}')


def test_corrupt_settings_leave_the_lesson_as_planned_and_say_so(
    site: Path, browser: Browser
) -> None:
    with reader(browser, site) as seen:
        seen.page.goto(address_of(site, LESSON_3))
        for kept in CORRUPT:
            seen.page.evaluate("(text) => localStorage.setItem('dance-unit-bank', text)", kept)
            seen.page.reload()
            assert "could not be read" in said(seen), kept
            assert seen.page.evaluate(ON_PAGE)["whole"] == "45 minutes"
            seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
            seen.page.locator("#at-fit-available").fill("50")
            assert seen.page.evaluate(ON_PAGE)["whole"] == "50 minutes", kept
            assert seen.said == [], kept


# What else is nonsense: test_settings.py.
ODD_ADDRESSES = ("fit=38-38-25-2-half", "fit=<script>", "last=maybe")


def test_nonsense_in_the_address_is_told_and_left_out(site: Path, browser: Browser) -> None:
    with lesson(browser, site, f"#{ODD_ADDRESSES[0]}") as seen:
        for fragment in ODD_ADDRESSES:
            if fragment != ODD_ADDRESSES[0]:
                visit(seen, site, LESSON_3, f"#{fragment}")
            told = said(seen)
            assert "settings in this page’s address could not be read" in told, fragment
            assert seen.page.evaluate(ON_PAGE)["whole"] == "45 minutes", fragment


@pytest.mark.parametrize(
    ("served", "extra"),
    [
        pytest.param(False, REFUSING, id="file-refused"),
        pytest.param(True, "", id="served-kept", marks=pytest.mark.thorough),
        pytest.param(False, "", id="file-kept", marks=pytest.mark.thorough),
        pytest.param(True, REFUSING, id="served-refused", marks=pytest.mark.thorough),
    ],
)
def test_the_fit_goes_to_the_next_lesson_the_card_the_wall_and_back(
    site: Path, browser: Browser, served: bool, extra: str
) -> None:
    with reader(browser, site, served=served, extra_script=extra) as seen:
        seen.page.goto(address_of(site, LESSON_3, served=served))
        seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
        for name, text in (("available", "33"), ("changing", "7"), ("dancing", "25")):
            seen.page.locator(f"#at-fit-{name}").fill(text)
        seen.page.locator("#at-fit-watching").fill("2")
        seen.page.locator("#at-fit-space").select_option("half")
        seen.page.wait_for_selector(RESULT, state="attached")
        here = seen.page.evaluate(ON_PAGE)
        for page in (
            "lesson-4.html#fit",
            "lesson-4.html#card&fit",
            "wall.html#lesson-4&fit",
            "lesson-4.html#fit",
            "lesson-3.html#fit",
        ):
            way = seen.page.locator(f'a[data-carry][href^="{page}"]').first
            with seen.page.expect_navigation():
                way.evaluate("(link) => link.click()")
            if "#card" in page:
                seen.page.wait_for_selector("[data-live]")
            assert f"fit={CODE}" in seen.page.url
            code = seen.page.evaluate("danceUnitBank.settings.code(danceUnitBank.settings.fit())")
            assert code == CODE, page
        seen.page.wait_for_selector(RESULT, state="attached")
        assert seen.page.evaluate(ON_PAGE) == here
        assert "two sittings of 26 minutes" in said(seen)
        assert [line for line in seen.said if line.startswith(("error", "uncaught"))] == []


def test_the_code_and_the_link_are_copied_or_marked_to_be_copied(
    site: Path, browser: Browser
) -> None:
    with lesson(browser, site, f"#fit={CODE}", extra_script=CLIPBOARD) as seen:
        seen.page.get_by_role("link", name="Fit to my time", exact=True).click()
        seen.page.get_by_role("button", name="Copy the code").click()
        assert seen.page.evaluate("window.copiedText") == CODE
        seen.page.get_by_role("button", name="Copy a link").click()
        link = seen.page.evaluate("window.copiedText")
        assert link == address_of(site, LESSON_3) + f"#fit={CODE}"
        assert seen.page.locator("[data-copied]").inner_text() == "Copied."
        seen.page.evaluate(NO_CLIPBOARD)
        seen.page.get_by_role("button", name="Copy a link").click()
        assert "does not let a page copy" in seen.page.locator("[data-copied]").inner_text()
        assert seen.page.evaluate("window.getSelection().toString()").endswith(f"#fit={CODE}")


def test_a_copied_link_goes_through_the_stable_page_and_not_through_an_edition(
    site: Path, browser: Browser, tmp_path: Path
) -> None:
    edition = tmp_path / "share" / "editions" / "2026-11-25-a1"
    part_of(site, edition, LESSON_3)
    with reader(browser, tmp_path / "share") as seen:
        seen.page.goto((edition / LESSON_3).as_uri() + f"#fit={CODE}")
        link = seen.page.locator("[data-link]").input_value()
    assert link == (tmp_path / "share" / LESSON_3).as_uri() + f"#fit={CODE}"


@pytest.mark.parametrize(
    "code",
    [
        pytest.param(CODE, id="two"),
        pytest.param("45-5-25-2-half", id="one", marks=pytest.mark.thorough),
    ],
)
def test_print_follows_the_fitted_lesson_and_the_page_tells_it(
    site: Path, browser: Browser, code: str
) -> None:
    path = "units/weaving-shed/lesson-3.html" if code != CODE else LESSON_3
    with lesson(browser, site, f"#fit={code}", path=path) as seen:
        found = seen.page.evaluate(ON_PAGE)
        paper = printed(seen.page, 20.0)
        if code == CODE:
            two_sittings_each_begin_and_end_with_care_for_bodies(seen)
            wider_text_spacing_loses_nothing(seen)
    text = "".join(glyph.text for glyph in paper.glyphs)
    for time, _ in found["steps"]:
        assert squeezed(f"{time} min") in text
    assert squeezed(found["whole"]) in text
    words = "fitted for 27, 33 min" if code == CODE else "fitted for 27, 45 min"
    assert all(squeezed(words) in squeezed(foot) for foot in paper.feet)
    notes = paper.side_of("Notes for lesson")
    assert notes
    assert notes[0] == 2
    assert (squeezed("The first sitting ends here.") in text) == (code == CODE)
    assert squeezed("Minutes you really have") not in text


def two_sittings_each_begin_and_end_with_care_for_bodies(seen: Reader) -> None:
    short = seen.page.evaluate(ON_PAGE)["short"]
    second = short.index("Second sitting")
    assert short[0] == "First sitting"
    _, one = the_lesson(LESSON_3)
    warm_up, cool_down = one.steps[0].does, one.steps[-1].does
    for sitting in (short[1:second], short[second + 1 :]):
        assert warm_up in sitting[0]
        assert cool_down in sitting[-1]
    assert "Dance again what you made" in short[second + 2]
    turn = seen.page.locator(".sitting").inner_text()
    assert "The first sitting ends here." in turn
    assert "Dance again what you made, 4 to 6." in turn
    whole = seen.page.locator("[data-results]").text_content() or ""
    assert "Or leave out “Dance the crabs' meeting”, which can wait" in whole


def wider_text_spacing_loses_nothing(seen: Reader) -> None:
    seen.page.locator("#at-fit summary").click()
    before = seen.page.locator("#at-fit").inner_text()
    seen.page.evaluate(SPACED)
    for width in (1280, 320):
        seen.page.set_viewport_size({"width": width, "height": 900})
        assert seen.page.evaluate("document.documentElement.scrollWidth") <= width
        assert seen.page.evaluate(CLIPPED) == [], width
        assert seen.page.locator("#at-fit").inner_text().split() == before.split(), width


def test_the_open_form_breaks_no_rule_at_any_width(
    site: Path, browser: Browser, thorough: bool
) -> None:
    with reader(browser, site, served=True, extra_script=axe.source()) as seen:
        seen.page.goto(address_of(site, LESSON_3, served=True) + "#fit=33-7-25-2-9x7s")
        seen.page.locator("#at-fit summary").click()
        seen.page.locator("#at-fit-changing").fill("many")
        seen.page.locator("#at-fit-changing").blur()
        assert beside(seen, "changing")
        looks = product((1280, 768, 320), (False, True))
        for width, dark in looks if thorough else axe.usual_looks(1280, 320):
            seen.page.set_viewport_size({"width": width, "height": 900})
            seen.page.emulate_media(color_scheme="dark" if dark else "light")
            # What stands around it is looked at in test_accessibility.py.
            found = axe.run(seen.page, "#at-fit")
            assert [str(fault) for fault in found.violations] == [], (width, dark)
            assert seen.page.evaluate("document.documentElement.scrollWidth") <= width
            small = seen.page.evaluate(
                "[...document.querySelectorAll('#at-fit :is(input, select, button, summary)')]"
                ".map((one) => one.getBoundingClientRect().height).filter((high) => high < 24)"
            )
            assert small == [], width


def test_a_fit_that_another_tab_keeps_is_taken_in_here(site: Path, browser: Browser) -> None:
    with lesson(browser, site, served=True) as seen:
        other = seen.page.context.new_page()
        other.goto(address_of(site, "units/rock-pool/lesson-4.html", served=True))
        other.evaluate(
            "(({ settings }) => settings.keepFit(settings.fromCode('50-5-20-0-full')))"
            "(window.danceUnitBank)"
        )
        seen.page.wait_for_function("document.querySelector('#at-fit-dancing').value === '20'")
        assert seen.page.evaluate(ON_PAGE)["whole"] == "45 minutes"
        kept = json.loads(seen.page.evaluate("localStorage.getItem('dance-unit-bank')"))
        assert kept["fit"]["dancing"] == 20
