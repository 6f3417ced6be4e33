"""How much a lesson page weighs, beside the same words on the publisher's own plain theme.

Common practice, no source: 120 kB for pages, styles and scripts, the typeface apart, and 6 more
for a lesson with its plans of the floor; 120 kB for the dance from above with its scripts, the
styles that every page shares apart; 60 kB for the front page with its pictures; and no words
waiting for the typeface (CSS Fonts Module Level 4, font-display: swap or optional). What only a
fitted lesson or a hall of the day needs is loaded when it is asked for. Pages of a unit, its own
pictures and sounds apart: no more than they came to when last made smaller, and a little over.
"""

from __future__ import annotations

import re
from pathlib import Path

from playwright.sync_api import Browser

from build_tools.pages.front.front import FEW
from tests.support.built_sites import lesson_pages
from tests.support.markup import references, tags
from tests.support.plain_theme import build_plain, words_of

WITH_PLANS, FROM_ABOVE = 120_000, 120_000
MOST_TIMES = 1.4
MOST_IN_FRONT = 60_000
A_UNIT, THE_HEAVIEST = 480_000, 680_000
"""Bytes of the pages of a unit, in the mean of all units and of the heaviest of them; the goal is
500,000. A tenth more words in every lesson and figures that count their steps cost 4,000."""


def loaded(page: Path) -> dict[Path, int]:
    """The page and every style, script and picture that it names, with their sizes in bytes."""
    found = {page: page.stat().st_size}
    for tag, address in references(tags(page.read_text(encoding="utf-8"))):
        style = tag.name == "link" and "stylesheet" in tag.attributes.get("rel", "")
        if style or tag.name in ("script", "img"):
            file = (page.parent / address.partition("?")[0]).resolve()
            found[file] = file.stat().st_size
    return found


def test_a_lesson_weighs_little_and_not_much_more_than_its_words_on_the_plain_theme(
    browser: Browser, site: Path, tmp_path: Path
) -> None:
    sizes = {path: sum(loaded(site / path).values()) for path in lesson_pages(site)}
    heaviest = max(sizes, key=lambda path: sizes[path])
    assert sizes[heaviest] <= WITH_PLANS, (heaviest, loaded(site / heaviest))
    words = words_of(browser, site / heaviest)
    plain = build_plain(words, tmp_path / "plain")
    assert len(words.split()) > 500
    beside = loaded(plain)
    assert {file.suffix for file in beside} == {".html", ".css", ".js"}
    assert sizes[heaviest] <= MOST_TIMES * sum(beside.values())


def test_the_dance_from_above_weighs_little_with_all_its_scripts(site: Path) -> None:
    weighed = {
        page.parent.name: {file: n for file, n in loaded(page).items() if file.suffix != ".css"}
        for page in sorted(site.glob("units/*/dance.html"))
    }
    heaviest = max(weighed.values(), key=lambda sizes: sum(sizes.values()))
    assert {file.name for file in heaviest} == {"dance.html", "dance_from_above.js"}
    assert sum(heaviest.values()) <= FROM_ABOVE, heaviest


def test_the_pages_of_a_unit_weigh_little(site: Path) -> None:
    sizes = {
        folder.name: sum(page.stat().st_size for page in folder.glob("*.html"))
        for folder in site.glob("units/*")
    }
    assert sum(sizes.values()) <= A_UNIT * len(sizes), sizes
    assert max(sizes.values()) <= THE_HEAVIEST, sizes


def test_the_front_page_weighs_little_with_its_pictures(site: Path) -> None:
    sizes = loaded(site / "index.html")
    pictures = [file for file in sizes if file.suffix in (".svg", ".jpg")]
    assert len(pictures) == FEW
    assert sum(sizes.values()) <= MOST_IN_FRONT, sizes


def test_the_plain_theme_holds_the_same_words(browser: Browser, site: Path, tmp_path: Path) -> None:
    words = words_of(browser, site / lesson_pages(site)[0])
    plain = build_plain(words, tmp_path / "plain")
    shown = words_of(browser, plain).split()
    assert [word for word in words.split() if word not in set(shown)] == []


def test_no_words_wait_for_the_typeface(site: Path) -> None:
    for file in (site / "assets/css").glob("*.css"):
        for face in re.findall(r"@font-face\s*{([^}]*)}", file.read_text(encoding="utf-8")):
            assert re.search(r"font-display:\s*(swap|optional)\s*;", face), (file.name, face)


def test_no_script_stands_before_the_words(site: Path) -> None:
    for path in lesson_pages(site):
        html = (site / path).read_text(encoding="utf-8")
        assert html.index("<script") > html.index("</main>"), path


def test_the_typeface_is_asked_for_after_the_words(site: Path) -> None:
    for path in lesson_pages(site):
        html = (site / path).read_text(encoding="utf-8")
        assert html.index("assets/css/typeface.css") > html.index("</main>"), path
        for style in loaded(site / path):
            if style.suffix == ".css" and style.name != "typeface.css":
                assert "@font-face" not in style.read_text(encoding="utf-8"), style.name
