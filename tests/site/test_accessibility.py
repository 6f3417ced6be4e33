"""Each kind of page at a wide and a narrow screen, held to axe-core and to its contrast.

In the usual run the heaviest page of each template, wide and light, and every fourth narrow and
dark by the rules that depend on how it looks, and of what stands in a page many times over, made in
one way, the first few; in the long run every page in all four looks, whole, by every rule.

Source of the tags: axe-core's own names for the Web Content Accessibility Guidelines 2.0, 2.1 and
2.2, levels A and AA, and its "best practice" rules. Source of 320 px: WCAG 2.2, success criterion
1.4.10 Reflow.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.support import axe
from tests.support.alike import MOST, shorten
from tests.support.browser import address_of, reader
from tests.support.built_sites import BOOKLET, pages_to_open, part_of

WIDE, NARROW = 1280, 320
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


def test_no_page_breaks_a_rule(browser: Browser, site: Path, thorough: bool) -> None:
    faults: list[str] = []
    # Served, because over file:// a browser keeps the styles' text from axe-core.
    with reader(browser, site, width=NARROW, served=True, extra_script=axe.source()) as at:
        for number, path in enumerate(pages_to_open(site, thorough)):
            put_on(at.page, NARROW, dark=False)
            at.page.goto(address_of(site, path, served=True))
            at.page.evaluate(UNFOLD)
            if (sideways := at.page.evaluate(WIDTH)) > NARROW:
                faults.append(f"{path}: {sideways} px wide on a screen of {NARROW}")
            # A booklet holds the lessons, which are looked at by themselves.
            if BOOKLET.fullmatch(path) and not thorough:
                continue
            if not thorough:
                at.page.evaluate(FEW_RULES)
                shorten(at.page)
            looks = axe.every_look(WIDE, NARROW)
            if not thorough:
                looks = axe.usual_looks(WIDE, NARROW)[: 2 if number % DARK_EVERY == 0 else 1]
            for width, dark in looks:
                put_on(at.page, width, dark=dark)
                found = axe.run(at.page, only=None if thorough or not dark else axe.OF_LOOKS)
                where = f"{path} at {width} px{', dark' if dark else ''}"
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
    assert not faults, "\n".join(faults)


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
    with reader(browser, spoilt, width=NARROW, served=True, extra_script=axe.source()) as at:
        at.page.goto(address_of(spoilt, "index.html", served=True))
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
