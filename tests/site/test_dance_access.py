"""The dance from above for whoever has no script, paper only, a keyboard only, or own colours.

The heaviest unit's page in the usual run, every unit's in the long one. Sources: WCAG 2.2, success
criteria 1.4.11 Non-text Contrast (3:1), 2.1.1 Keyboard, 2.4.3 Focus Order, 2.4.7 Focus Visible,
4.1.3 Status Messages; CSS Color Adjustment Level 1, forced colours. One side of paper, letters of
nine points and a half: common practice, no source.
"""

from __future__ import annotations

import io
from pathlib import Path
from typing import Literal

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from build_tools.model.unit import Unit
from tests.support.contrast import linear
from tests.support.hall import opened
from tests.support.paper import printed, squeezed
from tests.support.sound_bank import real_bank, real_unit

HEAVIEST = real_unit()
SILENT = "delete window.AudioContext;"
LEAST_CONTRAST = 3.0
LEAST_LETTER = 9.5
LEAST_EDGE = 10.0
"""Millimetres."""
LOOKS = {"full": "ii", "open": "pp", "dot": "ip", "bar": "pi"}
"""Ink or paper: in the middle of a mark, and halfway from there to its nose."""
POINTS = """mark => [0, -0.18].map((y) => {
  const at = new DOMPoint(0, y).matrixTransform(mark.getScreenCTM());
  return [at.x, at.y];
})"""
FOCUSED = """() => {
  const at = document.activeElement;
  const around = [...(at.closest("label")?.childNodes || [])].find((one) => one.data?.trim())?.data;
  const label = at.getAttribute("aria-label") || around || at.textContent;
  const { outlineStyle, outlineWidth } = getComputedStyle(at);
  return [at.tagName, label.trim(), outlineStyle !== "none" && parseFloat(outlineWidth) >= 2];
}"""


def units() -> list[Unit]:
    return [unit for unit in real_bank().units if not unit.draft]


def page_of(unit: Unit) -> str:
    return f"units/{unit.slug}/dance.html"


def test_the_page_that_is_looked_at_is_the_heaviest(site: Path) -> None:
    sizes = {unit.slug: (site / page_of(unit)).stat().st_size for unit in units()}
    assert max(sizes, key=lambda slug: sizes[slug]) == HEAVIEST.slug


def looked_at(thorough: bool) -> list[Unit]:
    return units() if thorough else [HEAVIEST]


def test_without_script_every_part_is_drawn_and_told(
    browser: Browser, site: Path, thorough: bool
) -> None:
    for unit in looked_at(thorough):
        with opened(browser, site, page_of(unit), script=False) as at:
            page = at.page
            assert not page.locator(".watch").is_visible()
            stills = page.locator(".still")
            assert stills.count() == len(set(unit.dance.form))
            for still in stills.all():
                assert still.locator("svg[role=img]").first.is_visible()
                still.locator("summary").click()
                assert "At the start: " in still.locator("li").first.inner_text()
            moves = page.get_by_role("link", name="Every move, drawn one by one")
            assert moves.count() == bool(unit.dance.motifs)


