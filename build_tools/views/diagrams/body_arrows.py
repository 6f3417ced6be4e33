"""The one stroke that says how a body gets there: its way, and the feel of it.

Straight or winding is the way through space; thick or thin is strong or light; rays at its head
are sudden.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.views.diagrams.body_lines import Point, track, whole
from build_tools.views.diagrams.svg import el

KIND = "way"
"""The class of the stroke, for the style sheet: it has the colour of what moves."""
_WIDTHS = {"strong": 5.5, "light": 2.0}
_WIDTH = 3.0


def stroke(points: list[Point], feel: Collection[str], both_ways: bool = False) -> str:
    """The arrow along `points`, drawn as the feel is."""
    shown = winding(points) if "indirect" in feel else points
    width = thick(feel)
    d = track(shown) + head(shown[-2], shown[-1], width)
    if both_ways:
        d += head(shown[1], shown[0], width)
    if "sudden" in feel:
        d += rays(shown[-2], shown[-1], width)
    return drawn(d, width)


def thick(feel: Collection[str]) -> float:
    """How thick a stroke of that feel is: thick is strong, and nothing else is."""
    return next((_WIDTHS[one] for one in _WIDTHS if one in feel), _WIDTH)


def ticks(at: Point, outwards: float, count: int = 3, away: float = 3.5) -> str:
    """Short rays, `away` from a hand: a clap, a snap, a flick, or a knock, which has one for each
    time. `outwards` is their middle way, in degrees."""
    d = ""
    for n in range(count):
        angle = math.radians(outwards + 38 * (n - (count - 1) / 2))
        c, s = math.cos(angle), math.sin(angle)
        first, last = away, away + 9
        d += track([(at[0] + first * c, at[1] + first * s), (at[0] + last * c, at[1] + last * s)])
    return drawn(d, 2.4)


def arch(start: Point, top: Point, end: Point, feel: Collection[str]) -> str:
    """An arrow up and over."""
    points = []
    for n in range(13):
        t = n / 12
        over = 2 * top[1] - (start[1] + end[1]) / 2
        x = start[0] + (end[0] - start[0]) * t
        y = (1 - t) ** 2 * start[1] + 2 * t * (1 - t) * over + t * t * end[1]
        points.append((x, y))
    return stroke(points, set(feel) - {"indirect", "bound", "sudden"})


def hold(x: float, y: float) -> str:
    """Two upright bars: still."""
    return drawn(track([(x, y), (x, y + 11)]) + track([(x + 6, y), (x + 6, y + 11)]), 3.2)


def winding(points: list[Point]) -> list[Point]:
    """The way with two bends to either side; it starts and ends where it did."""
    (x0, y0), (x1, y1) = points[0], points[-1]
    long = math.dist((x0, y0), (x1, y1)) or 1.0
    nx, ny = -(y1 - y0) / long, (x1 - x0) / long
    wide = max(4.0, min(7.0, long * 0.22))
    steps = 16
    bent = []
    for n in range(steps + 1):
        t = n / steps
        px, py = _along(points, t)
        off = wide * math.sin(3 * math.pi * t) * math.sin(math.pi * t) ** 0.5
        bent.append((px + nx * off, py + ny * off))
    return [*bent, (x1, y1)] if bent[-1] != (x1, y1) else bent


def _along(points: list[Point], t: float) -> Point:
    place = t * (len(points) - 1)
    n = min(int(place), len(points) - 2)
    part = place - n
    (x0, y0), (x1, y1) = points[n], points[n + 1]
    return (x0 + (x1 - x0) * part, y0 + (y1 - y0) * part)


def head(before: Point, tip: Point, width: float) -> str:
    """The head of an arrow that comes from `before` to its `tip`."""
    long = 6 + width * 0.8
    angle = math.atan2(tip[1] - before[1], tip[0] - before[0])
    wings = [
        (tip[0] - long * math.cos(angle + turn), tip[1] - long * math.sin(angle + turn))
        for turn in (0.62, -0.62)
    ]
    return track([wings[0], tip, wings[1]])


def rays(before: Point, tip: Point, width: float) -> str:
    """Two rays beyond the tip, clear of a head of that thickness: sudden."""
    angle = math.atan2(tip[1] - before[1], tip[0] - before[0])
    d = ""
    for turn in (-0.75, 0.75):
        c, s = math.cos(angle + turn), math.sin(angle + turn)
        first, last = 3 + width, 8 + width
        d += track(
            [(tip[0] + first * c, tip[1] + first * s), (tip[0] + last * c, tip[1] + last * s)]
        )
    return d


def drawn(d: str, width: float) -> str:
    """The stroke along `d`."""
    return el("path", d=d, class_=KIND, stroke_width=whole(width))
