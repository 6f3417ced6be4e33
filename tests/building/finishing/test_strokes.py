"""What pictures say of their strokes most often is a class, and draws as it did."""

from __future__ import annotations

import re

from playwright.sync_api import Browser

from build_tools.building.finishing.strokes import stroke_rules, with_stroke_classes
from build_tools.building.templates import html_of
from build_tools.disk.places import OVERRIDES
from build_tools.pages.handouts.handouts import handouts_page
from build_tools.pages.moves.moves import moves_page
from build_tools.pages.page import Page
from build_tools.pages.wall.wall import wall_page
from tests.support.sound_bank import real_bank, real_unit

LOOK = (OVERRIDES / "frame" / "look.css").read_text(encoding="utf-8")


def shown(browser: Browser, body: str) -> bytes:
    tab = browser.new_page(viewport={"width": 500, "height": 1600})
    tab.set_content(f"<style>{stroke_rules()}{LOOK}</style>{body}")
    picture = tab.screenshot()
    tab.close()
    return picture


def pictures(page: Page) -> str:
    html = html_of(page)
    sprite = "".join(re.findall(r'<svg class="sprite".*?</svg>', html))
    found = re.findall(r'<svg [^>]*class="drawing.*?</svg>', html, re.DOTALL)[:14]
    return "".join((sprite, *(f"<div>{one}</div>" for one in found)))


def test_the_classes_draw_as_the_attributes_did(browser: Browser) -> None:
    """Pictures of three pages, pixel by pixel, before and after."""
    unit, bank = real_unit(), real_bank()
    for page in (
        wall_page(bank, unit),
        handouts_page(bank, unit),
        moves_page(bank, unit),
    ):
        before = pictures(page)
        after = with_stroke_classes(before)
        assert len(after) < 0.9 * len(before), page.path
        assert shown(browser, after) == shown(browser, before), page.path


def test_a_class_of_ones_own_stays_and_what_is_seldom_said_stays() -> None:
    said = 'fill="none" stroke="currentColor" stroke-width="4"'
    assert with_stroke_classes(f'<path d="M0 0" {said}/>') == '<path d="M0 0" class="k23"/>'
    turned = f'<path {said} class="way" d="M0 0"/>'
    assert with_stroke_classes(turned) == '<path class="way k23" d="M0 0"/>'
    seldom = '<path d="M0 0" stroke-width="4.56"/>'
    assert with_stroke_classes(seldom) == seldom
    more = f'<path d="M0 0" {said} stroke-dasharray="9 9"/>'
    assert with_stroke_classes(more) == more


def test_each_class_has_one_rule_that_gives_way_to_all_others() -> None:
    found = re.findall(r":where\(\.(\w+)\)\{([^}]+)\}", stroke_rules())
    assert len({name for name, _ in found}) == len(found) > 40
    assert len({rule for _, rule in found}) == len(found)
    assert ("k14", "font-size:13px;text-anchor:middle") in found
