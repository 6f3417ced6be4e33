"""The stroke of a way over the floor: a hump for each step, or the way's own bends and a number.

Steps are counted by eye as far as `MOST_HUMPS`, each a hump by itself, clear of the head; more of
them, and those along a curve or a zigzag, are told by a number above the way.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.body.moves import Move
from build_tools.views.diagrams.body_arrows import Shaft, arrow, stroke, thick
from build_tools.views.diagrams.body_lines import Point, whole
from build_tools.views.diagrams.svg import el

MOST_HUMPS = 6
"""More than these nobody counts at a glance (subitizing is of about four; from memory)."""
_HUMP, _CLEAR, _HEAD = 12.0, 2.6, 11.0
"""How wide a hump is, how much paper stands between two, and the room of the head."""
_ONE, _BENT, _NUMBERED = 38.0, 62.0, 62.0
_RAYS, _BARRED, _CURLED = 12.0, 9.0, 12.0
_FLOOR = -4.0
_SIZE = 40
"""Of a number: on the wall it is to be read from the back of a hall, and on paper in no less than
9.5 points where a strip of six wide bodies is drawn small."""
_LEAPING = ("skip", "hop", "gallop", "run")
_GLIDING = ("float", "roll")


def has_humps(move: Move) -> bool:
    """Whether the steps of `move` are drawn one by one."""
    smooth = move.pathway not in (None, "straight") or "indirect" in move.feel
    return not smooth and move.manner not in _GLIDING and move.steps <= MOST_HUMPS


def numbered(move: Move) -> bool:
    """Whether the steps of `move` are told by a number: what goes in one, or rolls, has none."""
    return move.manner != "roll" and move.steps > 1 and not has_humps(move)


def room_for(move: Move, standing: bool) -> float:
    """How wide the way of `move` is drawn, in units; who sits in a wheelchair rolls it."""
    more = _RAYS if "sudden" in move.feel else 0.0
    if standing and has_humps(move) and move.steps > 1:
        more += _BARRED if "bound" in move.feel else 0.0
        more += _CURLED if "free" in move.feel else 0.0
    if not standing:
        return (_BENT if move.pathway == "curved" else _ONE) + more
    if has_humps(move):
        each = _HUMP + _between(move.feel)
        return more + (_ONE if move.steps == 1 else each * move.steps + _HEAD + 4)
    return more + (_NUMBERED if numbered(move) else _BENT)


def over_floor(move: Move, gap: Point, standing: bool) -> str:
    """The way of `move` over the floor, from one end of `gap` to the other."""
    if "sudden" in move.feel:
        gap = (gap[0], gap[1] + (_RAYS if gap[1] < gap[0] else -_RAYS))
    if standing and has_humps(move):
        return humps(gap, move.steps, 18.0 if move.manner in _LEAPING else 9.0, move.feel)
    way = bent(gap, move.pathway, move.feel)
    if standing and numbered(move):
        high = -24.0 if move.pathway == "curved" else -20.0 if move.pathway == "zigzag" else -12.0
        way += number(move.steps, (gap[0] + gap[1]) / 2, high)
    return way


def humps(gap: Point, count: int, high: float, feel: Collection[str]) -> str:
    """A hump for each step, then the head by itself; one step alone is one arrow."""
    x0, x1 = gap
    way = 1 if x1 > x0 else -1
    if count == 1:
        return _one_step(x0, x1, high, feel)
    if "free" in feel:
        x0 += way * _CURLED
    between = _between(feel)
    barred = _BARRED if "bound" in feel else 0.0
    wide = whole((abs(x1 - x0) - _HEAD - barred) / count - between)
    hump = f"q{_n(way * wide / 2)} {_n(-2 * high)} {_n(way * wide)} 0".replace(" -", "-")
    first = x0 + way * between / 2
    start = f"M{_n(first)} {_n(_FLOOR)}".replace(" -", "-")
    d = start + f"m{_n(way * between)} 0".join([hump] * count)
    level = _FLOOR - high / 2
    at = (x1 - way * (_HEAD + barred / 2 + 1), level)
    tail, after = (first, _FLOOR), (first + way, _FLOOR)
    before, tip = (x1 - way * 8, level), (x1, level)
    return arrow([Shaft(d, tail, after, at, tip, before, tip)], feel)


def _one_step(x0: float, x1: float, high: float, feel: Collection[str]) -> str:
    middle, long = whole(x0 + (x1 - x0) / 2), whole(x1 - x0)
    d = f"M{_n(x0)} {_n(_FLOOR)}q{_n(long / 2)} {_n(-4 * high)} {_n(long)} 0".replace(" -", "-")
    bow, top = (middle, _FLOOR - 4 * high), (middle, _FLOOR - 2 * high)
    shaft = Shaft(d, (x0, _FLOOR), bow, top, (x1, top[1]), bow, (x1, _FLOOR))
    return arrow([shaft], feel)


def bent(gap: Point, pathway: str | None, feel: Collection[str]) -> str:
    """The way as it goes over the floor: straight, one bend or a zigzag.

    A bend is seen from a little above and comes towards whoever looks, so that it is no hop.
    """
    x0, x1 = gap
    if pathway == "curved":
        middle, half = (x0 + x1) / 2, (x1 - x0) / 2
        turns = [math.radians(-20 + 220 * n / 9) for n in range(10)]
        points = [(middle - half * math.cos(a), -16 + 14 * math.sin(a)) for a in turns]
        return stroke(points, set(feel) - {"indirect"})
    if pathway == "zigzag":
        points = [(x0 + (x1 - x0) * n / 5, -9 + (0, -7, 7, -7, 7, 0)[n]) for n in range(6)]
        return stroke(points, set(feel) - {"indirect"})
    return stroke([(x0, _FLOOR - 4), (x1, _FLOOR - 4)], feel)


def number(count: int | str, x: float, y: float) -> str:
    """How many, in the page's figures, its middle at `x` and its foot at `y`."""
    return el(
        "text",
        str(count),
        x=whole(x),
        y=whole(y),
        font_size=_SIZE,
        font_weight=700,
        text_anchor="middle",
        class_="way",
        fill="currentColor",
        stroke="none",
    )


def _between(feel: Collection[str]) -> float:
    return thick(feel) + _CLEAR


def _n(value: float) -> str:
    return f"{whole(value):g}"
