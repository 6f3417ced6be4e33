"""The one stroke that says how a body gets there: its way, and the feel of it.

Straight or winding is the way through space; thick or thin is strong or light; rays at its head
are sudden, dots are slow and even; a bar across it is held back, a curl at its tail is free.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from build_tools.views.diagrams.body_lines import Point, track, whole
from build_tools.views.diagrams.svg import Number, el

KIND = "way"
"""The class of the stroke, for the style sheet: it has the colour of what moves."""
_WIDTHS = {"strong": 6.0, "light": 1.5}
_WIDTH = 3.5
_CURL, _BAR = 4.5, 6.5
"""Half the width of a curl, and half the length of a bar."""


@dataclass(frozen=True, slots=True)
class Shaft:
    """The line of an arrow, without its head: where it starts and goes at first, the place of a
    bar and the way there, and whence it comes to its tip."""

    d: str
    tail: Point
    after: Point
    middle: Point
    onwards: Point
    before: Point
    tip: Point


def stroke(points: list[Point], feel: Collection[str], both_ways: bool = False) -> str:
    """The arrow along `points`, drawn as the feel is."""
    shaft = along(points, "indirect" in feel)
    width = thick(feel)
    return arrow([shaft], feel, head(shaft.after, shaft.tail, width) if both_ways else "")


def strokes(ways: Sequence[list[Point]], feel: Collection[str], more: str = "") -> str:
    """Several arrows of one feel, as one stroke."""
    return arrow([along(points) for points in ways], feel, more)


def arrow(shafts: Sequence[Shaft], feel: Collection[str], more: str = "") -> str:
    """Lines with their heads and what tells their feel, the first with what is told once; `more`
    is drawn with these."""
    width, first, d = thick(feel), shafts[0], more
    for shaft in shafts:
        d += head(shaft.before, shaft.tip, width)
        if "sudden" in feel:
            d += rays(shaft.before, shaft.tip, width)
    if "bound" in feel:
        d += bar(first.middle, first.onwards, width)
    if "free" in feel:
        d += curl(first.tail, first.after)
    lines = "".join(shaft.d for shaft in shafts)
    if "sustained" not in feel:
        return drawn(lines + d, width)
    return dotted(lines, width) + drawn(d, width)


def along(points: list[Point], winding: bool = False) -> Shaft:
    """The line through the points, or in one wave from the first to the last; a bar stands nearer
    to its tail than to its head."""
    if winding:
        return _wound(points[0], points[-1])
    n = (len(points) - 1) // 3
    (x, y), onwards = points[n], points[n + 1]
    if len(points) < 4:
        x, y = x + 0.36 * (onwards[0] - x), y + 0.36 * (onwards[1] - y)
    return Shaft(track(points), points[0], points[1], (x, y), onwards, points[-2], points[-1])


def _wound(start: Point, end: Point) -> Shaft:
    """One wave to either side, as wide as it is plain to see that it is no trembling."""
    right, down = end[0] - start[0], end[1] - start[1]
    long = math.hypot(right, down) or 1.0
    wide = max(26.0, min(40.0, long * 0.9)) / long
    one = (start[0] + right / 3 + down * wide, start[1] + down / 3 - right * wide)
    other = (end[0] - right / 3 - down * wide, end[1] - down / 3 + right * wide)
    bends = " ".join(
        f"{whole(x - start[0]):g} {whole(y - start[1]):g}" for x, y in (one, other, end)
    )
    d = f"M{whole(start[0]):g} {whole(start[1]):g}c{bends}".replace(" -", "-")
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    onwards = (middle[0] + other[0] - one[0] + right, middle[1] + other[1] - one[1] + down)
    return Shaft(d, start, one, middle, onwards, other, end)


def thick(feel: Collection[str]) -> float:
    """How thick a stroke of that feel is: thick is strong, and nothing else is."""
    return next((_WIDTHS[one] for one in _WIDTHS if one in feel), _WIDTH)


def bar(at: Point, onwards: Point, width: float) -> str:
    """A bar across a way: held back."""
    angle = math.atan2(onwards[1] - at[1], onwards[0] - at[0]) + math.pi / 2
    c, s = (_BAR + width / 2) * math.cos(angle), (_BAR + width / 2) * math.sin(angle)
    return track([(at[0] - c, at[1] - s), (at[0] + c, at[1] + s)])


def curl(tail: Point, after: Point) -> str:
    """Most of a round that comes to the tail of a way, on its upper side: free."""
    long = math.dist(tail, after) or 1.0
    c, s = _CURL * (after[0] - tail[0]) / long, _CURL * (after[1] - tail[1]) / long
    clockwise = c < 0 or (c == 0 and s > 0)
    aside = (-s, c) if clockwise else (s, -c)
    x, y = tail[0] + aside[0] + c, tail[1] + aside[1] + s
    to = f"{whole(tail[0] - x):g} {whole(tail[1] - y):g}"
    d = f"M{whole(x):g} {whole(y):g}a{_CURL} {_CURL} 0 1 {int(clockwise)} {to}"
    return d.replace(" -", "-")


def ticks(at: Point, outwards: float, count: int = 3, away: float = 3.5) -> str:
    """Short rays, `away` from a hand: a clap or a ripple. `outwards` is their middle way, in
    degrees."""
    return drawn(tick_marks(at, outwards, count, away), 2.4)


def tick_marks(at: Point, outwards: float, count: int, away: float) -> str:
    """The same as the `d` of a path."""
    d = ""
    for n in range(count):
        angle = math.radians(outwards + 38 * (n - (count - 1) / 2))
        c, s = math.cos(angle), math.sin(angle)
        first, last = away, away + 9
        d += track([(at[0] + first * c, at[1] + first * s), (at[0] + last * c, at[1] + last * s)])
    return d


def arch(start: Point, top: Point, end: Point, feel: Collection[str]) -> str:
    """An arrow up and over."""
    points = []
    for n in range(13):
        t = n / 12
        over = 2 * top[1] - (start[1] + end[1]) / 2
        x = start[0] + (end[0] - start[0]) * t
        y = (1 - t) ** 2 * start[1] + 2 * t * (1 - t) * over + t * t * end[1]
        points.append((x, y))
    return stroke(points, set(feel) - {"indirect", "sudden"})


def hold(x: float, y: float) -> str:
    """Two upright bars: still."""
    return drawn(track([(x, y), (x, y + 11)]) + track([(x + 6, y), (x + 6, y + 11)]), 3.2)


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


def drawn(d: str, width: float, **more: Number | str) -> str:
    """The stroke along `d`."""
    return el("path", d=d, class_=KIND, stroke_width=whole(width), **more)


def dotted(d: str, width: float) -> str:
    """The same in dots: slow and even."""
    return drawn(d, width, stroke_dasharray=f"{1 if width > 2 else 2} {whole(width + 3):g}")
