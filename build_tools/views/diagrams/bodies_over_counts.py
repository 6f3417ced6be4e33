"""Moves over their counts: bodies above bars that stand on the floor, every count with its number.

A bar is as wide as the move is long and as high as its level; what is held is drawn in dashes, and
what pupils choose is a blank, or the theme drawn faint where they vary it. One drawing a row, to
be read from far off.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import zip_longest

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import OPEN
from build_tools.views.dance.moves_before import moves_before, shown
from build_tools.views.diagrams.body_sprite import (
    FLOOR,
    HEIGHT,
    BodyDrawn,
    bodies_shown,
    body_drawn,
)
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.strip import FAINT
from build_tools.views.diagrams.svg import drawing, el, line, num, text, text_width, words_along
from build_tools.views.words.plain_words import action_in_words, action_label

WIDTH = 1160
_WORD, _NUMBER = 40, 38
"""Sizes of type: one unit is about one pixel where the screen is 1280 wide and 720 high."""
_ROW_COUNTS = (8, 12, 16, 6, 4)
"""Counts to a row; the first that holds every word and keeps bodies large is taken."""
_LEAST_BODY = 0.62
"""How small a body may be drawn beside the others before a row holds fewer counts."""
_HIGH = {"low": 58, "middle": 84, "high": 110}
_FEET, _FLOOR = HEIGHT + 4, HEIGHT + 4 + 118
_ROW = _FLOOR + 46


@dataclass(frozen=True, slots=True)
class RowOfMoves:
    """One row of moves as a drawing, and the bodies that its page has to draw once."""

    figure: Figure
    moves: tuple[tuple[Fraction, Fraction], ...]
    """From which count to which each move of the row lasts, from 0 for the first of all."""
    bodies: tuple[BodyDrawn, ...]


def bodies_over_counts(
    title: str, actions: Sequence[Action], lasts: Sequence[str] | None = None
) -> tuple[RowOfMoves, ...]:
    """The moves of `actions`, row by row.

    `lasts` says how long each lasts where nobody counts; then there are no numbers.
    """
    bodies = _bodies(actions)
    counts = _counts_to_a_row(actions, bodies)
    rows = _rows(actions, counts)
    told = [action_in_words(action, long) for action, long in zip_longest(actions, lasts or ())]
    found, first = [], 0
    for row in rows:
        end = first + len(row)
        moves = tuple((at, at + action.counts) for at, action in row)
        named = title
        if len(rows) > 1 and lasts is None:
            one, last = figures(moves[0][0] + 1), figures(moves[-1][1])
            named = _("{title}, counts {first} to {last}", title=title, first=one, last=last)
        standing = bodies[first:end]
        drawn = _drawn(named, row, standing, counts, lasts is None)
        figure = Figure(named, drawn, tuple(told[first:end]))
        found.append(RowOfMoves(figure, moves, tuple(one for one in standing if one)))
        first = end
    return tuple(found)


def _bodies(actions: Sequence[Action]) -> list[BodyDrawn | None]:
    """The body in each move after the one before it; none in what pupils choose."""
    return [
        body_drawn(known, before) if (known := shown(action)) else None
        for action, before in zip(actions, moves_before(actions), strict=True)
    ]


def _counts_to_a_row(actions: Sequence[Action], bodies: Sequence[BodyDrawn | None]) -> int:
    longest = max((action.counts for action in actions), default=Fraction(1))
    total = sum((action.counts for action in actions), Fraction(0))
    for counts in _ROW_COUNTS:
        counts = max(1, min(counts, -int(-total // 1)))
        per = WIDTH / counts
        if longest <= counts and all(
            _fits(action, drawn, float(action.counts) * per)
            for action, drawn in zip(actions, bodies, strict=True)
        ):
            return counts
    return max(min(8, -int(-total // 1)), -int(-longest // 1))


def _fits(action: Action, drawn: BodyDrawn | None, room: float) -> bool:
    word = text_width(action_label(action), _WORD, bold=True)
    return word <= room - 20 and (drawn is None or room / drawn.width >= _LEAST_BODY)


def _rows(actions: Sequence[Action], counts: int) -> list[list[tuple[Fraction, Action]]]:
    """The actions by row, each with the count of the whole before which it starts."""
    rows: list[list[tuple[Fraction, Action]]] = [[]]
    at = first = Fraction(0)
    for action in actions:
        if rows[-1] and at + action.counts - first > counts:
            rows.append([])
            first = at
        rows[-1].append((at, action))
        at += action.counts
    return rows


def _drawn(
    title: str,
    row: Sequence[tuple[Fraction, Action]],
    bodies: Sequence[BodyDrawn | None],
    counts: int,
    counted: bool,
) -> str:
    per, first = WIDTH / counts, row[0][0]
    end = row[-1][0] + row[-1][1].counts
    pieces = [
        _move(action, drawn, float(at - first) * per, per)
        for (at, action), drawn in zip(row, bodies, strict=True)
    ]
    pieces.append(line(2, _FLOOR, float(end - first) * per - 2, _FLOOR, 4))
    if counted:
        told = [
            ((count + 0.5 - float(first)) * per, str(count + 1))
            for count in range(-int(-first // 1), -int(-end // 1))
        ]
        pieces.append(words_along(told, _ROW - 6, _NUMBER))
    return drawing(title, WIDTH, _ROW, *pieces, kind="bodies-over-counts")


def _move(action: Action, drawn: BodyDrawn | None, x: float, per: float) -> str:
    """A bar with its word, and the body above it."""
    wide = float(action.counts) * per
    start, _to, end = (action.level or "middle").partition(" to ")
    x1, x2 = x + 4, x + wide - 4
    y1, y2 = _FLOOR - _HIGH[start], _FLOOR - _HIGH[end or start]
    held = action.kind in ("stillness", OPEN)
    bar = el(
        "path",
        d=f"M{num(x1)} {num(_FLOOR)}V{num(y1)}L{num(x2)} {num(y2)}V{num(_FLOOR)}Z",
        class_="open-box" if held else "box",
        fill_opacity=0 if held else 0.1,
        stroke="currentColor",
        stroke_width=4,
        **({"stroke_dasharray": "12 8"} if held else {}),
    )
    pieces = []
    if word := action_label(action):
        pieces.append(
            text(word, x + wide / 2, _FLOOR - 14, _WORD, "middle", bold=True, squeeze=wide - 16)
        )
    if drawn is not None:
        size = min(1.0, wide / drawn.width)
        left = x + (wide - drawn.width * size) / 2
        floor = _FEET - (HEIGHT - FLOOR) * size
        pieces.append(bodies_shown([(drawn, left, 1)], floor, size, class_="body"))
    if pieces and action.kind == OPEN:
        pieces = [el("g", *pieces, opacity=FAINT)]
    return el("g", bar, *pieces, class_="move")
