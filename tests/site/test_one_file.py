"""Each lesson kept as one file, opened alone; and the booklet, which holds every lesson in full.

At most 150 kB, so that it goes by e-mail and message: common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.building.finishing.one_file import one_file
from tests.support.browser import Reader, address_of, reader
from tests.support.built_sites import heaviest, html_pages, lesson_pages, lessons_to_open
from tests.support.markup import ids, references, tags
from tests.support.paper import Print, printed, squeezed

MOST = 150_000
FOOT_MM = 19.0
# How many letters of a heading's size come first on a side; what floats there, such as times and a
# tall drawing, is painted before them.
BEGINNING, HEADING = 120, 15.0
# What there is to read, without the ways to other pages and what only a script shows.
WORDS = """
([root, less]) => {
  const copy = document.querySelector(root).cloneNode(true);
  // a drawing that comes again shows the first one's shapes, words in it and all
  const leftOut = "[data-beside], [hidden], button, svg text" + less;
  for (const one of copy.querySelectorAll(leftOut)) one.remove();
  return copy.textContent.split(/\\s+/).filter(Boolean);
}
"""
BOUND = """
() => [...document.querySelectorAll(".bound > article")].map((one) => {
  const copy = one.cloneNode(true);
  for (const text of copy.querySelectorAll("svg text")) text.remove();
  return copy.textContent;
})
"""


def kept(at: Reader, site: Path, path: str) -> str:
    """The lesson at `path` as its page keeps it as one file."""
    at.page.goto(address_of(site, path))
    with at.page.expect_download() as download:
        at.page.get_by_role("button", name="Save for offline").click()
    named = path.rpartition("/")[2].replace(".html", "-to-keep.html")
    assert download.value.suggested_filename == named
    return Path(download.value.path()).read_text(encoding="utf-8")


def as_made_here(site: Path, path: str) -> str:
    """The same as `site --keep` writes it."""
    folder = (site / path).parent
    return one_file((site / path).read_text(encoding="utf-8"), lambda n: (folder / n).read_bytes())


SHAPE = """
(html) => {
  const whole = new DOMParser().parseFromString(html, "text/html");
  const walk = (one) => one.nodeType === 3 ? one.data.trim() : one.nodeType !== 1 ? "" :
    [one.localName, [...one.attributes].map((a) => a.name + "=" + a.value).sort(),
     [...one.childNodes].map(walk).filter((each) => each.length)];
  whole.normalize();
  return JSON.stringify(walk(whole.documentElement));
}
"""


def words(at: Reader, root: str = "main", less: str = "") -> list[str]:
    return list(at.page.evaluate(WORDS, [root, less and f", {less}"]))


def test_every_lesson_opens_alone_and_says_the_same(
    browser: Browser, site: Path, tmp_path: Path, thorough: bool
) -> None:
    every = lesson_pages(site)
    paths = every if thorough else heaviest(site, every)
    with reader(browser, site, script=True) as beside, reader(browser, tmp_path) as alone:
        for number, path in enumerate(paths):
            folder = tmp_path / str(number)
            folder.mkdir()
            html = kept(beside, site, path)
            (folder / "kept.html").write_text(html, encoding="utf-8")
            shapes = [alone.page.evaluate(SHAPE, one) for one in (html, as_made_here(site, path))]
            assert shapes[0] == shapes[1], path
            assert (folder / "kept.html").stat().st_size <= MOST, path
            address = address_of(folder, "kept.html")
            alone.requests.clear()
            alone.page.goto(address)
            alone.page.evaluate("document.fonts.ready.then(() => 1)")
            outside = [one for one in alone.requests if not one.startswith("data:")]
            assert outside == [address], path
            assert (alone.violations(), alone.said) == ([], []), path
            faces = alone.page.evaluate("[...document.fonts].map((face) => face.status)")
            assert "loaded" in faces, path
            html = (site / path).read_text(encoding="utf-8")
            beside.page.set_content(html.partition("<script")[0])
            assert words(alone) == words(beside), path
            assert len(words(alone)) > 500, path


def test_a_phone_shows_it_in_its_own_width_and_prints_it_on_two_sides(
    browser: Browser, site: Path, tmp_path: Path
) -> None:
    path = lesson_pages(site)[0]
    (tmp_path / "kept.html").write_text(as_made_here(site, path), encoding="utf-8")
    with reader(browser, tmp_path, width=390) as at:
        at.page.goto(address_of(tmp_path, "kept.html"))
        assert at.page.evaluate("document.documentElement.scrollWidth") <= 390
        assert at.page.locator(".step").first.is_visible()
        more = at.page.locator("details.covers")
        assert not more.locator("h2").first.is_visible()
        more.locator("summary").click()
        assert more.locator("h2").first.is_visible()
        paper = printed(at.page)
    assert len(paper.margins) == 2


def test_a_kept_lesson_leads_nowhere_else(site: Path, thorough: bool) -> None:
    for path in lessons_to_open(site, thorough):
        found = tags(as_made_here(site, path))
        places = {f"#{name}" for name in ids(found)}
        for tag, address in references(found):
            assert address.startswith("data:") or address in places, (path, tag)
        assert not {"script", "form", "base"} & {tag.name for tag in found}, path


A_SHORT_BOOKLET = "units/through-the-gap/booklet.html"
"""A browser takes a minute to lay out the heaviest; what is asked is the same for a few lessons."""


def booklets(site: Path, thorough: bool) -> list[str]:
    """Every booklet in the long run; in the usual one a short one."""
    found = [path for path in html_pages(site) if path.endswith("/booklet.html")]
    assert len(found) > 2
    assert A_SHORT_BOOKLET in found
    return found if thorough else [A_SHORT_BOOKLET]


@dataclass(frozen=True, slots=True)
class Unfolded:
    """A booklet whose lessons are laid out, on the screen and printed."""

    bound: list[list[str]]
    """The words of each lesson and of what else is bound in."""
    titles: list[str]
    names: list[str]
    """Of all that has a name on the page, as often as it is there."""
    paper: Print


@pytest.fixture(scope="module")
def unfolded(browser: Browser, site: Path, thorough: bool) -> dict[str, Unfolded]:
    """Each booklet that is opened, by its path."""
    found = {}
    for path in booklets(site, thorough):
        with reader(browser, site) as at:
            at.page.goto(address_of(site, path))
            at.page.wait_for_selector("html[data-unpacked]")
            bound = [str(text).split() for text in at.page.evaluate(BOUND)]
            titles = at.page.locator(".bound .title").all_text_contents()
            names = ids(tags(at.page.content()))
            found[path] = Unfolded(bound, titles, names, printed(at.page, FOOT_MM))
    return found


def test_without_script_the_booklet_leads_to_each_lesson(browser: Browser, site: Path) -> None:
    (path,) = booklets(site, False)
    lessons = lessons_beside(site, path)
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, path))
        ways = at.page.locator(".bound a").evaluate_all("(all) => all.map((one) => one.href)")
        assert [one for one in ways if "/lesson-" in one] == [
            address_of(site, lesson) for lesson in lessons
        ]


def lessons_beside(site: Path, booklet: str) -> list[str]:
    """The lessons of the unit that a booklet is of."""
    folder = booklet.rpartition("/")[0]
    return [one for one in lesson_pages(site) if one.startswith(f"{folder}/")]


def test_the_booklet_holds_every_lesson_in_full(
    browser: Browser, site: Path, unfolded: dict[str, Unfolded]
) -> None:
    with reader(browser, site, script=False) as plain:
        for path, one in unfolded.items():
            plain.page.goto(address_of(site, path))
            ways = plain.page.locator(".bound a").evaluate_all(
                "(all) => all.map((one) => one.href)"
            )
            assert {address_of(site, lesson) for lesson in lessons_beside(site, path)} <= set(ways)
            assert len(one.bound) == len(ways) > 2
            for text, way in zip(one.bound, ways, strict=True):
                plain.page.goto(way)
                assert text == words(plain, "article", "nav"), way
            assert [name for name, times in Counter(one.names).items() if times > 1] == []


def test_each_lesson_of_the_booklet_starts_on_a_new_side(
    site: Path, unfolded: dict[str, Unfolded]
) -> None:
    for path, one in unfolded.items():
        sides: list[str] = [""] * len(one.paper.margins)
        for glyph in one.paper.glyphs:
            sides[glyph.side] += glyph.text if glyph.size >= HEADING else ""
        starts = [
            next((n for n, side in enumerate(sides) if n > 1 and begins_with(side, title)), -1)
            for title in one.titles
        ]
        # the title side, the unit in short (one side or two), and two for each lesson
        assert len(one.titles) > 2
        assert starts[0] in (2, 3), path
        lessons = len(lessons_beside(site, path))
        assert starts[:lessons] == [starts[0] + 2 * number for number in range(lessons)], path
        assert starts == sorted(set(starts)), path
        assert one.paper.feet[2].endswith(f"Side 3 of {len(sides)}")


def begins_with(side: str, title: str) -> bool:
    """Whether a title is among the first words of a side, wherever it was painted first."""
    return squeezed(title) in squeezed(side)[:BEGINNING]
