"""The page of counts as a teacher uses it: chosen, played, lit, refused sound, by keys alone.

Source of three flashes a second: WCAG 2.2, success criterion 2.3.1; the number changes in one
colour, so nothing flashes.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from build_tools.building.unit_files import unit_files
from build_tools.model.dance import Dance
from build_tools.pages.counts.counts import counts_page
from build_tools.views.dance.parts_over_counts import who_in_words
from build_tools.views.dance.score import score
from build_tools.views.words.doing import doing_in_words
from build_tools.views.words.plain_words import name_in_words
from tests.support.browser import address_of, reader
from tests.support.built_sites import build
from tests.support.few_pages import with_files, with_pages
from tests.support.sound_bank import UNUSUAL, every_unit, real_unit, unusual_bank

PAGE = f"units/{real_unit().slug}/counts.html"
CLOCKS = "clock-shop-sounds"
CUED = ("silent-statues", "improvised-weather")
COUNTED = ("reception-toys", "round-live-drums", "learned-market-dance")
LATER = {"improvised-weather", "learned-market-dance", "reception-toys"}
"""Looked at in the long run only, with the others of their kind."""
REFUSED = {
    "there is none": "delete window.AudioContext;",
    "it cannot be made": """window.AudioContext = class {
      constructor() { throw new Error("no"); }
    };""",
    "it is turned down": """window.AudioContext = class {
      state = "suspended";
      resume() { return Promise.reject(new DOMException("no", "NotAllowedError")); }
    };""",
    "it never starts": """window.AudioContext = class {
      state = "suspended"; resume() { return new Promise(() => {}); }
    };""",
}
SILENT = REFUSED["there is none"]
SENTENCE = "This device gives no sound here"
BIG, NOW, SAID = "[data-big]", "p[data-now]", "[data-said]"
BEAT_MS = 60_000 / 108
# No speech of the test machine's own, and two made-up voices: one on the device, one far away.
VOICES = """
window.spoken = [];
window.SpeechSynthesisUtterance = class { constructor(words) { this.words = words; } };
Object.defineProperty(window, "speechSynthesis", { value: {
  getVoices: () => [LOCAL { localService: false, lang: "en-GB" }],
  addEventListener() {}, cancel() {}, speak: (one) => window.spoken.push(one.words),
} });
"""
CONTROLS = (
    "counts-choice",
    "Start",
    "Slower",
    "Faster",
    "Play the test sound",
    "Tap here",
    "Begin again",
    "counts-track",
    "Save as a sound file (WAV)",
    "Save as notes (MIDI)",
)
FOCUSED = "document.activeElement.id || document.activeElement.textContent.trim()"
LIT_AND_BIG = """
() => [
  [...document.querySelectorAll(".whole tr[data-lit]:not(.said-row)")].map((row) => [
    row.querySelector("[data-who]").textContent, row.querySelector("[data-what]").textContent,
  ]),
  document.querySelector("[data-big]").innerText,
]
"""


def run_for(page: Page, milliseconds: float) -> None:
    """Let the page's made-up clock go on, with every beat that it asks for."""
    page.clock.run_for(round(milliseconds))


def later(page: Page, milliseconds: float) -> None:
    """The same on a busy device, which lets the page do its work once, when the time is over."""
    page.clock.fast_forward(round(milliseconds))


def expected(dance: Dance, stretch: int, count: int) -> list[list[str]]:
    """Who dances what on a count of a stretch, from the model."""
    found = score(dance).stretches[stretch]
    return [
        [who_in_words(span, found.rows), doing_in_words(span)]
        for span in found.everything
        if span.start < count <= span.end
    ]


def chosen(slugs: tuple[str, ...], thorough: bool = False) -> list[str]:
    return [slug for slug in slugs if thorough or slug not in LATER]


@pytest.fixture(scope="module")
def odd_site(tmp_path_factory: pytest.TempPathFactory, thorough: bool) -> Path:
    """Pages of some units of unusual shape: in the usual run all of the first, and counts."""
    folder = tmp_path_factory.mktemp("odd")
    if thorough:
        build(UNUSUAL, folder / "site")
        return folder / "site"
    bank = unusual_bank()
    whole, *others = (unit for unit in bank.units if unit.slug in chosen((CLOCKS, *CUED, *COUNTED)))
    with_files(folder, unit_files(bank, whole, UNUSUAL))
    return with_pages(folder, [counts_page(bank, unit) for unit in others])


