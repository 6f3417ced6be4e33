"""How high the top of a lesson is on paper: title, drawing, what to get, the lesson in short.

Beside a drawing of many rows stands what comes before they move too, as far as it is high.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from build_tools.views.diagrams.strip import TALL
from build_tools.views.diagrams.strip import WIDTH as DRAWN_WIDE
from build_tools.views.paper.columns import Piece, in_two_columns
from build_tools.views.paper.printed import PrintedLesson, Runs
from build_tools.views.paper.sheet import (
    BESIDE_PICTURE,
    HALF,
    HEADING,
    MM,
    PICTURE,
    WIDE,
    Setting,
    words_high,
)
from build_tools.views.paper.typeface import Run, lines, width

_CAPTION = 0.1
"""Under a drawing that words run on below, in sizes of the words."""


def is_tall(printed: PrintedLesson) -> bool:
    """Whether the drawing is so high that what comes before they move stands beside it."""
    return printed.picture.rows >= TALL


def top_high(printed: PrintedLesson, setting: Setting) -> float:
    """How high it all is, with what comes before they move where that stands beside it."""
    if is_tall(printed):
        return _beside_tall(printed, setting)
    return _in_columns(printed, setting) + _teams(printed, WIDE, setting)


def _in_columns(printed: PrintedLesson, setting: Setting) -> float:
    title, picture = _title(printed, setting), _picture(printed, setting)
    beside = _lead(printed, BESIDE_PICTURE, setting)
    if printed.picture.rows > 1 and printed.run_in:
        beside += _kit(printed, BESIDE_PICTURE, setting)
        return title + max(beside, picture) + _run_in(printed, WIDE, setting)
    if printed.picture.rows > 1:
        beside += _short(printed, BESIDE_PICTURE, 1, setting)
        return title + max(beside, picture + _kit(printed, PICTURE, setting))
    short = _run_in(printed, WIDE, setting) if printed.run_in else _short(printed, HALF, 2, setting)
    beside += _kit(printed, BESIDE_PICTURE, setting)
    return title + max(beside, picture) + short


def _beside_tall(printed: PrintedLesson, setting: Setting) -> float:
    """One column beside the drawing, as wide as the paper where the drawing has ended."""
    above = _title(printed, setting) + _lead(printed, WIDE, setting)
    picture = _picture(printed, setting) + _CAPTION * setting.points
    at = _kit(printed, BESIDE_PICTURE, setting)
    at += (
        _run_in(printed, BESIDE_PICTURE, setting)
        if printed.run_in
        else _short(printed, BESIDE_PICTURE, 1, setting)
    )
    at += _teams(printed, BESIDE_PICTURE, setting)
    at = _round(printed.before, at + 0.2 * setting.points, picture, setting)
    return above + max(at, picture)


def _round(
    sections: Iterable[Sequence[Runs]], at: float, picture: float, setting: Setting
) -> float:
    """How far down paragraphs go that begin at `at` beside a drawing so high."""
    line = setting.line
    for section in sections:
        for number, runs in enumerate(section):
            at += 0.1 * setting.points if number else 0.0
            many = lines(runs, BESIDE_PICTURE, setting.points)
            beside = min(many, max(0, math.ceil((picture - at) / line)))
            below = math.ceil((many - beside) * BESIDE_PICTURE / WIDE)
            at += (beside + below) * line
    return at


def _title(printed: PrintedLesson, setting: Setting) -> float:
    size = 1.5 * setting.points
    return lines((Run(printed.title, bold=True),), WIDE, size) * size * HEADING


def _lead(printed: PrintedLesson, wide: float, setting: Setting) -> float:
    """What they make, and how long it takes."""
    size = setting.points
    larger = 1.0 if setting.tight else 1.1
    lead = lines((Run(printed.lead),), wide, larger * size) * larger * size * 1.25
    return 0.4 * size + lead + 0.4 * size + words_high(printed.facts, wide, setting)


def _picture(printed: PrintedLesson, setting: Setting) -> float:
    caption = words_high((Run(printed.caption),), PICTURE, setting)
    return caption + PICTURE * printed.picture.height / DRAWN_WIDE


def _kit(printed: PrintedLesson, wide: float, setting: Setting) -> float:
    """What to get: a box before each thing, as many things to a line as there is room for."""
    size, line = setting.points, setting.line
    space, box, gap = width("n", False, size) / 2, 3 * MM + 1.5 * MM, 4 * MM
    down, at = line, width("What to get:", True, size) + space
    for thing in printed.collect:
        long = box + width(thing, False, size) + gap
        if at + long > wide:
            down, at = down + line, 0.0
        if long > wide:
            more = lines((Run(thing),), wide - gap, size, box) - 1
            down, at = down + more * line, wide
        else:
            at += long + space
    return down


def _short(printed: PrintedLesson, wide: float, columns: int, setting: Setting) -> float:
    """The lesson in short, each line beside its minutes."""
    size = setting.points
    pieces = [
        Piece(lines((Run(does),), wide - 4.5 * size, size), setting.line, 0.0, True)
        for _, does in printed.short
    ]
    whole = in_two_columns(pieces) if columns > 1 else sum(piece.high for piece in pieces)
    return 0.6 * size + whole


def _teams(printed: PrintedLesson, wide: float, setting: Setting) -> float:
    return words_high(printed.teams, wide, setting) if printed.teams else 0.0


def _run_in(printed: PrintedLesson, wide: float, setting: Setting) -> float:
    """The lesson in short on two lines or more, one sitting after the other."""
    return 0.6 * setting.points + words_high(printed.run_in, wide, setting)
