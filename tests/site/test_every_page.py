"""Each kind of page in one visit: from a folder, with the network shut, wide, on a phone, narrow.

Nothing is asked for, nothing is complained of, nothing goes sideways; axe-core finds no fault, and
letters stand out from their ground. In the usual run the heaviest page of each template, wide and
light, and every fourth narrow and dark by the rules that depend on how it looks, and of what stands
in a page many times over, made in one way, the first few; in the long run every page in all four
looks, whole, by every rule.

Source of the tags: axe-core's own names for the Web Content Accessibility Guidelines 2.0, 2.1 and
2.2, levels A and AA, and its "best practice" rules. Source of 320 px: WCAG 2.2, success criterion
1.4.10 Reflow. Common practice, no source: 12 px is the least that can be read on a phone.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.support import axe
from tests.support.alike import MOST, shorten
from tests.support.browser import Reader, address_of, is_inside, reader
from tests.support.built_sites import BOOKLET, pages_to_open, part_of

WIDE, PHONE, NARROW = 1280, 390, 320
LEAST_PX = 12
DARK_EVERY = 4
"""Of so many pages one is looked at in the dark too in the usual run."""
MOST_PICTURED = 2
"""Of words in one look whose ground axe-core leaves open, those measured in the usual run."""
# What axe-core cannot decide for itself and why that is no fault here.
FOR_PEOPLE = {
    "color-contrast": "measured below from a picture of the page",
}
# The page of rules is more than two hundred sections, all made in one way.
FEW_RULES = """
() => document.querySelectorAll("section.rule:nth-of-type(n+4)").forEach((rule) => rule.remove())
"""
# What is folded away is read too.
UNFOLD = "() => document.querySelectorAll('details').forEach((part) => { part.open = true; })"
WIDTH = "document.documentElement.scrollWidth"
SIZES = """
() => [...document.querySelectorAll("svg text")].map((text) => {
  const { a, b } = text.getScreenCTM();
  return parseFloat(getComputedStyle(text).fontSize) * Math.hypot(a, b);
})
"""
FACES = "document.fonts.ready.then((faces) => [...faces].map((face) => face.status))"


@dataclass(slots=True)
class Seen:
    """What was found wrong, each with its page."""

    pages: int = 0
    drawn: int = 0
    """Pages with words in drawings."""
    opened: list[str] = field(default_factory=list)
    """Of a page as it opens: what it asks for, what it says, its typeface, words in drawings."""
    sideways: list[str] = field(default_factory=list)
    access: list[str] = field(default_factory=list)


@pytest.fixture(scope="module")
def seen(browser: Browser, site: Path, thorough: bool) -> Seen:
    """Every page that is opened, looked at in every way while it is open."""
    found = Seen()
    with reader(browser, site, extra_script=axe.source()) as at:
        for number, path in enumerate(pages_to_open(site, thorough)):
            found.pages += 1
            put_on(at.page, WIDE, dark=False)
            at.page.goto(address_of(site, path))
            found.opened += [f"{path}: {fault}" for fault in as_it_opens(at, site)]
            put_on(at.page, PHONE, dark=False)
            sizes: list[float] = at.page.evaluate(SIZES)
            found.drawn += bool(sizes)
            if sizes and min(sizes) < LEAST_PX:
                found.opened.append(f"{path}: words of {min(sizes)} px in a drawing on a phone")
            put_on(at.page, NARROW, dark=False)
            at.page.evaluate(UNFOLD)
            if (wide := at.page.evaluate(WIDTH)) > NARROW:
                found.sideways.append(f"{path}: {wide} px wide on a screen of {NARROW}")
            # A booklet holds the lessons, which are looked at by themselves.
            if thorough or not BOOKLET.fullmatch(path):
                dark_too = number % DARK_EVERY == 0
                found.access += [f"{path} {fault}" for fault in access(at, thorough, dark_too)]
            # what a page asks for late, or once it is unfolded
            found.opened += [f"{path}: {fault}" for fault in complaints(at, site)]
            at.requests.clear()
            at.said.clear()
        at.page.wait_for_load_state("networkidle")
        found.opened += complaints(at, site)
    return found


def as_it_opens(at: Reader, folder: Path) -> list[str]:
    """What is wrong with a page that has just been opened."""
    faces = at.page.evaluate(FACES)
    found = complaints(at, folder)
    if "loaded" not in faces:
        found.append("the site's own typeface is not in use")
    return found


def complaints(at: Reader, folder: Path) -> list[str]:
    """What went wrong for a reader so far, and on the page that is open now."""
    outside = [address for address in at.requests if not is_inside(address, folder)]
    return [*at.said, *at.violations(), *(f"asked for {address}" for address in outside)]


def access(at: Reader, thorough: bool, dark_too: bool) -> list[str]:
    """What axe-core and the eye find in the open page, each with the look that it had."""
    looks = axe.every_look(WIDE, NARROW)
    if not thorough:
        at.page.evaluate(FEW_RULES)
        shorten(at.page)
        looks = axe.usual_looks(WIDE, NARROW)[: 2 if dark_too else 1]
    faults: list[str] = []
    for width, dark in looks:
        put_on(at.page, width, dark=dark)
        found = axe.run(at.page, only=None if thorough or not dark else axe.OF_LOOKS)
        where = f"at {width} px{', dark' if dark else ''}"
        faults += [f"{where}: {fault}" for fault in found.violations]
        faults += [
            f"{where}: for people to judge, with no reason noted: {left}"
            for left in found.incomplete
            if left.rule not in FOR_PEOPLE
        ]
        unsure = [left.target for left in found.incomplete if left.rule == "color-contrast"]
        if not thorough:
            unsure = axe.of_each_look(at.page, unsure, MOST_PICTURED)
        faults += [f"{where}: {fault}" for fault in axe.too_faint(at.page, unsure)]
    return faults


def test_every_page_opens_with_the_network_shut_and_nothing_to_complain_of(seen: Seen) -> None:
    """On a phone's screen the words in drawings can be read too."""
    assert seen.opened == []
    assert seen.pages > 10
    assert seen.drawn > 5


