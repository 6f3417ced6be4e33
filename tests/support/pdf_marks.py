"""What is painted on each side of a PDF, read back by PDFium: letters, and where anything is seen.

All lengths are in points, from the upper left corner of the side.
"""

from __future__ import annotations

import ctypes
import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import pypdfium2
from PIL import Image
from pypdfium2 import raw as pdfium

from tests.support.contrast import Colour

WHITE = (255, 255, 255)
HYPHEN_AT_END = "\x02"
"""What PDFium gives for a hyphen that ends a line."""
LONGEST_NAME = 200
WHOLE_SIDE = 0.8
"""Of the side's height: what is higher is cut off by the side's own edges."""
Matrix = tuple[float, float, float, float, float, float]
Box = tuple[float, float, float, float]
"""Left, top, right and bottom."""
AS_IT_IS: Matrix = (1, 0, 0, 1, 0, 0)


@dataclass(frozen=True, slots=True)
class Letter:
    """One character as it is painted; `added` is a space that nothing paints."""

    text: str
    box: Box
    size: float
    face: str
    colour: Colour
    added: bool = False


@dataclass(frozen=True, slots=True)
class Side:
    """One side of paper: its letters in the order of reading, and the order that paints them."""

    width: float
    height: float
    read: tuple[Letter, ...]
    painted: tuple[Letter, ...]
    drawn: tuple[Box, ...]
    """Where shapes and pictures are seen, white paint on white paper apart.

    What a picture draws beyond its own edge is cut off there, and nobody misses it. What the
    edges of the whole side cut off is missed, so it is given as far as it would go.
    """
    page: Any

    def picture(self, dots_per_inch: int) -> Image.Image:
        """The side as it is seen, in greys."""
        image: Image.Image = self.page.render(scale=dots_per_inch / 72).to_pil()
        return image.convert("L")


def sides(pdf: bytes) -> Iterator[Side]:
    """Each side of the document."""
    document = pypdfium2.PdfDocument(pdf)
    for number in range(len(document)):
        page = document[number]
        width, height = page.get_size()
        order: dict[int, int] = {}
        drawn = tuple(_drawn(page.raw, height, order))
        letters = list(_letters(page, height))
        painted = [(order[text], place, one) for place, (text, one) in enumerate(letters) if text]
        yield Side(
            width,
            height,
            tuple(one for _, one in letters),
            tuple(one for _, _, one in sorted(painted, key=lambda each: each[:2])),
            drawn,
            page,
        )


def _letters(page: Any, height: float) -> Iterator[tuple[int, Letter]]:
    """Every letter in the order of reading, each with the text object that it is of, or none."""
    kept = page.get_textpage()
    text, box, matrix = kept.raw, pdfium.FS_RECTF(), pdfium.FS_MATRIX()
    x, y = ctypes.c_double(), ctypes.c_double()
    for at in range(pdfium.FPDFText_CountChars(text)):
        if pdfium.FPDFText_IsGenerated(text, at) == 1:
            yield 0, Letter(" ", (0, 0, 0, 0), 0, "", (0, 0, 0), added=True)
            continue
        whole = pdfium.FPDFText_GetTextObject(text, at)
        pdfium.FPDFText_GetLooseCharBox(text, at, box)
        pdfium.FPDFText_GetMatrix(text, at, matrix)
        pdfium.FPDFText_GetCharOrigin(text, at, x, y)
        given = pdfium.FPDFText_GetFontSize(text, at)
        size = given * math.hypot(matrix.c, matrix.d)
        top, bottom = height - box.top, height - box.bottom
        if not matrix.b and not matrix.c:
            # the height of a line is that of its letters, not the one that lines want between them
            bottom = height - y.value - _descent(whole, given) * size / given
            top = bottom - size
        letter = chr(pdfium.FPDFText_GetUnicode(text, at))
        yield (
            _address(whole),
            Letter(
                "-" if letter == HYPHEN_AT_END else letter,
                (box.left, top, box.right, bottom),
                size,
                _face(text, at),
                _colour(pdfium.FPDFText_GetFillColor, text, at) or WHITE,
            ),
        )


def _descent(text: Any, size: float) -> float:
    """How far below the line letters reach, in the size that is given; below is negative."""
    found = ctypes.c_float()
    pdfium.FPDFFont_GetDescent(pdfium.FPDFTextObj_GetFont(text), size, found)
    return found.value


def _face(text: Any, at: int) -> str:
    name, flags = ctypes.create_string_buffer(LONGEST_NAME), ctypes.c_int()
    pdfium.FPDFText_GetFontInfo(text, at, name, LONGEST_NAME, flags)
    return name.value.decode()


def _colour(get: Callable[..., int], *of: Any) -> Colour | None:
    """The colour that PDFium gives; none for a pattern."""
    red, green, blue, seen = (ctypes.c_uint() for _ in range(4))
    return (red.value, green.value, blue.value) if get(*of, red, green, blue, seen) else None