@pytest.fixture
def clocks(browser: Browser, odd_site: Path) -> Iterator[Page]:
    """The page of a dance with every kind of sound, on a made-up clock."""
    with reader(browser, odd_site, extra_script=SILENT) as at:
        at.page.clock.install(time=0)
        at.page.goto(address_of(odd_site, f"units/{CLOCKS}/counts.html"))
        at.page.clock.pause_at(1000)
        yield at.page
        assert at.said == []
        assert at.violations() == []


@pytest.fixture
def silent(browser: Browser, site: Path) -> Iterator[Page]:
    """The page on a made-up clock, where nothing but that clock moves the counts."""
    with reader(browser, site, extra_script=SILENT) as at:
        at.page.clock.install(time=0)
        at.page.goto(address_of(site, PAGE))
        at.page.clock.pause_at(1000)
        yield at.page
        assert at.said == []
        assert at.violations() == []


def test_without_script_the_whole_score_is_there_to_read(browser: Browser, site: Path) -> None:
    dance = real_unit().dance
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, PAGE))
        assert at.page.locator("main button:visible, main select:visible").count() == 0
        text = " ".join(at.page.locator("main").inner_text().split())
        assert "108 beats a minute" in text
        for stretch in score(dance).stretches:
            assert stretch.cue is None or stretch.cue in text
        rows = at.page.locator(".whole tr[data-from]:not(.said-row):visible")
        assert rows.count() == sum(len(s.everything) for s in score(dance).stretches)
        for motif in score(dance).motifs:
            assert name_in_words(motif.name) in text.lower()
        assert "Not counted, 20 to 30 seconds." in text


def test_nothing_plays_before_a_click_then_start_counts_in_and_stop_stops(
    browser: Browser, site: Path
) -> None:
    watch = """
    window.made = 0;
    window.AudioContext = class extends AudioContext {
      constructor() { super(); window.made += 1; }
    };
    """
    with reader(browser, site, extra_script=watch) as at:
        at.page.goto(address_of(site, PAGE))
        at.page.wait_for_timeout(300)
        assert at.page.evaluate("made") == 0
        assert at.page.locator(BIG).inner_text() == "–"
        at.page.get_by_role("button", name="Start").click()
        at.page.locator(NOW).get_by_text("Section A, counting in").wait_for()
        assert at.page.evaluate("made") == 1
        assert at.page.locator(BIG).inner_text() in "5678"
        at.page.locator(NOW).get_by_text("of 32").wait_for()
        assert at.page.locator(BIG).inner_text() in "12345678"
        at.page.get_by_role("button", name="Stop").click()
        assert at.page.locator(BIG).inner_text() == "–"
        assert at.page.locator("[data-lit]").count() == 0
        assert at.page.locator(SAID).inner_text() == ""
        at.page.get_by_role("button", name="Play the test sound").click()
        assert at.page.evaluate("made") == 1
        assert at.said == []
        assert at.violations() == []


def test_the_whole_dance_plays_with_who_dances_what_lit(silent: Page) -> None:
    dance = real_unit().dance
    silent.get_by_role("button", name="Start").click()
    later(silent, 150 + 4.5 * BEAT_MS)
    marked = silent.locator(".whole tr[data-lit] .at").first
    assert '"▸ "' in marked.evaluate("e => getComputedStyle(e, '::before').content")
    stretches = score(dance).stretches
    for place, stretch in enumerate(stretches):
        if stretch.counts is None:
            break
        for count in range(1, int(stretch.counts) + 1):
            lit, big = silent.evaluate(LIT_AND_BIG)
            assert lit == expected(dance, place, count), (place, count)
            assert big == str((count - 1) % 8 + 1)
            later(silent, BEAT_MS)
    assert "Section D" in silent.locator(NOW).inner_text()
    assert "Three slow drum beats" in silent.locator("[data-who-now]").inner_text()
    later(silent, 40_000)
    assert "Section D" in silent.locator(NOW).inner_text()
    silent.get_by_role("button", name="Next").click()
    later(silent, 150 + 0.5 * BEAT_MS)
    assert silent.locator(NOW).inner_text() == "On the way, count 1 of 16"
    later(silent, 48 * BEAT_MS + 500)
    assert silent.get_by_role("button", name="Start").is_visible()


