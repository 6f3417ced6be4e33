"""The bank opened from a folder, with the network shut: every page, every link, and the finder.

Common practice, no source: 12 px is the least that can be read on a phone.
"""

from __future__ import annotations

import posixpath
from pathlib import Path
from urllib.parse import unquote, urlsplit

from playwright.sync_api import Browser, ViewportSize

from tests.support.browser import Reader, address_of, is_inside, reader
from tests.support.built_sites import html_pages, lessons_to_open, pages_to_open, part_of
from tests.support.markup import ids, references, tags

SCREEN, PHONE = (ViewportSize(width=width, height=900) for width in (1280, 390))
LEAST_PX = 12
SIZES = """
() => [...document.querySelectorAll("svg text")].map((text) => {
  const { a, b } = text.getScreenCTM();
  return parseFloat(getComputedStyle(text).fontSize) * Math.hypot(a, b);
})
"""
FACES = "document.fonts.ready.then((faces) => [...faces].map((face) => face.status))"
# All that there is to read on a page. A button is no text: it only does what a script does.
# A page without script keeps nothing, so it has nothing to say of that.
TEXT = """
() => {
  const copy = document.querySelector("main").cloneNode(true);
  const byScript = "button, .seen-here, .kept, #at-fit > :not(summary)";
  for (const added of copy.querySelectorAll(byScript)) added.remove();
  return copy.textContent.replace(/\\s+/g, " ");
}
"""


def complaints(at: Reader, folder: Path) -> list[str]:
    """What went wrong for a reader so far, and on the page that is open now."""
    outside = [address for address in at.requests if not is_inside(address, folder)]
    return [*at.said, *at.violations(), *(f"asked for {address}" for address in outside)]


def broken_links(folder: Path) -> list[str]:
    """Every link and every loaded address of a site that leads nowhere, by its page."""
    read = {path: tags((folder / path).read_text(encoding="utf-8")) for path in html_pages(folder)}
    broken = []
    for path, found in read.items():
        for tag, address in references(found):
            parts = urlsplit(address)
            if parts.scheme == "data":
                continue
            here = posixpath.dirname(path)
            target = posixpath.normpath(posixpath.join(here, unquote(parts.path)))
            target = target if parts.path else path
            place = unquote(parts.fragment)
            if parts.scheme or parts.netloc or parts.path.startswith("/"):
                broken.append(f"{path}: <{tag.name}> leads out of the folder to {address}")
            elif target.startswith("..") or not (folder / target).is_file():
                broken.append(f"{path}: no file for {address}")
            elif place and target in read and place not in ids(read[target]):
                broken.append(f"{path}: no such place as {address}")
    return broken


def test_every_link_of_every_page_leads_somewhere(site: Path) -> None:
    broken = broken_links(site)
    assert not broken, "\n".join(broken)


def test_a_link_that_leads_nowhere_would_be_noticed(tmp_path: Path) -> None:
    (tmp_path / "a.html").write_text(
        '<p id="here"><a href="#here">1</a><a href="#gone">2</a><a href="b.html">3</a>'
        '<a href="../a.html">4</a><a href="https://example.org/">5</a>',
        encoding="utf-8",
    )
    assert len(broken_links(tmp_path)) == 4


def test_every_page_opens_with_the_network_shut_and_nothing_to_complain_of(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """On a phone's screen the words in drawings can be read too."""
    wrong: dict[str, list[str]] = {}
    drawn = 0
    assert len(pages_to_open(site, thorough)) > 10
    with reader(browser, site) as at:
        for path in pages_to_open(site, thorough):
            at.page.goto(address_of(site, path))
            faces = at.page.evaluate(FACES)
            found = complaints(at, site)
            if "loaded" not in faces:
                found.append("the site's own typeface is not in use")
            at.page.set_viewport_size(PHONE)
            sizes: list[float] = at.page.evaluate(SIZES)
            drawn += bool(sizes)
            if sizes and min(sizes) < LEAST_PX:
                found.append(f"words of {min(sizes)} px in a drawing on a phone")
            at.page.set_viewport_size(SCREEN)
            if found:
                wrong[path] = found
            at.requests.clear()
            at.said.clear()
        at.page.wait_for_load_state("networkidle")
        assert complaints(at, site) == []
    assert wrong == {}
    assert drawn > 5


def test_a_page_against_the_policy_would_be_noticed(
    browser: Browser, site: Path, tmp_path: Path
) -> None:
    folder = part_of(site, tmp_path / "spoilt", "index.html")
    html = (folder / "index.html").read_text(encoding="utf-8")
    planted = (
        '<p style="color: red"></p><script>document.title = "ran"</script>'
        '<img src="http://example.org/a.png" alt=""><img src="../outside.png" alt=""></main>'
    )
    (folder / "index.html").write_text(html.replace("</main>", planted), encoding="utf-8")
    with reader(browser, folder) as at:
        at.page.goto(address_of(folder, "index.html"))
        at.page.wait_for_load_state("networkidle")
        assert at.page.title() != "ran"
        stopped = "\n".join(at.violations())
        assert "style-src-attr inline" in stopped
        assert "script-src-elem inline" in stopped
        assert "img-src http://example.org/a.png" in stopped
        told = "\n".join(complaints(at, folder))
        assert "asked for http://example.org/a.png" in told
        assert "outside.png" in told
        assert "error: Executing inline script violates" in told


def test_every_lesson_reads_the_same_without_script(
    browser: Browser, site: Path, thorough: bool
) -> None:
    read: list[dict[str, str]] = []
    for script in (True, False):
        with reader(browser, site, script=script) as at:
            texts = {}
            for path in lessons_to_open(site, thorough):
                at.page.goto(address_of(site, path))
                texts[path] = str(at.page.evaluate(TEXT))
            read.append(texts)
    with_script, without = read
    assert with_script
    assert all(len(text) > 2000 for text in with_script.values())
    assert with_script == without
