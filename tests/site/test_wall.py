"""The wall in a real browser: what the back of a hall can read, and how its pages are turned.

Sources: WCAG 2.2, success criteria 2.5.5 Target Size (Enhanced), 2.3.1 Three Flashes,
1.4.10 Reflow, 1.4.4 Resize Text. From memory, no source: a capital letter is read at two hundred
times its height, so at 5 metres it wants 25 millimetres; a screen of 65 inches is 81 centimetres
high, and a capital of the face is two thirds of its size. So words want 0.046 of the height.
"""

from __future__ import annotations

import json
from itertools import pairwise
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from build_tools.paths.hall import KNOWN_HALLS
from build_tools.sentences.plain import sentences_of
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.words.room_said import team_in_words
from tests.support import axe
from tests.support.browser import address_of
from tests.support.built_sites import lesson_pages
from tests.support.hall import KEY, REFUSED, TEN_PAST_ONE, opened, small_targets
from tests.support.sound_bank import real_bank

WALL = "units/rock-pool/wall.html#lesson-3"
LIGHT, LIGHT_KEPT = "units/through-the-gap/wall.html#lesson-2", "wall/through-the-gap/2"
"""A wall of few lessons, opened sooner, where what is asked is of no lesson in particular."""
FIRST = "units/kite-and-string/wall.html#lesson-1"
"""As light; it begins with a picture, and has a strip of moves."""
FULLEST = "units/gathering-peascods/wall.html#lesson-3"
JOINING = "units/rock-pool/wall.html#lesson-4"
TASK, LEAST = 0.046, 0.044
SIZES = """
() => {
  const seen = (one) => one.checkVisibility() && getComputedStyle(one).clipPath === "none";
  const hidden = (one) => one.closest(".aside");
  const size = (one) => {
    const drawn = one instanceof SVGElement ? one.getScreenCTM() : { a: 1, b: 0 };
    const scale = Math.hypot(drawn.a, drawn.b);
    return parseFloat(getComputedStyle(one).fontSize) * scale;
  };
  const own = (one) =>
    [...one.childNodes].some((part) => part.nodeType === 3 && part.textContent.trim());
  const all = [...document.querySelectorAll("body *:not(script, title)")]
    .filter((one) => own(one) && seen(one) && !hidden(one));
  const forClass = all.filter((one) => !one.closest(".wall-foot, button"));
  const line = document.querySelector(".wall-step[data-now] [data-line][data-now]");
  const drawn = document.querySelector(
    ".wall-start[data-now] img, .wall-step[data-now] :is(.strip[data-now] svg, .beside)");
  const { scrollWidth, scrollHeight } = document.documentElement;
  return {
    task: line ? size(line) : 1e9,
    words: line ? line.textContent.trim() : "the picture alone.",
    drawn: drawn ? drawn.getBoundingClientRect().height : 0,
    counted: Boolean(document.querySelector(".wall-step[data-now] .count-go")),
    wordsAlone: Boolean(
      document.querySelector(".wall-step[data-now] :is(.order, .phrase)[data-now]")),
    least: Math.min(...forClass.map(size)), many: all.length, wide: scrollWidth, high: scrollHeight,
    cut: all.filter((one) => {
      const box = one.getBoundingClientRect();
      return box.left < -1 || box.right > innerWidth + 1 || box.bottom > innerHeight + 1;
    }).map((one) => one.textContent),
  };
}
"""
ALL_SEEN = """
(all) => all.every((one) => {
  const { width, height } = one.getBoundingClientRect();
  return width && height && one.checkVisibility({ visibilityProperty: true });
})
"""
SILENT = "window.AudioContext = class { constructor() { throw new Error('no sound here'); } };"


def line(page: Page) -> str:
    return page.locator(".wall-step[data-now] [data-line][data-now]").inner_text()


def place(page: Page) -> str:
    return page.locator(".wall-place").inner_text()


def shown(page: Page) -> str:
    """What is up, told apart from another picture of the same line."""
    return f"{place(page)}: {line(page)}"


def walk(page: Page, most: int = 80) -> list[str]:
    """Every line from here to the end, by the clicker."""
    found = [line(page)]
    for _ in range(most):
        if page.get_by_role("button", name="Next").is_disabled():
            break
        page.keyboard.press("PageDown")
        found.append(line(page))
    return found