def test_a_motif_goes_round_until_it_is_let_go(silent: Page) -> None:
    silent.select_option("#counts-choice", label="Crab")
    assert silent.get_by_label("Round and round").is_checked()
    silent.get_by_role("button", name="Start").click()
    later(silent, 150 + (4 + 16 + 2.5) * BEAT_MS)
    assert silent.locator(NOW).inner_text() == "Crab, count 3 of 8"
    assert silent.locator(".motif tr[data-lit] [data-what]").inner_text() == "dodge"
    silent.get_by_label("Round and round").uncheck()
    later(silent, 7 * BEAT_MS)
    assert silent.get_by_role("button", name="Start").is_visible()


def test_slower_and_faster_are_told_and_kept_to_a_metronomes_scale(silent: Page) -> None:
    told = silent.locator("[data-tempo-shown]")
    silent.get_by_role("button", name="Slower").click()
    assert told.inner_text() == "104 beats a minute"
    silent.get_by_role("button", name="Start").click()
    later(silent, 150 + 4.5 * 60_000 / 104)
    assert silent.locator(NOW).inner_text() == "Section A, count 1 of 32"
    silent.get_by_role("button", name="Stop").click()
    for _ in range(20):
        silent.get_by_role("button", name="Slower").click()
    assert told.inner_text() == "40 beats a minute"
    silent.get_by_role("button", name="Back to 108").click()
    assert told.inner_text() == "108 beats a minute"
    assert silent.get_by_role("button", name="Back to 108").count() == 0


@pytest.mark.parametrize(
    "how",
    [
        pytest.param(how, marks=pytest.mark.thorough if number else ())
        for number, how in enumerate(REFUSED)
    ],
)
def test_where_sound_is_refused_the_numbers_count_and_it_says_so(
    browser: Browser, site: Path, how: str
) -> None:
    with reader(browser, site, extra_script=REFUSED[how]) as at:
        at.page.goto(address_of(site, PAGE))
        at.page.get_by_role("button", name="Start").click()
        at.page.locator(NOW).get_by_text("Section A, counting in").wait_for()
        assert SENTENCE in at.page.locator(SAID).inner_text()
        at.page.get_by_role("button", name="Play the test sound").click()
        at.page.get_by_role("button", name="Stop").click()
        assert at.said == []
        assert at.violations() == []


def test_everything_is_done_by_keys_alone(browser: Browser, site: Path) -> None:
    with reader(browser, site, extra_script=SILENT) as at:
        at.page.clock.install(time=0)
        at.page.goto(address_of(site, PAGE))
        at.page.clock.pause_at(1000)
        stops = []
        for _ in range(40):
            at.page.keyboard.press("Tab")
            stops.append(at.page.evaluate(FOCUSED))
        assert set(CONTROLS) <= set(stops)
        assert stops.index("Start") < stops.index("Slower") < stops.index("Tap here")
        # the space bar starts and stops wherever nothing else wants it
        at.page.evaluate("document.activeElement.blur()")
        at.page.evaluate("scrollTo(0, 0)")
        at.page.keyboard.press("Space")
        later(at.page, 150 + 4.5 * BEAT_MS)
        assert at.page.locator(NOW).inner_text() == "Section A, count 1 of 32"
        assert at.page.evaluate("scrollY") == 0
        later(at.page, 130 * BEAT_MS)
        # the focus waits on Next at a span
        assert at.page.evaluate("document.activeElement.textContent") == "Next"
        at.page.keyboard.press("Space")
        later(at.page, 150 + 0.5 * BEAT_MS)
        assert at.page.locator(NOW).inner_text().startswith("On the way")
        assert at.page.evaluate("document.activeElement.textContent") == "Stop"
        at.page.keyboard.press("Space")
        assert at.page.locator(BIG).inner_text() == "–"
        at.page.focus("#counts-track")
        at.page.keyboard.press("Space")
        assert at.page.locator(BIG).inner_text() == "–"
        assert at.page.get_by_role("button", name="Start").is_visible()


