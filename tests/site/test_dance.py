"""The dance from above in a real browser: marks stand where the paths say, at every count.

Sources: WCAG 2.2, success criteria 1.4.10 Reflow (320 px), 2.2.2 Pause, Stop, Hide, 2.5.8 Target
Size (24 px); axe-core's rules for levels A and AA.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from build_tools.paths.hall import Hall
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import in_a_hall, middle_age
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.words.room_said import room_in_words
from tests.support import axe
from tests.support.hall import opened, small_targets
from tests.support.sound_bank import real_unit, unit_named

UNIT = real_unit()
PAGE = f"units/{UNIT.slug}/dance.html"
SILENT = "delete window.AudioContext;"
BEAT_MS = 60_000 / (UNIT.dance.tempo or 1)
LEAST_TARGET = 24
NEAR = 0.01
"""Metres."""
MARKS = """
[...document.querySelectorAll(".dancer")].map((one) =>
  one.getAttribute("transform").match(/-?[0-9.]+/g).map(Number))
"""
MOTION = """
const plain = window.matchMedia.bind(window);
window.matchMedia = (query) =>
  query.includes("reduced-motion") ? { matches: %s, addEventListener() {} } : plain(query);
"""


def marks(page: Page) -> list[list[float]]:
    found: list[list[float]] = page.evaluate(MARKS)
    return found


def assert_at(page: Page, moment: float, paths: Paths | None = None) -> None:
    """All marks stand where the model has the dancers at `moment`."""
    wanted = (paths or in_a_hall(UNIT)).everybody(moment)
    shown = marks(page)
    assert len(shown) == len(wanted)
    for mark, dancer in zip(shown, wanted, strict=True):
        assert mark[0] == pytest.approx(dancer.x, abs=NEAR)
        assert mark[1] == pytest.approx(dancer.y, abs=NEAR)
        turned = (mark[2] - dancer.facing + 180) % 360 - 180
        assert turned == pytest.approx(0, abs=0.2)


@pytest.fixture(scope="module")
def once(browser: Browser, site: Path) -> Iterator[Page]:
    """The page, opened once for what goes back to where it began."""
    with opened(browser, site, PAGE, size=(1280, 900)) as at:
        yield at.page


@pytest.fixture
def still(once: Page) -> Page:
    """The page as it is when it is opened: the whole dance, before the first count."""
    once.get_by_label("Show").select_option(index=0)
    once.get_by_label("Draw the ways").uncheck()
    assert_at(once, 0)
    return once


def test_going_on_by_hand_shows_each_count_of_the_model(still: Page) -> None:
    on = still.get_by_role("button", name="Count on")
    for count in range(1, 20):
        on.click()
        assert_at(still, count)
    still.get_by_role("button", name="Phrase back").click()
    assert_at(still, 11)
    still.keyboard.press("ArrowRight")
    assert_at(still, 12)
    assert "count 13 of 32" in still.locator("[data-said]").inner_text()


def test_each_section_can_be_watched_from_its_start(still: Page) -> None:
    sections = [one for one in in_a_hall(UNIT).stretches if one.section is not None]
    choice = still.get_by_label("Show")
    for number, section in enumerate(sections, start=1):
        choice.select_option(index=number)
        assert_at(still, section.begins)


def test_played_it_moves_between_counts_and_stops_where_it_is(browser: Browser, site: Path) -> None:
    with opened(
        browser, site, PAGE, size=(1280, 900), extra_script=SILENT + MOTION % "false"
    ) as at:
        page = at.page
        page.clock.pause_at(page.evaluate("Date.now()") + 1000)
        page.get_by_role("button", name="Start").click()
        page.clock.fast_forward(round(150 + 4 * BEAT_MS))
        seen = set()
        for _ in range(40):
            page.clock.fast_forward(round(BEAT_MS / 4))
            seen.add(tuple(marks(page)[0][:2]))
        assert len(seen) > 8, "the first dancer is seen between counts"
        before = page.locator("[data-now]").inner_text()
        assert re.search(r"count (9|10|11) of 32", before), before
        page.get_by_role("button", name="Stop").click()
        page.clock.fast_forward(3000)
        assert page.locator("[data-now]").inner_text() == before


def test_where_motion_is_unwanted_they_stand_at_each_count(browser: Browser, site: Path) -> None:
    with opened(browser, site, PAGE, size=(1280, 900), extra_script=SILENT + MOTION % "true") as at:
        page = at.page
        page.clock.pause_at(page.evaluate("Date.now()") + 1000)
        page.get_by_role("button", name="Start").click()
        page.clock.fast_forward(round(150 + 4 * BEAT_MS))
        stands = [in_a_hall(UNIT).at(0, count) for count in range(40)]
        for _ in range(30):
            page.clock.fast_forward(round(BEAT_MS / 4))
            x, y = marks(page)[0][:2]
            assert min(math.hypot(x - one.x, y - one.y) for one in stands) < NEAR


def test_one_role_alone_leaves_the_others_pale(still: Page) -> None:
    paths = in_a_hall(UNIT)
    named = next(
        number
        for number, one in enumerate([s for s in paths.stretches if s.section], start=1)
        if one.section and one.section.groups and len(one.section.groups.roles) == 2
    )
    still.get_by_label("Show").select_option(index=named)
    still.get_by_label("Look at").select_option(index=1)
    pale = still.locator(".dancer.pale").count()
    assert 0 < pale < 30
    still.get_by_label("Draw the ways").check()
    drawn = still.locator(".ways path").count()
    assert 0 < drawn <= 30 - pale


@pytest.mark.parametrize(("width", "dark"), axe.looks(1280, 320))
def test_it_breaks_no_rule(browser: Browser, site: Path, width: int, dark: bool) -> None:
    with opened(
        browser, site, PAGE, size=(width, 800), dark=dark,
        extra_script=SILENT + axe.source(),
    ) as at:  # fmt: skip
        at.page.clock.resume()
        found = axe.run(at.page)
        assert found.violations == ()
        unsure = [one for one in found.incomplete if one.rule != "color-contrast"]
        assert unsure == []
        assert at.page.evaluate("document.documentElement.scrollWidth") <= width
        assert small_targets(at.page, LEAST_TARGET) == []


def test_who_dances_at_once_as_it_is_drawn_is_said_without_a_script_more(still: Page) -> None:
    said = still.locator("[data-walls]").inner_text()
    assert said == room_in_words(unit_room(UNIT))
    assert still.evaluate("danceUnitBank.sums.floor.room") is None


def test_my_class_and_our_hall_come_from_the_fit_form(browser: Browser, site: Path) -> None:
    with opened(browser, site, f"{PAGE}#fit=45-8-27-2-15x9m", size=(1280, 900)) as at:
        assert at.page.get_by_label("My class").input_value() == "27"
        assert at.page.get_by_label("Our hall, metres wide").input_value() == "15"
        assert_at(at.page, 0, in_a_hall(UNIT, 27, Hall(15.0, 9.0)))


def test_another_class_in_another_hall_is_put_down_at_once(browser: Browser, site: Path) -> None:
    """Changed on the page, as the model has them; what is enough there is said."""
    with opened(browser, site, PAGE, size=(1280, 900)) as at:
        page = at.page
        for _ in range(5):
            page.get_by_role("button", name="Count on").click()
        page.get_by_label("My class").fill("24")
        page.get_by_label("Our hall, metres wide").fill("9")
        page.get_by_label("Our hall, metres from front to back").fill("6")
        page.keyboard.press("Enter")
        page.get_by_role("button", name="Count on").focus()
        known = unit_room(UNIT, 24, Hall(9.0, 6.0))
        expect(page.locator("[data-walls]")).to_have_text(room_in_words(known))
        hall = Hall(6.0, 9.0) if known.turned else known.hall
        age, joined = middle_age(UNIT), joined_in_lessons(UNIT)
        team = paths_of(
            UNIT.dance, sum(known.sharing.teams[0]), hall, age, joined=joined, stride=known.stride
        )
        assert_at(page, 5, team)
        page.locator("[data-team]").select_option(label="All 24, as drawn")
        paths = in_a_hall(UNIT, 24, Hall(9.0, 6.0))
        assert_at(page, 5, paths)
        page.get_by_role("button", name="Count on").click()
        assert_at(page, 6, paths)
        # nonsense is brought back to what a class and a hall can be
        page.get_by_label("My class").fill("999")
        page.get_by_role("button", name="Count on").focus()
        assert page.get_by_label("My class").input_value() == "60"


def test_the_picture_goes_by_the_clock_of_the_sound(browser: Browser, site: Path) -> None:
    """A sound clock that runs at nine tenths of the page's: the picture keeps to the sound's."""
    slow = """
    window.AudioContext = class {
      constructor() {
        Object.assign(this, { state: "running", sampleRate: 8000, from: performance.now() });
      }
      get currentTime() { return ((performance.now() - this.from) / 1000) * 0.9; }
      resume() { return Promise.resolve(); }
      createBuffer() { return { copyToChannel() {} }; }
      createBufferSource() { return { connect() {}, start() {}, stop() {} }; }
    };
    """
    paths = in_a_hall(UNIT)
    with opened(browser, site, PAGE, size=(1280, 900), extra_script=slow + MOTION % "false") as at:
        page = at.page
        page.clock.pause_at(page.evaluate("Date.now()") + 1000)
        page.get_by_role("button", name="Start").click()
        begun = page.evaluate("performance.now()")
        off = []
        for _ in range(40):
            page.clock.fast_forward(730)
            heard = (page.evaluate("performance.now()") - begun) / 1000 * 0.9 - 0.15
            count = heard * 1000 / BEAT_MS - 4
            if 0 < count < 32 and page.get_by_role("button", name="Stop").count():
                x, y = marks(page)[0][:2]
                apart = [
                    math.dist((x, y), paths.at(0, count + late / BEAT_MS)[:2])
                    for late in range(-60, 41, 10)
                ]
                off.append(min(apart))
        assert len(off) > 20
        assert max(off) < 0.05


STILLS = """
[...document.querySelectorAll(".still")].map((one) => {
  const hall = one.querySelector("svg.floor rect");
  const dots = [...one.querySelectorAll("svg.floor > svg path[stroke-width='7']")];
  return [Number(hall.getAttribute("width")) / Number(hall.getAttribute("height")),
    dots.map((dot) => (dot.getAttribute("d").match(/h0/g) || []).length).reduce((a, b) => a + b, 0),
    one.querySelector(".in-words li:nth-last-child(1 of :not([hidden]))").textContent];
})
"""


def test_the_pictures_part_by_part_are_of_the_class_and_hall_of_the_day(
    browser: Browser, site: Path
) -> None:
    """They stayed those of thirty in 18 by 10 metres while the moving plan was drawn anew."""
    unit = unit_named("road-builders")
    page = f"units/{unit.slug}/dance.html"
    letters = list(dict.fromkeys(unit.dance.form))
    with opened(browser, site, page, size=(1280, 900)) as at:
        before = at.page.evaluate(STILLS)
        assert [round(one[0], 2) for one in before] == [1.8] * len(letters)
        at.page.get_by_label("My class").fill("28")
        at.page.locator("[data-wide]").fill("16")
        at.page.locator("[data-deep]").fill("12")
        at.page.locator("[data-deep]").blur()
        expect(at.page.locator("[data-drawn-for]")).to_have_text(
            "Drawn for 28 pupils in a hall 16 metres wide and 12 deep, with the front at the top."
        )
        paths = in_a_hall(unit, 28, Hall(16.0, 12.0))
        for (sides, dots, said), letter in zip(at.page.evaluate(STILLS), letters, strict=True):
            stretch = next(s for s in paths.stretches if s.section and s.section.letter == letter)
            start, end = paths.everybody(stretch.begins), paths.everybody(stretch.ends - 1e-6)
            twice = any(math.dist(a[:2], b[:2]) > 0.3 for a, b in zip(start, end, strict=True))
            assert sides == pytest.approx(16 / 12)
            assert dots == 28 * (1 + twice), letter
            assert said == "Drawn for 28 pupils on a floor of 16 by 12 metres."
        at.page.get_by_label("My class").fill("30")
        at.page.locator("[data-wide]").fill("18")
        at.page.locator("[data-deep]").fill("10")
        at.page.locator("[data-deep]").blur()
        expect(at.page.locator("[data-drawn-for]")).to_contain_text("Drawn for 30 pupils")
        assert at.page.evaluate(STILLS) == before
