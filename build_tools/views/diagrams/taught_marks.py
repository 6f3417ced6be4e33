"""A picture of how many units meet each word in each year: a square that grows, a ring for none.

What is missing is a shape of its own, so that it is seen on a photocopy too.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import sqrt

from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.svg import drawing, el, line, num, text

_ROW = 22
_HEAD = 26
_CELL = 28
_LEAST, _MOST = 5, 17
"""The side of the smallest square and of the largest."""
_RING = 4
_LABELS = 170
"""How wide the words are: the same in every picture, so that they can be laid side by side."""
_GAP = 8

Year = tuple[str, str]
"""A school year, short as it stands over its column, and in full."""
Row = tuple[str, tuple[int, ...]]
"""A word, and how many units meet it in each year."""


def taught_marks(title: str, years: Sequence[Year], rows: Sequence[Row]) -> Figure:
    """The picture of `rows` under `years`; its text version says what each year misses."""
    width, height = _LABELS + _CELL * len(years), _HEAD + _ROW * len(rows)
    most = max((n for _, numbers in rows for n in numbers), default=0)
    shapes = [
        text(short, _middle(n), _HEAD - 10, anchor="middle", bold=True)
        for n, (short, _) in enumerate(years)
    ]
    for place, (word, numbers) in enumerate(rows):
        middle = _HEAD + _ROW * place + _ROW / 2
        shapes.append(line(0, middle - _ROW / 2, width, middle - _ROW / 2, 0.5, "quiet"))
        shapes.append(text(word, 0, middle + 5, squeeze=_LABELS - _GAP))
        shapes += [_mark(_middle(n), middle, number, most) for n, number in enumerate(numbers)]
    words = tuple(
        _in_words(year, [(word, numbers[n]) for word, numbers in rows])
        for n, (_, year) in enumerate(years)
    )
    return Figure(title, drawing(title, width, height, *shapes, kind="taught-marks"), words)


def side(number: int, most: int) -> float:
    """The side of the square for `number` units, its area growing with them up to `most`."""
    return max(_LEAST, _MOST * sqrt(number / most))


def _middle(column: int) -> float:
    return _LABELS + _CELL * column + _CELL / 2


def _mark(x: float, y: float, number: int, most: int) -> str:
    if not number:
        return el("circle", cx=x, cy=y, r=_RING, fill="none", stroke="currentColor")
    wide = side(number, most)
    return el(
        "path", d=f"M{num(x - wide / 2)} {num(y - wide / 2)}h{num(wide)}v{num(wide)}h{num(-wide)}z"
    )


def _in_words(year: str, met: Sequence[tuple[str, int]]) -> str:
    missing = [word for word, number in met if not number]
    said = f"missing: {', '.join(missing)}" if missing else "nothing is missing"
    return f"{year}: {len(met) - len(missing)} of {len(met)} met; {said}"