def every_wall(site: Path) -> list[str]:
    """The wall of each lesson, two of one unit never next to each other: they are one page."""
    every = [path.split("/") for path in lesson_pages(site)]
    return [
        f"units/{unit}/wall.html#{name.removesuffix('.html')}"
        for name, unit in sorted((name, unit) for _, unit, name in every)
    ]


@pytest.mark.parametrize(
    "size",
    [
        (1280, 720),
        *(pytest.param(one, marks=pytest.mark.thorough) for one in ((1920, 1080), (1024, 768))),
    ],
)
def test_the_back_of_the_hall_can_read_every_screen_of_every_lesson(
    browser: Browser, site: Path, size: tuple[int, int], thorough: bool
) -> None:
    """At 1280 x 720 and 1920 x 1080 to the letter; on a squarer screen drawings are narrower."""
    walls = every_wall(site)
    walls = walls if thorough else [FULLEST]
    faults, high, seen = [], size[1], 0
    least = LEAST if size[0] / size[1] > 1.5 else 0.04
    with opened(browser, site, WALL, size=size, extra_script=SILENT) as at:
        for path in walls:
            at.page.goto(address_of(site, path))
            while True:
                found, seen = at.page.evaluate(SIZES), seen + 1
                where = f"{path} {found['words']}"
                if found["task"] < TASK * high:
                    faults.append(f"{where}: task {found['task']}")
                if found["least"] < least * high:
                    faults.append(f"{where}: least {found['least']}")
                if found["wide"] > size[0] or found["high"] > high or found["cut"]:
                    faults.append(f"{where}: {found['wide']} x {found['high']} {found['cut']}")
                if not found["words"].endswith((".", "?", "!", "”", "’")):
                    faults.append(f"{where}: broken inside a sentence")
                if not found["wordsAlone"] and found["drawn"] < 0.3 * high:
                    faults.append(f"{where}: drawn {found['drawn']}")
                if found["counted"] and high < counting(at.page):
                    faults.append(f"{where}: too high while it is counted")
                if at.page.get_by_role("button", name="Next").is_disabled():
                    break
                at.page.keyboard.press("PageDown")
    assert seen > 8 * len(walls)
    assert faults == []


IN_TIME = """
new Promise((done) => {
  let frames = 60;
  const look = () => {
    const high = document.documentElement.scrollHeight;
    frames -= 1;
    if (high <= window.innerHeight || !frames) done(high);
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(() => requestAnimationFrame(look));
})
"""
"""How high the screen is once it has given way, for which a busy computer may take some frames."""


def counting(page: Page) -> int:
    """How high the screen is while its counts go, in pixels; they are stopped again."""
    page.keyboard.press(" ")
    high: int = page.evaluate(IN_TIME)
    page.keyboard.press("Escape")
    return high


