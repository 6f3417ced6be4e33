"""A page as the browser prints it, read back from the PDF: pages, text, sizes and margins."""

from __future__ import annotations

import unicodedata
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from PIL import Image
from playwright.sync_api import Page

from tests.support.contrast import linear, luminance
from tests.support.pdf_marks import Box, Side, sides

POINTS_PER_MM = 72 / 25.4
DOTS_PER_INCH = 200


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
    found = list(sides(pdf))
    ends = [side.height - foot_mm * POINTS_PER_MM for side in found]
    return Print(
        (found[0].width / POINTS_PER_MM, found[0].height / POINTS_PER_MM),
        tuple(_margins(side, end) for side, end in zip(found, ends, strict=True)),
        tuple(
            glyph
            for number, (side, end) in enumerate(zip(found, ends, strict=True))
            for glyph in _glyphs(number, side, end, greys)
        ),
        tuple(_foot(side, end) for side, end in zip(found, ends, strict=True)),
    )


def _foot(side: Side, end: float) -> str:
    """What stands below `end`, with the spaces between."""
    said = [" " if one.added else one.text for one in side.read if one.added or one.box[1] >= end]
    return " ".join("".join(said).split())


def _glyphs(number: int, side: Side, end: float, greys: bool) -> Iterator[Glyph]:
    picture = side.picture(DOTS_PER_INCH) if greys else None
    for one in side.painted:
        if one.box[1] >= end:
            continue
        shown = _seen_at(picture, one.box) if picture and one.text.strip() else (0.0, 1.0)
        light = luminance(one.colour)
        for letter in "".join(_apart(each) for each in one.text):
            if letter.strip():
                yield Glyph(letter, one.size, one.face, number, light, shown)


def _seen_at(picture: Image.Image, box: Box) -> tuple[float, float]:
    per_point = DOTS_PER_INCH / 72
    left, top, right, bottom = (int(edge * per_point) for edge in box)
    extremes: Any = picture.crop((left - 1, top - 1, right + 2, bottom + 2)).getextrema()
    darkest, lightest = extremes
    return linear(darkest / 255), linear(lightest / 255)


def _apart(letter: str) -> str:
    """Letters that a typeface draws as one, such as fi, as the letters they are."""
    return unicodedata.normalize("NFKC", letter) if "\ufb00" <= letter <= "\ufb06" else letter


def _margins(side: Side, end: float) -> tuple[float, float, float, float]:
    letters = (one.box for one in side.painted if one.text.strip() and one.box[1] < end)
    left, top, right, bottom = zip(*letters, *side.drawn, strict=True)
    edges = (min(left), min(top), side.width - max(right), side.height - max(bottom))
    return (
        edges[0] / POINTS_PER_MM,
        edges[1] / POINTS_PER_MM,
        edges[2] / POINTS_PER_MM,
        edges[3] / POINTS_PER_MM,
    )
