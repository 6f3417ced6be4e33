"""The pages of a pack open in a browser from a folder, with the network shut."""

from __future__ import annotations

import shutil
from pathlib import Path

from playwright.sync_api import Browser

from tests.support.browser import address_of, reader
from tests.support.built_packs import EACH, packed, unpacked
from tests.support.built_sites import heaviest, html_pages
from tests.support.markup import ids, references, tags

FACES = "document.fonts.ready.then((faces) => [...faces].map((face) => face.status))"
BROKEN = "[...document.images].filter((one) => !one.naturalWidth).map((one) => one.alt)"
SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth"


@EACH
def test_every_page_opens_whole_and_asks_for_nothing(
    slug: str, browser: Browser, tmp_path: Path, thorough: bool
) -> None:
    """In the usual run the heaviest lesson, and each other page."""
    pages = unpacked(packed(slug).data, tmp_path / "a stick") / "data" / "pages"
    paths = html_pages(pages)
    assert len(paths) > 4
    with reader(browser, pages, width=390) as at:
        for path in paths if thorough else heaviest(pages, paths):
            at.requests.clear()
            at.page.goto(address_of(pages, path))
            assert "loaded" in at.page.evaluate(FACES), path
            outside = [one for one in at.requests if not one.startswith("data:")]
            assert outside == [address_of(pages, path)]
            assert (at.violations(), at.said) == ([], []), path
            assert at.page.evaluate(BROKEN) == [], path
            assert at.page.evaluate(SIDEWAYS) <= 0, path
            assert at.page.locator("h1").is_visible()


def test_the_listening_hears_what_a_policy_stops(browser: Browser, tmp_path: Path) -> None:
    pages = unpacked(packed("rock-pool").data, tmp_path) / "data" / "pages"
    page = pages / "lesson-1.html"
    text = page.read_text(encoding="utf-8")
    page.write_text(text.replace("</body>", "<script>1</script></body>"), encoding="utf-8")
    with reader(browser, pages) as at:
        at.page.goto(address_of(pages, "lesson-1.html"))
        assert len(at.violations()) == 1


@EACH
def test_every_link_leads_to_a_place_in_the_pack_or_nowhere(slug: str, tmp_path: Path) -> None:
    pages = unpacked(packed(slug).data, tmp_path) / "data" / "pages"
    found = {path: tags((pages / path).read_text("utf-8")) for path in html_pages(pages)}
    reached = set()
    for path, page in found.items():
        for _, address in references(page):
            if address.startswith("data:"):
                continue
            file, _, place = address.partition("#")
            target = file or path
            assert target in found, f"{path} leads to {address}"
            assert not place or place in ids(found[target]), f"{path} leads to {address}"
            reached.add(target)
    assert reached == set(found)


def test_a_reader_goes_from_the_unit_to_a_lesson_and_back(browser: Browser, tmp_path: Path) -> None:
    pages = unpacked(packed("rock-pool").data, tmp_path) / "data" / "pages"
    with reader(browser, pages, script=False) as at:
        at.page.goto(address_of(pages, "index.html"))
        at.page.locator("a[href^='lesson-2.html']").first.click()
        assert at.page.url.partition("#")[0] == address_of(pages, "lesson-2.html")
        at.page.locator("a[href^='index.html']").first.click()
        assert at.page.url.partition("#")[0] == address_of(pages, "index.html")


def test_a_page_stands_alone_when_it_is_taken_out(browser: Browser, tmp_path: Path) -> None:
    pages = unpacked(packed("rock-pool").data, tmp_path) / "data" / "pages"
    alone = tmp_path / "alone"
    alone.mkdir()
    shutil.copyfile(pages / "index.html", alone / "index.html")
    with reader(browser, alone) as at:
        at.page.goto(address_of(alone, "index.html"))
        assert at.page.evaluate(BROKEN) == []
        assert (at.violations(), at.said) == ([], [])