def test_a_screen_that_tells_of_teams_still_fits(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """Half a hall for a class of thirty: teams in words where the lesson begins."""
    walls = every_wall(site)
    # in a classroom nobody waits for another team
    halls = [path for path in walls if "after-home-time" not in path]
    walls = halls if thorough else [FULLEST]
    with opened(browser, site, WALL, size=(1024, 768)) as at:
        for path in walls:
            at.page.goto(address_of(site, path) + "&fit=45-8-30-2-half")
            at.page.wait_for_function("document.querySelector('[data-teams]').textContent")
            while not place(at.page):
                at.page.keyboard.press("PageDown")
            found = at.page.evaluate(SIZES)
            assert found["high"] <= 768, path


def test_long_tasks_are_split_and_nothing_is_lost(browser: Browser, site: Path) -> None:
    with opened(browser, site, "units/seeds-on-the-move/wall.html#lesson-1") as at:
        at.page.keyboard.press("PageDown")  # past the picture
        told = " ".join(dict.fromkeys(walk(at.page)))
        unit = next(one for one in real_bank().units if one.slug == "seeds-on-the-move")
        longest = max((step.task for step in unit.lessons[0].steps), key=len)
        assert [one for one in sentences_of(longest) if one not in told] == []


def test_keys_a_click_and_a_clicker_turn_the_pages(browser: Browser, site: Path) -> None:
    with opened(browser, site, LIGHT, size=(1280, 720)) as at:
        page, keys = at.page, at.page.keyboard
        first = shown(page)
        keys.press("ArrowLeft")
        keys.press("PageUp")
        assert shown(page) == first
        keys.press("PageDown")
        second = shown(page)
        assert second != first
        for key in ("b", ".", "F2", "Shift+PageDown"):
            keys.press(key)
        assert shown(page) == second
        keys.press("ArrowUp")
        assert shown(page) == first
        keys.press("ArrowDown")
        keys.press("ArrowRight")
        third = shown(page)
        assert third not in (first, second)
        page.get_by_role("button", name="Back").click()
        assert shown(page) == second
        page.locator(".wall-step[data-now] .task").click()
        assert shown(page) == third
        page.get_by_role("button", name="Next").focus()
        keys.press("Enter")
        assert shown(page) not in (first, second, third)
        walk(page)
        last = shown(page)
        keys.press("PageDown")
        assert shown(page) == last
        assert at.said == []


def to_the_count(page: Page) -> None:
    while not page.locator(".wall-step[data-now] .count-go").count():
        page.keyboard.press("PageDown")


def test_the_count_starts_and_stops_on_a_click_and_on_the_space_bar(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, LIGHT, size=(1280, 720), extra_script=SILENT) as at:
        page = at.page
        to_the_count(page)
        go = page.locator(".wall-step[data-now] .count-go")
        number = go.locator(".number")
        assert go.inner_text().endswith("Start counts")
        go.click()
        expect(go).to_contain_text("Stop counts")
        told: list[str] = []
        for _ in range(40):
            page.clock.fast_forward(200)
            shown = number.inner_text()
            if shown not in ("…", *told[-1:]):
                told.append(shown)
        assert told[:4] == ["5", "6", "7", "8"]
        assert told[4:8] == ["1", "2", "3", "4"]
        assert "count in silence" in page.locator(".wall-said").inner_text()
        page.evaluate("document.activeElement.blur()")
        page.keyboard.press(" ")
        expect(go).to_contain_text("Start counts")
        page.keyboard.press(" ")
        expect(go).to_contain_text("Stop counts")
        page.keyboard.press("Escape")
        expect(go).to_contain_text("Start counts")
        page.keyboard.press(" ")
        before = place(page).partition(",")[0]
        while place(page).partition(",")[0] == before:
            page.keyboard.press("PageDown")
        assert page.locator("[data-playing]").count() == 0


def test_the_number_and_what_is_pressed_are_big_and_it_never_changes_more_than_three_times_a_second(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, LIGHT, size=(1280, 720), extra_script=SILENT) as at:
        tempos = at.page.locator("[data-count]").evaluate_all(
            "all => all.map(one => Number(one.dataset.tempo))"
        )
        assert tempos
        assert max(tempos) / 60 <= 3
        assert small_targets(at.page) == []
        to_the_count(at.page)
        assert small_targets(at.page) == []
        at.page.keyboard.press(" ")
        number = at.page.locator("[data-playing] .number")
        size = number.evaluate("one => parseFloat(getComputedStyle(one).fontSize)")
        assert size >= 0.16 * 720


def test_the_move_that_is_danced_is_marked_while_the_count_goes(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, FIRST, size=(1280, 720), extra_script=SILENT) as at:
        page = at.page
        while not page.locator(".wall-step[data-now] .strip[data-moves]").count():
            page.keyboard.press("PageDown")
        spans = page.locator(".wall-step[data-now] .strip").evaluate_all(
            "all => all.flatMap(one => one.dataset.moves.split(' '))"
        )
        phrase = int(
            page.locator(".wall-step[data-now] [data-count]").get_attribute("data-phrase") or 0
        )
        page.keyboard.press(" ")
        told: list[tuple[str, list[int]]] = []
        for _ in range(60):
            page.clock.fast_forward(200)
            number, lit = page.evaluate(
                """() => {
                  const step = document.querySelector(".wall-step[data-now]");
                  const moves = [...step.querySelectorAll(".move")];
                  const lit = moves.flatMap((one, n) => one.hasAttribute("data-lit") ? [n] : []);
                  return [step.querySelector(".number").textContent, lit];
                }"""
            )
            told.append((number, lit))
        assert all(len(lit) <= 1 for _, lit in told)
        danced = [(int(number) - 1, lit[0]) for number, lit in told if lit]
        assert len(danced) > 20
        for count, move in danced:
            first, _, last = spans[move].partition("-")
            whole = float(spans[-1].partition("-")[2])
            counts = [n for n in range(int(whole)) if n % phrase == count]
            assert any(float(first) <= n < float(last) for n in counts)
        page.keyboard.press(" ")
        assert page.locator("[data-lit]").count() == 0


def test_words_grow_with_the_browsers_zoom(browser: Browser, site: Path) -> None:
    """At 200 % a screen of 1280 by 720 has 640 by 360 of the page's pixels, each twice as large."""
    size = """() => parseFloat(getComputedStyle(
      document.querySelector("[data-line][data-now]")).fontSize)"""
    with opened(browser, site, LIGHT, size=(1280, 720)) as at:
        plain = at.page.evaluate(size)
        at.page.set_viewport_size({"width": 640, "height": 360})
        at.page.reload()
        assert 2 * at.page.evaluate(size) > 1.4 * plain
        assert at.page.evaluate("document.documentElement.scrollWidth") <= 640


def test_the_first_lesson_begins_with_the_picture_as_large_as_the_screen(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, FIRST, size=(1280, 720)) as at:
        box = at.page.locator(".wall-start img").bounding_box()
        assert box
        assert box["height"] > 0.8 * 720
        at.page.keyboard.press("PageDown")
        assert place(at.page).startswith("Step 1 of")


def test_it_follows_the_fitted_lesson_and_the_links_carry_the_settings(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, f"{WALL}&fit=45-8-27-2-half", size=(1280, 720)) as at:
        page = at.page
        page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        shares: list[int] = page.evaluate(
            "danceUnitBank.sums.lessonToday(danceUnitBank.stepFacts(document), "
            "danceUnitBank.settings.fit()).sittings[0].map((one) => one.minutes)"
        )
        shown = page.locator("[data-lasts]").all_text_contents()
        assert shown == [f"{share} minute{'' if share == 1 else 's'}" for share in shares]
        groups = page.locator("[data-groups]").all_text_contents()
        assert groups[3].startswith("Twelve pairs and one three")
        assert groups[0].startswith("Each pupil alone")
        page.wait_for_function("document.querySelector('[data-teams]').textContent")
        unit = next(one for one in real_bank().units if one.slug == "rock-pool")
        for number, team in enumerate(unit_room(unit, 27, KNOWN_HALLS["half"]).sharing.teams, 1):
            assert team_in_words(number, team) in page.locator("[data-teams]").inner_text()
        hrefs = [
            link.get_attribute("href") for link in page.locator(".wall-foot a[data-carry]").all()
        ]
        assert hrefs == [
            "lesson-3.html#fit=45-8-27-2-half",
            "lesson-3.html#card&fit=45-8-27-2-half",
        ]


def test_a_reload_stays_where_it_was_that_day(browser: Browser, site: Path) -> None:
    with opened(browser, site, LIGHT, size=(1280, 720)) as at:
        for _ in range(4):
            at.page.keyboard.press("PageDown")
        before = place(at.page)
        at.page.reload()
        assert place(at.page) == before
        at.page.clock.set_system_time(TEN_PAST_ONE.replace(day=26))
        at.page.reload()
        assert place(at.page).startswith("Step 1 of")


@pytest.mark.parametrize(
    ("extra_script", "fragment", "said"),
    [
        (REFUSED, "", "keeps nothing"),
        pytest.param(
            f"localStorage.setItem({json.dumps(KEY)}, '[');",
            "",
            "could not be read",
            marks=pytest.mark.thorough,
        ),
        ("", "&fit=a-b&last=%", "could not be read"),
    ],
    ids=["storage refused", "corrupt settings", "nonsense in the address"],
)
def test_it_works_whatever_was_kept(
    browser: Browser, site: Path, extra_script: str, fragment: str, said: str
) -> None:
    with opened(browser, site, LIGHT + fragment, size=(1280, 720), extra_script=extra_script) as at:
        assert said in at.page.locator(".wall-said").inner_text()
        assert len(walk(at.page)) > 9
        assert at.said == []


@pytest.mark.parametrize(
    "at_screen", [4000, *(pytest.param(at, marks=pytest.mark.thorough) for at in (None, -1, "x"))]
)
def test_a_kept_place_that_makes_no_sense_starts_at_the_first(
    browser: Browser, site: Path, at_screen: object
) -> None:
    kept = {LIGHT_KEPT: {"day": "2026-11-25", "at": at_screen}}
    held = json.dumps({"version": 1, "kept": kept})
    plant = f"localStorage.setItem({json.dumps(KEY)}, {json.dumps(held)});"
    with opened(browser, site, LIGHT, size=(1280, 720), extra_script=plant) as at:
        assert place(at.page).startswith("Step 1 of")


def test_without_script_every_task_and_strip_is_there(browser: Browser, site: Path) -> None:
    with opened(browser, site, WALL, size=(1280, 720), script=False) as at:
        page = at.page
        for found in ("[data-line]", ".wall-step svg", ".wall-step"):
            shown = page.locator(f"#lesson-3 {found}")
            assert shown.count() > 0
            assert shown.evaluate_all(ALL_SEEN)
            assert not page.locator(f"#lesson-2 {found}").first.is_visible()
        assert page.locator("button").count() == 0
        assert page.locator("#lesson-3").get_by_text("32 counts").first.is_visible()
        # the next lesson joins sections, and shows their order
        page.goto(address_of(site, JOINING))
        order = at.page.locator("#lesson-4 .order li")
        assert order.count()
        assert order.evaluate_all(ALL_SEEN)
        # an address that names no lesson has every one
        page.goto(address_of(site, WALL.partition("#")[0]))
        steps = at.page.locator(".wall-step")
        assert steps.count() > 30
        assert steps.evaluate_all(ALL_SEEN)


@pytest.mark.parametrize(("width", "dark"), axe.looks(1280, 768, 320))
def test_the_wall_breaks_no_rule_of_access(
    browser: Browser, site: Path, width: int, dark: bool
) -> None:
    with opened(browser, site, WALL, size=(width, 720), dark=dark, extra_script=axe.source()) as at:
        page = at.page
        faults: list[str] = []

        def look() -> None:
            found = axe.run(page)
            faults.extend(str(fault) for fault in found.violations)
            unsure = [one for one in found.incomplete if one.rule != "color-contrast"]
            faults.extend(f"for people to judge: {one}" for one in unsure)
            assert page.evaluate("document.documentElement.scrollWidth") <= width

        # Its first screen is looked at in test_every_page.py.
        to_the_count(page)
        look()
        page.keyboard.press(" ")
        look()
        assert faults == []


def test_all_moves_of_a_phrase_are_up_while_it_is_counted_and_one_is_marked(
    browser: Browser, site: Path
) -> None:
    """What a teacher missed: every move in turn with its counts, and which is danced now."""
    with opened(browser, site, LIGHT) as at:
        for _ in range(40):
            if at.page.locator(".wall-step[data-now] .phrase[data-now] [data-span]").count():
                break
            at.page.keyboard.press("PageDown")
        rows = at.page.locator(".wall-step[data-now] .phrase[data-now]")
        moves = rows.locator("[data-span]")
        spans = [tuple(map(float, span.split("-"))) for span in spans_of(moves)]
        assert len(spans) > 4
        # one after another; in a canon nobody's move is everybody's, and none is marked
        assert all(end <= start for (_, end), (start, _) in pairwise(spans))
        at.page.get_by_role("button", name="Start counts").click()
        expect(rows.locator("[data-lit]")).to_have_count(1, timeout=15_000)
        assert rows.is_visible()
        at.page.get_by_role("button", name="Stop counts").click()
        expect(rows.locator("[data-lit]")).to_have_count(0)


def spans_of(moves: Locator) -> list[str]:
    return [str(moves.nth(n).get_attribute("data-span")) for n in range(moves.count())]
