"""What a step plays of a recording, in a real browser: on the lesson, its card and its wall."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.support import axe
from tests.support.hall import opened, small_targets

UNIT = "units/gathering-peascods/"
LESSON, WALL = f"{UNIT}lesson-3.html", f"{UNIT}wall.html#lesson-3"
CARD = f"{LESSON}#card"
JOINING = f"{UNIT}lesson-4.html#card"
PLAYER = """
new MutationObserver(() => {
  window.player ||= document.querySelector("audio");
}).observe(document, { childList: true, subtree: true });
"""
"""The player is the page's; a card keeps it, from the lesson of which it is made."""
AT = "() => window.player.currentTime"
STILL = "() => window.player.paused"
GO_TO = "(at) => { window.player.currentTime = at; }"
SOON = 0.7
"""Seconds that a test may be later than the sound."""
MEET, STRETCH = "Play 0:26 to 0:47", (26, 46.67)


def to_step(page: Page, path: str, number: int) -> Locator:
    """The step, up, with what it plays."""
    if path.endswith("#card"):
        page.get_by_role("button", name="Start", exact=True).click()
        for _ in range(number - 1):
            page.get_by_role("button", name="Next", exact=True).click()
        return page.locator(".step-card[data-now] .played")
    if "wall" in path:
        while f"Step {number} of" not in page.locator(".wall-place").inner_text():
            page.get_by_role("button", name="Next", exact=True).click()
        return page.locator(".wall-foot .played:not([hidden])")
    return page.locator(f"#at-step-{number} .played")


def sounds_from(page: Page, start: float) -> None:
    page.wait_for_function(f"() => !window.player.paused && window.player.currentTime >= {start}")
    assert start <= page.evaluate(AT) < start + SOON


@pytest.mark.parametrize("path", [LESSON, CARD, WALL])
def test_a_step_plays_from_its_count_in_and_stops_at_its_end(
    browser: Browser, site: Path, path: str
) -> None:
    with opened(browser, site, path, extra_script=PLAYER) as at:
        page = at.page
        button = to_step(page, path, 4).get_by_role("button").first
        expect(button).to_have_text(MEET)
        button.focus()
        page.keyboard.press("Enter")
        sounds_from(page, STRETCH[0])
        expect(button).to_have_text("Stop 0:26")
        expect(button).to_be_focused()
        page.evaluate(GO_TO, STRETCH[1] - 0.8)
        page.wait_for_function(STILL)
        assert STRETCH[1] <= page.evaluate(AT) < STRETCH[1] + 0.3
        expect(button).to_have_text(MEET)
        button.click()
        sounds_from(page, STRETCH[0])
        button.click()
        expect(button).to_have_text(MEET)
        assert page.evaluate(STILL)
        assert at.said == []
        assert at.violations() == []


def test_another_stops_the_first_and_so_does_another_step(browser: Browser, site: Path) -> None:
    with opened(browser, site, LESSON, extra_script=PLAYER) as at:
        page = at.page
        first = to_step(page, LESSON, 2).get_by_role("button").first
        other = to_step(page, LESSON, 4).get_by_role("button").first
        first.click()
        sounds_from(page, 0)
        other.click()
        sounds_from(page, STRETCH[0])
        expect(first).to_have_text("Play 0:00 to 0:29")
        assert page.locator(".played [data-sounds]").count() == 1
        assert page.locator("audio").count() == 1
    with opened(browser, site, CARD, extra_script=PLAYER) as at:
        page = at.page
        to_step(page, CARD, 4).get_by_role("button").first.click()
        sounds_from(page, STRETCH[0])
        page.get_by_role("button", name="Next", exact=True).click()
        page.wait_for_function(STILL)


def test_who_moves_the_slider_hears_on_from_there(browser: Browser, site: Path) -> None:
    with opened(browser, site, LESSON, extra_script=PLAYER) as at:
        page = at.page
        button = to_step(page, LESSON, 4).get_by_role("button").first
        button.click()
        sounds_from(page, STRETCH[0])
        page.evaluate(GO_TO, 60)
        expect(button).to_have_text(MEET)
        assert not page.evaluate(STILL)


