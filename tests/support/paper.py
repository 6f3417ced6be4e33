"""A page as the browser prints it, read back from the PDF: pages, text, sizes and margins."""

from __future__ import annotations

import io
import unicodedata
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import pdfplumber
from playwright.sync_api import Page

from tests.support.contrast import linear

POINTS_PER_MM = 72 / 25.4
DOTS_PER_INCH = 200
WHITE = {(1.0,), (1.0, 1.0, 1.0), (0.0, 0.0, 0.0, 0.0), 1.0}


@dataclass(frozen=True, slots=True)
class Glyph:
    """One printed character: its size in points, its typeface, and its side, from 0.

    `light` is how light its ink is, 0 for black and 1 for white, as WCAG's relative luminance;
    `shown` is the same of the darkest and the lightest spot where it stands on the paper, printed
    in greys.
    """

    text: str
    size: float
    face: str
    side: int
    light: float = 0.0
    shown: tuple[float, float] = (0.0, 1.0)


@dataclass(frozen=True)
class Print:
    """What came out of the printer: for each side its margins in millimetres, and every glyph.

    `margins` holds left, top, right and bottom; the glyphs are in the order they are drawn in,
    which keeps the words of one paragraph together. `feet` is what stands at the foot of each
    side, within the bottom margin that was asked for; it is left out of margins and glyphs.
    """

    size_mm: tuple[float, float]
    margins: tuple[tuple[float, float, float, float], ...]
    glyphs: tuple[Glyph, ...]
    feet: tuple[str, ...] = ()

    def usual_size(self) -> float:
        """The size of most characters, in points to a tenth."""
        return Counter(round(glyph.size, 1) for glyph in self.glyphs).most_common(1)[0][0]

    def side_of(self, words: str, after: int = 0) -> tuple[int, int] | None:
        """The side that some words start on, and where, looking from a place on; else None."""
        at = self._letters.find(squeezed(words), after)
        return None if at < 0 else (self.glyphs[at].side, at)

    @cached_property
    def _letters(self) -> str:
        return "".join(glyph.text for glyph in self.glyphs)


def squeezed(words: str) -> str:
    """Words without what a line break may change: spaces and soft hyphens."""
    return "".join(words.replace("\xad", "").split())


def printed(page: Page, foot_mm: float = 0.0, greys: bool = False) -> Print:
    """Print the page that is open on A4, backgrounds too; the rest as in `read`."""
    pdf = page.pdf(format="A4", prefer_css_page_size=True, print_background=True)
    return read(pdf, foot_mm, greys)


def read(pdf: bytes, foot_mm: float = 0.0, greys: bool = False) -> Print:
    """Read a PDF back. The lowest `foot_mm` of each side are its foot.

    With `greys` each glyph also says what is seen where it stands, rendered in greys.
    """
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        sides = document.pages
        ends = [side.height - foot_mm * POINTS_PER_MM for side in sides]
        return Print(
            (sides[0].width / POINTS_PER_MM, sides[0].height / POINTS_PER_MM),
            tuple(_margins(side, end) for side, end in zip(sides, ends, strict=True)),
            tuple(
                glyph
                for side, end in zip(sides, ends, strict=True)
                for glyph in _glyphs(side, end, greys)
            ),
            tuple(_foot(side, end) for side, end in zip(sides, ends, strict=True)),
        )


def _foot(side: Any, end: float) -> str:
    if end >= side.height:
        return ""
    found: str = side.crop((0, end, side.width, side.height)).extract_text()
    return found


def _glyphs(side: Any, end: float, greys: bool) -> Iterator[Glyph]:
    picture = side.to_image(resolution=DOTS_PER_INCH).original.convert("L") if greys else None
    for char in side.chars:
        if char["top"] >= end:
            continue
        a, b, _, _, _, _ = char["matrix"]
        upright = abs(b) < abs(a) / 100
        size = char["size"] if upright else char["width"]
        shown = _seen_at(picture, char) if picture and char["text"].strip() else (0.0, 1.0)
        light = _light(char["non_stroking_color"])
        for letter in "".join(_apart(one) for one in char["text"]):
            if letter.strip():
                yield Glyph(letter, size, char["fontname"], side.page_number - 1, light, shown)


def _light(colour: Any) -> float:
    """How light an ink is, from the one, three or four numbers that a PDF gives."""
    parts = [float(part) for part in (colour if isinstance(colour, tuple) else (colour,))]
    if len(parts) == 4:
        parts = [(1 - part) * (1 - parts[3]) for part in parts[:3]]
    red, green, blue = (linear(part) for part in (parts if len(parts) == 3 else parts * 3))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _seen_at(picture: Any, char: dict[str, Any]) -> tuple[float, float]:
    per_point = DOTS_PER_INCH / 72
    box = [char[edge] * per_point for edge in ("x0", "top", "x1", "bottom")]
    spot = picture.crop((int(box[0]) - 1, int(box[1]) - 1, int(box[2]) + 2, int(box[3]) + 2))
    darkest, lightest = spot.getextrema()
    return linear(darkest / 255), linear(lightest / 255)


def _apart(letter: str) -> str:
    """Letters that a typeface draws as one, such as fi, as the letters they are."""
    return unicodedata.normalize("NFKC", letter) if "\ufb00" <= letter <= "\ufb06" else letter


def _margins(side: Any, end: float) -> tuple[float, float, float, float]:
    marks = [char for char in side.chars if char["text"].strip() and char["top"] < end]
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
