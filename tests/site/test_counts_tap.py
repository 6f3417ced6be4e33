"""Tapping along to a track: the tempo of taps, what it means, and whether it is long enough.

Sources: Theil 1950 and Sen 1968 for the middle of all slopes, which a few wild taps do not move;
the ages and tempi are those of the rule tempo-hard-for-age.
"""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from build_tools.movement.whole import counts_in_order
from build_tools.views.dance.tempo_for_age import tempo_for_age
from tests.support.browser import address_of, reader
from tests.support.sound_bank import real_unit

PAGE = f"units/{real_unit().slug}/counts.html"
TEMPO = "(times) => danceUnitBank.counts.tap.tempo(times)"
SECONDS = "(words) => danceUnitBank.counts.tap.seconds(words)"
SPEED = "([tapped, dance]) => danceUnitBank.counts.tap.speed(tapped, dance).words"
DANCE = {"tempo": 108, "slowest": 60, "fastest": 180, "age": 7}
# Eight taps and more on the button itself, at moments that the test says.
TAP = """
([times, kind]) => {
  const here = document.querySelector("[data-tap]");
  for (const time of times) {
    const event = kind === "pointerdown"
      ? new PointerEvent(kind, { bubbles: true })
      : new KeyboardEvent(kind, { key: " ", bubbles: true });
    Object.defineProperty(event, "timeStamp", { value: time });
    here.dispatchEvent(event);
    here.dispatchEvent(new MouseEvent("click", { bubbles: true }));
  }
}
"""


@pytest.fixture(scope="module")
def page(browser: Browser, site: Path) -> Iterator[Page]:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, PAGE))
        yield at.page
        assert at.said == []


def taps(tempo: float, count: int, spread: float, seed: int) -> list[float]:
    """Tap times in seconds, each up to `spread` early or late."""
    chance = random.Random(seed)
    return [5 + k * 60 / tempo + chance.uniform(-spread, spread) for k in range(count)]


@pytest.mark.parametrize("tempo", [62, 84, 108, 131, 176])
def test_taps_of_an_unsteady_hand_give_the_tempo(page: Page, tempo: int) -> None:
    for seed in range(5):
        found = page.evaluate(TEMPO, taps(tempo, 16, 0.03, seed))
        assert found == pytest.approx(tempo, rel=0.015)


def test_a_missed_tap_a_tap_too_many_and_a_wild_one_do_no_harm(page: Page) -> None:
    steady = taps(100, 16, 0.01, 1)
    missed = [time for n, time in enumerate(steady) if n not in (5, 9)]
    doubled = sorted([*steady, steady[4] + 0.09])
    wild = [time + (0.2 if n == 7 else 0) for n, time in enumerate(steady)]
    for times in (missed, doubled, wild):
        assert page.evaluate(TEMPO, times) == pytest.approx(100, rel=0.01)


def test_too_few_taps_give_nothing_and_a_pause_begins_anew(page: Page) -> None:
    assert page.evaluate(TEMPO, taps(100, 7, 0, 1)) is None
    assert page.evaluate(TEMPO, []) is None
    assert page.evaluate(TEMPO, [3.0] * 12) is None
    first, second = taps(60, 8, 0, 1), [20 + t for t in taps(120, 9, 0, 2)]
    assert page.evaluate(TEMPO, [*first, *second]) == pytest.approx(120)


@pytest.mark.parametrize(
    ("words", "seconds"),
    [
        ("2:45", 165),
        (" 0:09 ", 9),
        ("3.10", 190),
        ("190", 190),
        ("10:00", 600),
        ("2:75", None),
        ("soon", None),
        ("-1:00", None),
        ("", None),
    ],
)
def test_a_length_is_read_as_teachers_write_it(page: Page, words: str, seconds: int | None) -> None:
    assert page.evaluate(SECONDS, words) == seconds


@pytest.mark.parametrize(
    ("tapped", "says"),
    [
        (108.3, "It suits: the dance is written for 108."),
        (118, "It suits: the dance is written for 108."),
        (54, "Clap twice as often and it is 108, close to the dance’s 108. It suits."),
        (214, "Clap every other beat and it is 107, close to the dance’s 108. It suits."),
        (140, "It can be kept at age 7, but it is faster than the 108"),
        (80, "It can be kept at age 7, but it is slower than the 108"),
        (44, "That is too slow to keep at age 7: 60 to 180 can be kept."),
        (190, "That is too fast to keep at age 7: 60 to 180 can be kept."),
    ],
)
def test_it_says_whether_the_speed_suits(page: Page, tapped: float, says: str) -> None:
    assert says in page.evaluate(SPEED, [tapped, DANCE])


@pytest.mark.parametrize("kind", ["pointerdown", "keydown"])
def test_tapping_on_the_page_tells_tempo_and_length(page: Page, kind: str) -> None:
    unit = real_unit()
    page.reload()
    meaning = page.locator("[data-meaning]")
    page.evaluate(TAP, [[1000 + k * 625 for k in range(5)], kind])
    assert meaning.inner_text() == "5 tapped. 3 more."
    page.evaluate(TAP, [[1000 + k * 625 for k in range(5, 10)], kind])
    can = tempo_for_age(unit)
    assert can is not None
    assert "96 beats a minute" in meaning.inner_text()
    assert f"at age {can.age}" in meaning.inner_text()
    storm = unit.dance.sections["D"].seconds
    assert storm is not None
    least = round(counts_in_order(unit.dance) * 60 / 96 + storm.least)
    for length, says in (
        ("5:00", "long enough, with"),
        ("1:30", f"{least - 90} seconds too short"),
    ):
        page.fill("[data-track]", length)
        assert says in meaning.inner_text()
    page.fill("[data-track]", f"2:{least - 120 + 2:02}")
    assert "only if the parts without counts are kept short" in meaning.inner_text()
    page.fill("[data-track]", "long")
    assert "such as 2:45" in meaning.inner_text()
    page.get_by_role("button", name="Use this speed").click()
    assert page.locator("[data-tempo-shown]").inner_text() == "96 beats a minute"
    page.get_by_role("button", name="Begin again").click()
    assert meaning.inner_text() == ""
    assert page.get_by_role("button", name="Use this speed").count() == 0
