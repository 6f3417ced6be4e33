"""Dancers from above as marks: a dot and an arrowhead each, roles told apart by shape and fill.

All marks of a kind are one stroke, since a dot is a line of no length with a round or square end.
Drawing units, y downwards; degrees clockwise from the top.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from build_tools.views.diagrams.svg import el

Mark = tuple[float, float, float]
"""x, y and the way it faces."""
KINDS = 6
"""How many roles can be told apart; a further one looks like the first."""
SIZE = 7.0
_TIP, _BASE, _HALF = 9.5, 4.6, 3.4


def marks(kind: int, places: Sequence[Mark], *, pale: bool = False) -> str:
    """The marks of one role; pale ones are where a section starts, when it ends elsewhere.

    Roles 0, 2 and 4 are full, 1, 3 and 5 hollow; 0 and 1 round, 2 and 3 square, 4 and 5 half the
    size in a ring and in a square.
    """
    if not places:
        return ""
    shape = "square" if kind % KINDS in (2, 3, 5) else "round"
    dots = "".join(f"M{short(x)} {short(y)}h0" for x, y, _ in places)
    found = [
        el("path", d="".join(_arrow(*place) for place in places)),
        _stroke(dots, SIZE, shape),
    ]
    if kind % KINDS != 0 and kind % KINDS != 2:
        found.append(_stroke(dots, SIZE - 2.6, shape, paper=True))
    if kind % KINDS > 3:
        found.append(_stroke(dots, 1.8, shape))
    return el("g", *found, class_="quiet", opacity=0.55) if pale else "".join(found)


def _stroke(dots: str, width: float, shape: str, *, paper: bool = False) -> str:
    """Every dot, as wide as `width`; in the colour of the paper for what is hollow."""
    return el(
        "path",
        d=dots,
        fill="none",
        stroke="currentColor",
        stroke_width=width,
        stroke_linecap=shape,
        **({"class_": "hollow"} if paper else {}),
    )


def _arrow(x: float, y: float, degrees: float) -> str:
    """An arrowhead before the dot."""
    turn = math.radians(degrees)
    dx, dy = math.sin(turn), -math.cos(turn)
    tip = (x + dx * _TIP, y + dy * _TIP)
    left = (x + dx * _BASE - dy * _HALF, y + dy * _BASE + dx * _HALF)
    right = (x + dx * _BASE + dy * _HALF, y + dy * _BASE - dx * _HALF)
    return f"M{short(left[0])} {short(left[1])}{lines_on(left, tip, right)}z"


def lines_on(*points: tuple[float, float]) -> str:
    """Lines from the first point on to the others, each told from where the one before ended."""
    return f"l{steps_on(*points)}" if len(points) > 1 else ""


def steps_on(*points: tuple[float, float]) -> str:
    """How far it is from each point to the next, with no more space between than is needed."""
    found, (x, y) = "", (_tenths(points[0][0]), _tenths(points[0][1]))
    for point in points[1:]:
        for now, before in ((_tenths(point[0]), x), (_tenths(point[1]), y)):
            text = short((now - before) / 10)
            found += text if not found or text.startswith("-") else f" {text}"
        x, y = _tenths(point[0]), _tenths(point[1])
    return found


def _tenths(value: float) -> int:
    return round(float(f"{value:.1f}") * 10)


def short(value: float) -> str:
    """A number to a tenth: a hundredth of a metre on the floor."""
    text = f"{value:.1f}"
    return "0" if text == "-0.0" else text.removesuffix(".0")
