"""A small copy of a picture looks the same at a card's size, and is smaller."""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageChops, ImageStat
from playwright.sync_api import Browser, Page

from build_tools.pictures.publishable import cleaned
from build_tools.pictures.small import small_picture
from tests.support.banks import CONTENT

DRAWINGS = sorted(CONTENT.glob("units/*/media/*.svg"))
CARD = 350
MOST_APART = 3.0
"""Of 255, the mean difference of a point's colours that a thinner or moved edge may make."""


@pytest.fixture(scope="module")
def tab(browser: Browser) -> Iterator[Page]:
    page = browser.new_page(viewport={"width": CARD, "height": CARD})
    yield page
    page.close()


def painted(tab: Page, data: bytes, folder: Path) -> Image.Image:
    file = folder / "drawing.svg"
    file.write_bytes(data)
    tab.goto(file.as_uri())
    return Image.open(io.BytesIO(tab.screenshot())).convert("RGB")


@pytest.mark.parametrize("file", DRAWINGS, ids=[file.name for file in DRAWINGS])
def test_a_drawing_looks_the_same_and_weighs_less(file: Path, tab: Page, tmp_path: Path) -> None:
    whole = cleaned(file.name, file.read_bytes())
    small = small_picture(file.name, file.read_bytes())
    assert len(small) < len(whole)
    assert small == small_picture(file.name, file.read_bytes())
    assert cleaned(file.name, small) == small
    apart = ImageChops.difference(painted(tab, whole, tmp_path), painted(tab, small, tmp_path))
    assert max(ImageStat.Stat(apart).mean) < MOST_APART


def test_a_photograph_becomes_a_small_jpeg_on_white() -> None:
    out = io.BytesIO()
    Image.new("RGBA", (1600, 1000), (255, 0, 0, 0)).save(out, "PNG")
    with Image.open(io.BytesIO(small_picture("media/photo.png", out.getvalue()))) as small:
        assert small.format == "JPEG"
        assert small.size == (560, 350)
        red, green, blue = small.getpixel((10, 10))  # type: ignore[misc]
        assert min(red, green, blue) > 250


def test_strokes_that_hide_one_another_are_not_joined() -> None:
    drawing = (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 800 500">'
        '<path d="M0 0L9 9" fill="none" stroke="#123456" stroke-opacity="0.5"/>'
        '<path d="M9 0L0 9" fill="none" stroke="#123456" stroke-opacity="0.5"/>'
        '<path d="M1 0L9 1" fill="none" stroke="#112233"/>'
        '<path d="M2 0L9 2" fill="none" stroke="#112233"/></svg>'
    )
    small = small_picture("a.svg", drawing.encode()).decode()
    assert small.count("<path") == 3
    assert 'd="M1 0L9 1M2 0L9 2"' in small
    assert "#123" in small