@pytest.mark.parametrize("local", [True, False])
def test_numbers_are_spoken_only_by_a_voice_on_the_device_and_only_when_asked(
    browser: Browser, site: Path, local: bool
) -> None:
    voices = VOICES.replace("LOCAL", "{ localService: true, lang: 'en-GB' }," if local else "")
    with reader(browser, site, extra_script=SILENT + voices) as at:
        at.page.clock.install(time=0)
        at.page.goto(address_of(site, PAGE))
        at.page.clock.pause_at(1000)
        box = at.page.get_by_label("Say the numbers and words aloud")
        assert box.is_visible() == local
        at.page.get_by_role("button", name="Start").click()
        run_for(at.page, 150 + 2.5 * BEAT_MS)
        assert at.page.evaluate("spoken") == []
        if local:
            box.check()
            run_for(at.page, 3 * BEAT_MS)
            assert at.page.evaluate("spoken") == ["8", "1", "2"]


def test_a_dance_without_a_beat_says_so_and_shows_its_spans_and_cues(
    browser: Browser, odd_site: Path, thorough: bool
) -> None:
    with reader(browser, odd_site) as at:
        for slug in chosen(CUED, thorough):
            at.page.goto(address_of(odd_site, f"units/{slug}/counts.html"))
            text = at.page.locator("main").inner_text()
            assert "This dance has no beat to count: it goes by cues" in text
            assert "Not counted, 40 seconds to 1 minute" in text
            assert text.count("Ends on") == 3
            assert at.page.locator("main button, main select").count() == 0
        for slug in chosen(COUNTED, thorough):
            at.page.goto(address_of(odd_site, f"units/{slug}/counts.html"))
            at.page.get_by_role("button", name="Start").click()
            at.page.locator(NOW).get_by_text("Section A, counting in").wait_for()
            low = 1 if slug == "reception-toys" else 5  # phrases of 4, or of 8
            assert low <= int(at.page.locator(BIG).inner_text()) < low + 4
        assert at.said == []


def test_what_is_said_is_on_screen_on_its_count_and_lit_among_the_words(clocks: Page) -> None:
    beat = 60_000 / 104
    (unit,) = (one for one in every_unit() if one.slug == CLOCKS)
    (piece,) = unit.dance.sections["B"].heard
    clocks.select_option("#counts-choice", label="Section B: talk")
    clocks.get_by_role("button", name="Start").click()
    later(clocks, 150 + 4.5 * beat)
    for count, word in enumerate(piece.says, start=1):
        shown = clocks.locator("[data-word]")
        assert shown.is_visible() == (word != "-"), count
        assert shown.inner_text() == ("" if word == "-" else word)
        lit = clocks.locator(".words [data-lit]")
        assert lit.inner_text().split() == [str(count), word if word != "-" else "–"]
        assert clocks.locator("[data-sounding]").inner_text().startswith("Heard: Voice alone")
        later(clocks, beat)


def test_what_sounds_in_a_span_is_told_piece_by_piece_till_next(clocks: Page) -> None:
    beat = 60_000 / 104
    clocks.get_by_role("button", name="Start").click()
    # 32 counts, a join of 8, 16 counts and a join of 8, after four to count in
    run_for(clocks, 150 + 68 * beat + 400)
    sounding = clocks.locator("[data-sounding]")
    told = [sounding.inner_text()]
    for seconds in (4, 3, 5, 5):
        run_for(clocks, seconds * 1000)
        told.append(sounding.inner_text())
    run_for(clocks, 6 * beat)
    words = ("Drum roll", "Silence", "Shaker", "The recording", "Drum, 3 strokes")
    assert [
        one.removeprefix("Heard: ").startswith(w) for one, w in zip(told, words, strict=True)
    ] == [True] * 5
    assert sounding.inner_text() == ""
    assert clocks.get_by_role("button", name="Next").is_visible()
