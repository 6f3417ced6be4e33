"""A page as the browser prints it, read back from the PDF: pages, text, sizes and margins."""

from __future__ import annotations

import io
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import pdfplumber
from playwright.sync_api import Page

POINTS_PER_MM = 72 / 25.4
WHITE = {(1.0,), (1.0, 1.0, 1.0), (0.0, 0.0, 0.0, 0.0), 1.0}


@dataclass(frozen=True, slots=True)
class Glyph:
    """One printed character: its size in points, its typeface, and its side, from 0."""

    text: str
    size: float
    face: str
    side: int


@dataclass(frozen=True, slots=True)
class Print:
    """What came out of the printer: for each side its margins in millimetres, and every glyph.

    `margins` holds left, top, right and bottom; the glyphs are in the order they are drawn in,
    which keeps the words of one paragraph together.
    """

    size_mm: tuple[float, float]
    margins: tuple[tuple[float, float, float, float], ...]
    glyphs: tuple[Glyph, ...]

    def usual_size(self) -> float:
        """The size of most characters, in points to a tenth."""
        return Counter(round(glyph.size, 1) for glyph in self.glyphs).most_common(1)[0][0]

    def side_of(self, words: str, after: int = 0) -> tuple[int, int] | None:
        """The side that some words start on, and where, looking from a place on; else None."""
        at = self._letters().find(squeezed(words), after)
        return None if at < 0 else (self.glyphs[at].side, at)

    def _letters(self) -> str:
        return "".join(glyph.text for glyph in self.glyphs)


def squeezed(words: str) -> str:
    """Words without what a line break may change: spaces and soft hyphens."""
    return "".join(words.replace("\xad", "").split())


def printed(page: Page) -> Print:
    """Print the page that is open on A4, backgrounds too."""
    return read(page.pdf(format="A4", prefer_css_page_size=True, print_background=True))


def read(pdf: bytes) -> Print:
    """Read a PDF back."""
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        sides = document.pages
        return Print(
            (sides[0].width / POINTS_PER_MM, sides[0].height / POINTS_PER_MM),
            tuple(_margins(side) for side in sides),
            tuple(glyph for side in sides for glyph in _glyphs(side)),
        )


def _glyphs(side: Any) -> Iterator[Glyph]:
    for char in side.chars:
        a, b, _, _, _, _ = char["matrix"]
        upright = abs(b) < abs(a) / 100
        size = char["size"] if upright else char["width"]
        for letter in char["text"]:
            if letter.strip():
                yield Glyph(letter, size, char["fontname"], side.page_number - 1)


def _margins(side: Any) -> tuple[float, float, float, float]:
    marks = [char for char in side.chars if char["text"].strip()]
    marks += [line for line in (*side.rects, *side.lines, *side.curves) if _is_seen(line)]
    marks += side.images
    left, top = min(mark["x0"] for mark in marks), min(mark["top"] for mark in marks)
    right, bottom = max(mark["x1"] for mark in marks), max(mark["bottom"] for mark in marks)
    edges = (left, top, side.width - right, side.height - bottom)
    return tuple(edge / POINTS_PER_MM for edge in edges)


def _is_seen(mark: dict[str, Any]) -> bool:
    """Whether a drawn shape is more than white paint on white paper."""
    drawn = mark["stroke"] and mark["stroking_color"] not in WHITE
    return bool(drawn or (mark["fill"] and mark["non_stroking_color"] not in WHITE))