def test_no_page_goes_sideways_on_the_narrowest_screen(seen: Seen) -> None:
    assert seen.sideways == []


def test_no_page_breaks_a_rule(seen: Seen) -> None:
    assert not seen.access, "\n".join(seen.access)


def put_on(page: Page, width: int, *, dark: bool) -> None:
    """The same page on another screen, or on other paper."""
    page.set_viewport_size({"width": width, "height": 900})
    page.emulate_media(color_scheme="dark" if dark else "light")


@pytest.fixture
def spoilt(site: Path, tmp_path: Path) -> Path:
    """The front page with a faint line, a picture without words and a faint line on a pattern."""
    folder = part_of(site, tmp_path / "spoilt", "index.html")
    front = folder / "index.html"
    planted = (
        '<p id="faint">Faint</p><img src="data:," id="wordless">'
        '<p id="patterned">On a pattern</p><ul id="alike">'
        + "".join(f"<li>{n}</li>" for n in range(9))
        + '<li id="odd" class="faint">Faint too</li></ul>'
        '<link rel="stylesheet" href="assets/planted.css"></main>'
    )
    front.write_text(
        front.read_text(encoding="utf-8").replace("</main>", planted), encoding="utf-8"
    )
    (folder / "assets" / "planted.css").write_text(
        "#faint, .faint, #patterned { color: #777; background: #fff }"
        "#patterned { background-image: repeating-linear-gradient(#fff 0 4px, #999 4px 6px) }"
        "#wordless { width: 2000px; max-width: none; height: 9px; display: block }",
        encoding="utf-8",
    )
    return folder


def test_these_checks_notice_a_spoilt_page(browser: Browser, spoilt: Path) -> None:
    with reader(browser, spoilt, width=NARROW, extra_script=axe.source()) as at:
        at.page.goto(address_of(spoilt, "index.html"))
        shorten(at.page)
        assert at.page.locator("#alike > li").count() == MOST + 1
        found = axe.run(at.page)
        assert {
            ("color-contrast", "#faint"),
            ("color-contrast", "#odd"),
            ("image-alt", "#wordless"),
        } <= {(fault.rule, fault.target) for fault in found.violations}
        unsure = [left.target for left in found.incomplete]
        assert "#patterned" in unsure
        assert any("#patterned: 1." in fault for fault in axe.too_faint(at.page, ["#patterned"]))
        assert at.page.evaluate(WIDTH) > NARROW


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
