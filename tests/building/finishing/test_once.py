"""What a page repeats stands in it once, and looks the same."""

from __future__ import annotations

import re

from playwright.sync_api import Browser

from build_tools.building.finishing.once import once, rules
from build_tools.building.templates import html_of
from build_tools.disk.places import OVERRIDES
from build_tools.pages.wall.wall import wall_page
from build_tools.views.diagrams.svg import drawing, line, path, text
from tests.support.sound_bank import real_bank, real_unit

ONE = drawing(
    "A wave",
    100,
    40,
    line(0, 20, 100, 20, 2, "rule"),
    text("up", 50, 30, 13, kind="quiet"),
    kind="strip",
)
OTHER = drawing("A rest", 100, 40, path("M1 1h90v30h-90z", 1.6), text("down", 50, 30), kind="strip")
PAGE = f"<body><p>First.</p>{ONE}<p>Again:</p>{ONE}{OTHER}<p>and {ONE} last</p></body>"


def test_a_picture_that_comes_again_shows_the_first() -> None:
    shorter = once(PAGE)
    assert len(shorter) < len(PAGE)
    assert shorter.count("<title>A wave</title>") == 3
    assert shorter.count('<use href="#drawn-1"/>') == 2
    assert shorter.count(' id="drawn-1"') == shorter.count("M0 20L100 20") == 1
    assert re.sub(r"<svg.*?</svg>", "", shorter) == re.sub(r"<svg.*?</svg>", "", PAGE)
    assert once(shorter) == shorter


def test_what_comes_once_keeps_its_shapes_where_they_are() -> None:
    page = f"<body>{OTHER}</body>"
    assert "<use" not in once(page)
    assert "M1 1h90v30h-90z" in once(page)
    assert once("<body><p>No picture</p></body>") == "<body><p>No picture</p></body>"


def test_a_picture_in_a_picture_goes_with_it() -> None:
    inner = path("M1 2h3", 2) + path("M1 5h3", 2)
    nested = f'<svg viewBox="0 0 9 9"><svg x="1" y="1">{inner}</svg></svg>'
    shorter = once(nested * 3)
    assert shorter.count("M1 5h3") == 1
    assert shorter.count("<use ") == 2
    assert shorter.count("<svg") == shorter.count("</svg>") == 4


def test_the_classes_draw_as_the_attributes_did(browser: Browser) -> None:
    """Every picture of the heaviest wall, pixel by pixel, before and after."""
    unit = real_unit()
    pages = [html_of(wall_page(real_bank(), unit, lesson)) for lesson in unit.lessons]
    html = max(pages, key=len)
    pictures = re.findall(r"<svg.*?</svg>", html, re.DOTALL)[:12]
    body = "".join(f"<div>{one}</div>" for one in pictures)
    style = (OVERRIDES / "frame" / "look.css").read_text(encoding="utf-8")
    shown = []
    for content in (body, once(body)):
        tab = browser.new_page(viewport={"width": 400, "height": 1200})
        tab.set_content(f"<style>{rules()}{style}</style>{content}")
        shown.append(tab.screenshot())
        tab.close()
    assert len(once(body)) < 0.7 * len(body)
    assert shown[0] == shown[1]
