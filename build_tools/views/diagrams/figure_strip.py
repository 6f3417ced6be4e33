"""A motif as bodies above bars: what the body does, how long, how high, on which counts.

A bar stands on the floor, as wide as its move is long and as high as the body is: tall is high.
Every count has its number, so the drawing needs no key. What pupils decide has no body and a bar
of dashes; where they vary a theme it is drawn faint. What is held still has dashes too.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from html import escape

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import OPEN
from build_tools.views.dance.moves_before import moves_before, shown
from build_tools.views.dance.without_counts import lengths_in_words
from build_tools.views.diagrams.body_sprite import (
    BodyDrawn,
    bodies_shown,
    body_drawn,
)
from build_tools.views.diagrams.changes_told import Told, changes_told, drawn_changes, height_of
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.figure_strip_rows import (
    EDGE,
    WIDTH,
    Row,
    counts_to_a_row,
    per_count,
    rows_of,
)
from build_tools.views.diagrams.strip import FAINT, StripSize, strip_kind
from build_tools.views.diagrams.svg import (
    SMALL,
    TEXT,
    drawing,
    el,
    num,
    path,
    text,
    text_width,
    words_along,
)
from build_tools.views.words.plain_words import action_label

_BODIES = 74.0
"""Room for bodies: what the tallest, arms up in a jump, needs at the largest scale."""
_SCALE = 0.5
_BAR = {"low": 19, "middle": 30, "high": 41}
_FLOOR = _BODIES + 3 + _BAR["high"]
_ROW = _FLOOR + 18
_HEAD = 18
"""Room above a row that says what it holds, where there is more than one."""


@dataclass(frozen=True, slots=True)
class FigureStrip:
    """A strip, and the bodies that its page has to draw once (`body_sprite.sprite`)."""

    figure: Figure
    bodies: tuple[BodyDrawn, ...]


def figure_strip_size(actions: Sequence[Action], changes: Sequence[str] = ()) -> StripSize:
    """The size of the strip that `figure_strip` draws of the same."""
    counts = counts_to_a_row(actions)
    rows, per = rows_of(actions, counts), per_count(counts)
    height = sum(
        (_HEAD if len(rows) > 1 else 0) + _ROW + height_of(_told(row, actions, changes, per))
        for row in rows
    )
    return StripSize(height, len(rows))


def figure_strip(
    title: str,
    actions: Sequence[Action],
    counted: bool,
    changes: Sequence[str] = (),
    words: Sequence[str] = (),
) -> FigureStrip:
    """The strip of `actions` in as many rows as they need; `words` are its text version.

    Nobody counts where `counted` is False: then bars have no numbers. `changes` says for each
    action what is new in it that no bar shows.
    """
    counts = counts_to_a_row(actions)
    rows, per = rows_of(actions, counts), per_count(counts)
    bodies = [
        body_drawn(known, before) if (known := shown(action)) else None
        for action, before in zip(actions, moves_before(actions), strict=True)
    ]
    scale = min((_scale(row, bodies) for row in rows), default=_SCALE)
    lasts = [None] * len(actions) if counted else list(lengths_in_words(actions))
    drawn, y, before = [], 0.0, Fraction(0)
    for row in rows:
        if len(rows) > 1:
            drawn.append(text(_head(row, actions, before, counted), EDGE, y + SMALL, SMALL))
            y += _HEAD
        drawn.append(bodies_shown(_bodies(row, actions, bodies, per, scale), y + _BODIES, scale))
        drawn += _bars(row, actions, per, y + _FLOOR)
        drawn += _floor(row, actions, lasts, per, y + _FLOOR, before if counted else None)
        told = _told(row, actions, changes, per)
        drawn.append(drawn_changes(told, y + _ROW))
        y += _ROW + height_of(told)
        before += _long(row, actions)
    svg = drawing(title, WIDTH, y, *drawn, kind=strip_kind(len(rows)))
    return FigureStrip(Figure(title, svg, tuple(words)), tuple(one for one in bodies if one))


def _long(row: Row, actions: Sequence[Action]) -> Fraction:
    start, last = row[-1]
    return start + actions[last].counts


def _scale(row: Row, bodies: Sequence[BodyDrawn | None]) -> float:
    """So large that the bodies of the row stand beside one another."""
    wide = sum(body.width for _start, n in row if (body := bodies[n]))
    return min(_SCALE, (WIDTH - 2 * EDGE) / wide) if wide else _SCALE


def _bodies(
    row: Row,
    actions: Sequence[Action],
    bodies: Sequence[BodyDrawn | None],
    per: float,
    scale: float,
) -> list[tuple[BodyDrawn, float, float]]:
    """Each with its left edge and how dark it is: over the middle of its bar, aside where its
    neighbours need room; faint where pupils vary it.
    """
    standing = [
        (body, EDGE + float(start + actions[n].counts / 2) * per, actions[n].kind == OPEN)
        for start, n in row
        if (body := bodies[n])
    ]
    lefts: list[float] = []
    edge = 0.0
    for body, middle, _varied in standing:
        lefts.append(max(edge, middle - body.width * scale / 2))
        edge = lefts[-1] + body.width * scale
    edge = float(WIDTH)
    for n in range(len(standing) - 1, -1, -1):
        wide = standing[n][0].width * scale
        lefts[n] = max(0.0, min(lefts[n], edge - wide))
        edge = lefts[n]
    return [
        (body, left, FAINT if varied else 1.0)
        for (body, _middle, varied), left in zip(standing, lefts, strict=True)
    ]


def _bars(row: Row, actions: Sequence[Action], per: float, floor: float) -> list[str]:
    """The bars of a row, those that move and those that do not as one stroke each, and the words
    in them.
    """
    shapes: dict[bool, str] = {False: "", True: ""}
    words = []
    for start, n in row:
        action = actions[n]
        x1 = EDGE + float(start) * per + 1.5
        x2 = x1 + float(action.counts) * per - 3
        shapes[action.kind in ("stillness", OPEN)] += _outline(action, x1, x2, floor)
        if word := action_label(action):
            middle, room = (x1 + x2) / 2, x2 - x1
            attributes: dict[str, str | float] = {"x": middle, "y": floor - 5}
            if text_width(word, TEXT, bold=True) > room:
                attributes |= {"textLength": room, "lengthAdjust": "spacingAndGlyphs"}
            if action.kind == OPEN:
                attributes["opacity"] = FAINT
            words.append(el("text", escape(word), **attributes))
    pieces = []
    if d := shapes[False]:
        pieces.append(_outlined(d, class_="box", fill_opacity=0.12))
    if d := shapes[True]:
        pieces.append(_outlined(d, class_="open-box", fill="none", stroke_dasharray="5 3"))
    named = el("g", *words, font_size=TEXT, text_anchor="middle", font_weight=700)
    return [*pieces, *([named] if words else [])]


def _outlined(d: str, **attributes: str | float) -> str:
    return el("path", d=d, stroke="currentColor", stroke_width=1.6, **attributes)


def _outline(action: Action, x1: float, x2: float, floor: float) -> str:
    first, _to, last = (action.level or "middle").partition(" to ")
    up, down = floor - _BAR[first], floor - _BAR[last or first]
    top = f"L{num(x2)} {num(down)}" if up != down else f"H{num(x2)}"
    return f"M{num(x1)} {num(floor)}V{num(up)}{top}V{num(floor)}Z"


def _floor(
    row: Row,
    actions: Sequence[Action],
    lasts: Sequence[str | None],
    per: float,
    y: float,
    before: Fraction | None,
) -> list[str]:
    """The floor, and under it every count of the row, or how long each move lasts."""
    long = _long(row, actions)
    if before is not None:
        told = [(EDGE + (n + 0.5) * per, figures(before + n + 1)) for n in range(-int(-long // 1))]
    else:
        told = [
            (EDGE + float(start + actions[n].counts / 2) * per, lasts[n] or "") for start, n in row
        ]
    return [
        path(f"M{num(EDGE)} {num(y)}h{num(float(long) * per)}", 2),
        words_along(told, y + 15, SMALL),
    ]


def _head(row: Row, actions: Sequence[Action], before: Fraction, counted: bool) -> str:
    if counted:
        last_count = figures(before + _long(row, actions))
        return _("counts {first} to {last}", first=figures(before + 1), last=last_count)
    first, last = row[0][1] + 1, row[-1][1] + 1
    if first == last:
        return _("move {number}", number=first)
    return _("moves {first} to {last}", first=first, last=last)


def _told(
    row: Row, actions: Sequence[Action], changes: Sequence[str], per: float
) -> tuple[Told, ...]:
    """What is new in the moves of a row."""
    lefts = [EDGE + float(start) * per for start, _n in row]
    boxes = (
        (left, left + float(actions[n].counts) * per, changes[n] if changes else "")
        for left, (_start, n) in zip(lefts, row, strict=True)
    )
    return changes_told(boxes, (EDGE, WIDTH - EDGE))