def test_on_paper_the_parts_stand_beside_one_another(
    browser: Browser, site: Path, thorough: bool
) -> None:
    for unit in looked_at(thorough):
        with opened(browser, site, page_of(unit), size=(1280, 900)) as at:
            titles = at.page.locator(".still h3").all_inner_texts()
            paper = printed(at.page, foot_mm=18)
        letters = "".join(glyph.text for glyph in paper.glyphs)
        assert len(paper.margins) == 1 + (len(titles) > 6), unit.slug
        for title in titles:
            assert squeezed(title) in letters, (unit.slug, title)
        assert letters.startswith(squeezed(unit.title))
        # what can only be pressed is left out, and nothing leaves the paper
        assert squeezed("Count on") not in letters
        assert min(min(edges) for edges in paper.margins) >= LEAST_EDGE
        assert min(glyph.size for glyph in paper.glyphs) >= LEAST_LETTER, unit.slug


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_in_forced_colours_marks_of_roles_and_the_body_are_seen(
    browser: Browser, site: Path, scheme: Literal["light", "dark"]
) -> None:
    four = next(
        n
        for n, letter in enumerate(HEAVIEST.dance.form, start=1)
        if (groups := HEAVIEST.dance.sections[letter].groups) and len(groups.roles) >= len(LOOKS)
    )
    with opened(browser, site, page_of(HEAVIEST), size=(1280, 900)) as at:
        page = at.page
        page.emulate_media(forced_colors="active", color_scheme=scheme)
        page.get_by_label("Show").select_option(index=four)
        shown = Image.open(io.BytesIO(page.screenshot())).convert("L")
        corner = light_at(shown, 2, 300)
        for kind, look in LOOKS.items():
            for (x, y), wanted in zip(points_of(page, kind), look, strict=True):
                seen = contrast(light_at(shown, x, y), corner)
                assert (seen >= LEAST_CONTRAST) == (wanted == "i"), (kind, seen)
        box = page.locator(".figure-now .now").bounding_box()
        assert box is not None
        x, y = box["x"], box["y"]
        body = shown.crop((x, y, x + box["width"], y + box["height"]))
        extremes = [linear(float(str(one)) / 255) for one in body.getextrema()]
        assert contrast(*extremes) >= LEAST_CONTRAST


def points_of(page: Page, kind: str) -> list[list[float]]:
    found: list[list[float]] = page.locator(f".dancer[data-mark={kind}]").first.evaluate(POINTS)
    return found


def light_at(picture: Image.Image, x: float, y: float) -> float:
    """The relative luminance of one spot of a picture in greys."""
    return linear(float(str(picture.getpixel((round(x), round(y))))) / 255)


def contrast(one: float, other: float) -> float:
    dark, light = sorted((one, other))
    return (light + 0.05) / (dark + 0.05)


def test_with_keys_alone_everything_is_reached_in_order_and_works(
    browser: Browser, site: Path
) -> None:
    wanted = [
        *("My class:", "Our hall, metres wide", "Our hall, metres from front to back"),
        *("Start", "Phrase back", "Count back", "Count on", "Phrase on"),
        *("Show", "Draw the ways", "Slower", "Faster"),
    ]
    with opened(browser, site, page_of(HEAVIEST), size=(1280, 900), extra_script=SILENT) as at:
        page = at.page
        reached = []
        for _ in range(60):
            page.keyboard.press("Tab")
            tag, name, ringed = page.evaluate(FOCUSED)
            if tag == "BODY":
                break
            assert ringed, f"no ring around {name}"
            reached.append(name)
        assert [name for name in reached if name in wanted] == wanted
        page.get_by_role("button", name="Phrase on").focus()
        page.keyboard.press("Enter")
        assert "count 9 of 32" in page.locator("[data-said][role=status]").inner_text()
        page.get_by_role("checkbox", name="Draw the ways").focus()
        page.keyboard.press("Space")
        assert page.locator(".ways path").count() > 0
        page.get_by_label("Show").focus()
        page.keyboard.press("ArrowDown")
        assert "A: tide goes out" in page.locator("[data-now]").inner_text()
        page.get_by_role("button", name="Start").focus()
        page.keyboard.press("Enter")
        assert page.get_by_role("button", name="Stop").count()
        page.evaluate("document.activeElement.blur()")
        page.keyboard.press("Space")
        assert page.get_by_role("button", name="Start").count()


def test_at_rest_the_body_stands_where_the_move_starts_and_ends_and_words_say_it(
    browser: Browser, site: Path
) -> None:
    with opened(browser, site, page_of(HEAVIEST), size=(1280, 900)) as at:
        page = at.page
        move = HEAVIEST.dance.motifs["wave"].actions[0]
        assert page.locator(".figure-now .before").is_visible()
        assert page.locator(".figure-now .now").is_visible()
        assert page.locator(".figure-now b").inner_text() == move.word
        assert len(page.locator(".figure-now p").inner_text()) > len(move.word or "") + 10