def _drawn(
    page: Any, height: float, order: dict[int, int], outer: Matrix = AS_IT_IS
) -> Iterator[Box]:
    """Where shapes and pictures are seen; `order` is told of each text when it is painted."""
    in_form = outer is not AS_IT_IS
    count = pdfium.FPDFFormObj_CountObjects if in_form else pdfium.FPDFPage_CountObjects
    get = pdfium.FPDFFormObj_GetObject if in_form else pdfium.FPDFPage_GetObject
    for number in range(count(page)):
        one = get(page, number)
        kind = pdfium.FPDFPageObj_GetType(one)
        if kind == pdfium.FPDF_PAGEOBJ_TEXT:
            order[_address(one)] = len(order)
        elif kind == pdfium.FPDF_PAGEOBJ_FORM:
            inside = _drawn(one, height, order, _joined(_matrix(one), outer))
            yield from _seen(inside, one, height, outer)
        elif kind == pdfium.FPDF_PAGEOBJ_IMAGE:
            yield from _seen([_box(one, height, outer)], one, height, outer)
        elif kind == pdfium.FPDF_PAGEOBJ_PATH:
            filled, stroked = ctypes.c_int(), ctypes.c_int()
            pdfium.FPDFPath_GetDrawMode(one, filled, stroked)
            line = stroked.value and _colour(pdfium.FPDFPageObj_GetStrokeColor, one) != WHITE
            if line or (filled.value and _colour(pdfium.FPDFPageObj_GetFillColor, one) != WHITE):
                box = _path(one, height, outer) if stroked.value else _box(one, height, outer)
                yield from _seen([box], one, height, outer)


def _seen(boxes: Iterable[Box], one: Any, height: float, outer: Matrix) -> Iterator[Box]:
    """What is left of each box where the object is cut off."""
    cut = tuple(_cut(one, height, outer))
    for left, top, right, bottom in boxes:
        for edge in cut:
            left, top = max(left, edge[0]), max(top, edge[1])
            right, bottom = min(right, edge[2]), min(bottom, edge[3])
        if left <= right and top <= bottom:
            yield left, top, right, bottom


def _cut(one: Any, height: float, outer: Matrix) -> Iterator[Box]:
    """The boxes around what an object is cut off by, the edges of the side's text apart."""
    x, y = ctypes.c_float(), ctypes.c_float()
    clip = pdfium.FPDFPageObj_GetClipPath(one)
    for path in range(pdfium.FPDFClipPath_CountPaths(clip)):
        points = []
        for number in range(pdfium.FPDFClipPath_CountPathSegments(clip, path)):
            point = pdfium.FPDFClipPath_GetPathSegment(clip, path, number)
            pdfium.FPDFPathSegment_GetPoint(point, x, y)
            points.append((x.value, y.value))
        if not points:
            continue
        left, top, right, bottom = _around(points, height, outer)
        if bottom - top < WHOLE_SIDE * height:
            yield left, top, right, bottom


def _path(path: Any, height: float, outer: Matrix) -> Box:
    """What a line goes through, whatever PDFium adds for the ends of its corners."""
    x, y, whole = ctypes.c_float(), ctypes.c_float(), _joined(_matrix(path), outer)
    points = []
    for number in range(pdfium.FPDFPath_CountSegments(path)):
        point = pdfium.FPDFPath_GetPathSegment(path, number)
        pdfium.FPDFPathSegment_GetPoint(point, x, y)
        points.append((x.value, y.value))
    return _around(points, height, whole)


def _box(one: Any, height: float, outer: Matrix) -> Box:
    left, bottom, right, top = (ctypes.c_float() for _ in range(4))
    pdfium.FPDFPageObj_GetBounds(one, left, bottom, right, top)
    corners = [(x, y) for x in (left.value, right.value) for y in (bottom.value, top.value)]
    return _around(corners, height, outer)


def _around(points: Sequence[tuple[float, float]], height: float, matrix: Matrix) -> Box:
    a, b, c, d, e, f = matrix
    across = [x * a + y * c + e for x, y in points]
    up = [x * b + y * d + f for x, y in points]
    return min(across), height - max(up), max(across), height - min(up)


def _matrix(one: Any) -> Matrix:
    found = pdfium.FS_MATRIX()
    pdfium.FPDFPageObj_GetMatrix(one, found)
    return found.a, found.b, found.c, found.d, found.e, found.f


def _joined(inner: Matrix, outer: Matrix) -> Matrix:
    a, b, c, d, e, f = inner
    p, q, r, s, t, u = outer
    return (
        a * p + b * r,
        a * q + b * s,
        c * p + d * r,
        c * q + d * s,
        e * p + f * r + t,
        e * q + f * s + u,
    )


def _address(one: Any) -> int:
    return ctypes.cast(one, ctypes.c_void_p).value or 0