def test_the_count_of_the_wall_and_its_music_stop_one_another(browser: Browser, site: Path) -> None:
    with opened(browser, site, WALL, extra_script=PLAYER, size=(1280, 720)) as at:
        page = at.page
        music = to_step(page, WALL, 4).get_by_role("button").first
        count = page.locator(".wall-step[data-now] .count-go")
        music.click()
        sounds_from(page, STRETCH[0])
        count.click()
        expect(count).to_contain_text("Stop counts")
        page.wait_for_function(STILL)
        music.click()
        expect(count).to_contain_text("Start counts")
        sounds_from(page, STRETCH[0])


def test_who_dances_it_all_starts_where_the_class_is(browser: Browser, site: Path) -> None:
    with opened(browser, site, JOINING, extra_script=PLAYER) as at:
        played = to_step(at.page, JOINING, 3)
        expect(played.get_by_role("button").first).to_have_text("Play 0:00 to 1:33")
        played.locator("summary").click()
        played.get_by_role("button", name="Play 0:44 to 1:33 (A: all the ring)").click()
        sounds_from(at.page, 44)


def test_a_card_keeps_the_player_for_any_other_stretch(browser: Browser, site: Path) -> None:
    with opened(browser, site, CARD) as at:
        panel = at.page.locator(".panel", has_text="The music")
        panel.locator("summary").click()
        expect(panel.locator("audio")).to_be_visible()


@pytest.mark.parametrize("path", [LESSON, CARD, WALL])
def test_buttons_are_large_enough_fit_a_narrow_screen_and_are_sound(
    browser: Browser, site: Path, path: str
) -> None:
    with opened(browser, site, path, size=(320, 640), extra_script=axe.source()) as at:
        played = to_step(at.page, path, 4)
        assert played.get_by_role("button").first.is_visible()
        assert at.page.evaluate("document.documentElement.scrollWidth") <= 320
        assert not [one for one in small_targets(at.page) if "Play " in one or "elsewhere" in one]
        at.page.clock.resume()
        # what lies half under the card's bar just now can be scrolled out from under it
        for bar in at.page.locator(".bar").all():
            bar.evaluate("(one) => { one.style.position = 'static'; }")
        assert axe.run(at.page, within=".played").violations == ()


def test_what_is_not_played_is_said_to_whoever_pressed(browser: Browser, site: Path) -> None:
    refuses = "HTMLMediaElement.prototype.play = () => Promise.reject(new Error('no'));"
    with opened(browser, site, LESSON, extra_script=refuses) as at:
        played = to_step(at.page, LESSON, 4)
        played.get_by_role("button").first.click()
        expect(played.get_by_role("status")).to_contain_text("does not play the recording")
        expect(played.get_by_role("button").first).to_have_text(MEET)


def test_a_server_that_gives_no_part_of_a_file_is_said_too(browser: Browser, site: Path) -> None:
    """A player cannot go to the middle there; it is not to play anything else instead."""
    with opened(browser, site, LESSON, extra_script=PLAYER, served=True) as at:
        played = to_step(at.page, LESSON, 4)
        played.get_by_role("button").first.click()
        expect(played.get_by_role("status")).to_contain_text("does not play the recording")
        assert at.page.evaluate(STILL)


def test_without_script_and_on_paper_the_step_says_what_it_said(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, LESSON, script=False) as at:
        assert at.page.locator(".played").count() == 0
        assert at.page.locator("audio[controls]").is_visible()
        expect(at.page.locator("#at-step-4")).to_contain_text("start at 26 seconds")
    with opened(browser, site, LESSON) as at:
        at.page.emulate_media(media="print")
        assert not at.page.locator("#at-step-4 .played").is_visible()


def test_no_unit_without_a_recording_loads_it(site: Path) -> None:
    for page in site.glob("units/*/*.html"):
        text = page.read_text(encoding="utf-8")
        assert ("assets/js/music.js" in text) <= ("<audio" in text), page
        assert ("data-played" in text) <= ("assets/js/music.js" in text), page
