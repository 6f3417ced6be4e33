"""The one stroke that says how a body gets there: its way, and the feel of it.

Straight or winding is the way through space; thick or thin is strong or light; rays at its head
are sudden. It goes up and down once for each step.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.views.diagrams.body_lines import Point, track, whole
from build_tools.views.diagrams.svg import el

KIND = "way"
"""The class of the stroke, for the style sheet: it has the colour of what moves."""
_WIDTHS = {"strong": 5.5, "light": 2.0}
_WIDTH = 3.5


def stroke(points: list[Point], feel: Collection[str], both_ways: bool = False) -> str:
    """The arrow along `points`, drawn as the feel is."""
    shown = winding(points) if "indirect" in feel else points
    width = next((_WIDTHS[one] for one in _WIDTHS if one in feel), _WIDTH)
    d = track(shown) + _head(shown[-2], shown[-1], width)
    if both_ways:
        d += _head(shown[1], shown[0], width)
    if "sudden" in feel:
        d += _rays(shown[-2], shown[-1])
    return _drawn(d, width)


def ticks(at: Point, outwards: float) -> str:
    """Three short rays: a clap, a snap, a flick. `outwards` is their middle way, in degrees."""
    d = ""
    for turn in (-38, 0, 38):
        angle = math.radians(outwards + turn)
        c, s = math.cos(angle), math.sin(angle)
        d += track([(at[0] + 7 * c, at[1] + 7 * s), (at[0] + 15 * c, at[1] + 15 * s)])
    return _drawn(d, 2.4)


def ring(x: float, y: float, wide: float, left: bool, back: bool, feel: Collection[str]) -> str:
    """An arrow round the body, open at its far side; `back` has a head at both ends.

    It is seen a little from above, so that what lies lower is nearer: a turn to the right, which
    is clockwise from above, passes the near side from right to left.
    """
    way = 1 if left else -1
    points = [
        (x - way * wide * math.cos(a), y + wide * 0.3 * math.sin(a))
        for a in (math.radians(degrees) for degrees in range(-35, 206, 20))
    ]
    return stroke(points, set(feel) - {"indirect", "bound"}, both_ways=back)


def steps(ends: list[Point], count: int, high: float, feel: Collection[str]) -> str:
    """An arrow that goes up and down once for each step, for eight at most."""
    (x0, y0), (x1, _) = ends[0], ends[-1]
    hops, way = min(8, count), 1 if x1 > x0 else -1
    wide = (x1 - x0 - way * 9) / hops
    points = [
        (x0 + wide * (n + k / 4), y0 - 4 * high * (k / 4) * (1 - k / 4))
        for n in range(hops)
        for k in range(1 if n else 0, 5)
    ]
    return stroke([*points, (x1, y0)], feel)


def bent(ends: list[Point], pathway: str | None, feel: Collection[str]) -> str:
    """An arrow as the pathway is: straight, one bend or a zigzag; a curve that winds is a curve."""
    (x0, y0), (x1, _) = ends[0], ends[-1]
    if pathway == "curved":
        points = [
            (x0 + (x1 - x0) * n / 10, y0 - 12 * math.sin(math.pi * n / 10)) for n in range(11)
        ]
        return stroke(points, set(feel) - {"indirect"})
    if pathway == "zigzag":
        points = [(x0 + (x1 - x0) * n / 5, y0 + (0, -8, 8, -8, 8, 0)[n]) for n in range(6)]
        return stroke(points, set(feel) - {"indirect"})
    return stroke(ends, feel)


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
    return _drawn(track([(x, y), (x, y + 11)]) + track([(x + 6, y), (x + 6, y + 11)]), 3.2)


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


def _head(before: Point, tip: Point, width: float) -> str:
    long = 6 + width * 0.8
    angle = math.atan2(tip[1] - before[1], tip[0] - before[0])
    wings = [
        (tip[0] - long * math.cos(angle + turn), tip[1] - long * math.sin(angle + turn))
        for turn in (0.62, -0.62)
    ]
    return track([wings[0], tip, wings[1]])


def _rays(before: Point, tip: Point) -> str:
    angle = math.atan2(tip[1] - before[1], tip[0] - before[0])
    d = ""
    for turn in (-0.75, 0.75):
        c, s = math.cos(angle + turn), math.sin(angle + turn)
        d += track([(tip[0] + 5 * c, tip[1] + 5 * s), (tip[0] + 10 * c, tip[1] + 10 * s)])
    return d


def _drawn(d: str, width: float) -> str:
    return el("path", d=d, class_=KIND, stroke_width=whole(width))
