"""The order strip of a motif: a box an action, as wide as it is long, as high as its level."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import OPEN
from build_tools.views.dance.without_counts import lengths_in_words
from build_tools.views.diagrams.changes_told import Told, changes_told, drawn_changes, height_of
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.marks import marks
from build_tools.views.diagrams.ruler import HEIGHT, ruler
from build_tools.views.diagrams.svg import (
    SMALL,
    TEXT,
    drawing,
    el,
    num,
    path,
    text,
    text_width,
)
from build_tools.views.words.plain_words import action_in_words, action_label, name_in_words
from build_tools.views.words.punctuation import capital

WIDTH = 360
_LEFT, _RIGHT = 34, 6
_BOX = 44
_LIFT = {"low": 0, "middle": 11, "high": 22}
_TOP = 4
_FLOOR = _TOP + _LIFT["high"] + _BOX
_ROW = _FLOOR + 6 + HEIGHT + 6
_HEAD = 18
"""Room above a row that says what it holds, where there is more than one row."""
_ROW_COUNTS = (8, 12, 16, 4, 2)
"""Counts to a row, the best first; a row that holds every word is taken."""
FAINT = 0.55
"""How dark the theme is where pupils vary it: there to be read, and theirs to change."""

Row = list[tuple[Fraction, Action]]


@dataclass(frozen=True, slots=True)
class StripSize:
    """How large a strip is drawn: `WIDTH` wide, so high, in so many rows."""

    height: float
    rows: int


TALL = 3
"""So many rows are higher than what stands beside them at the top of a lesson's print."""


def strip_kind(rows: int) -> str:
    """The class of a strip of so many rows, for the style sheets."""
    return "strip" + (" long" if rows > 1 else "") + (" tall" if rows >= TALL else "")


def strip_title(name: str) -> str:
    """What the strip of a motif or development shows."""
    return capital(_("{name}, move by move", name=name_in_words(name)))


def order_strip(
    title: str,
    actions: Sequence[Action],
    phrase: int | None,
    changes: Sequence[str] = (),
) -> Figure:
    """The strip of `actions`, in as many rows as they need.

    `phrase` is in counts, and None where nobody counts. `changes` says for each action what is new
    in it that its box does not show.
    """
    counts = _counts_to_a_row(actions)
    lasts = lengths_in_words(actions) if phrase is None else (None,) * len(actions)
    rows = _rows(actions, counts)
    per = (WIDTH - _LEFT - _RIGHT) / counts
    drawn, before, y, first = [], Fraction(0), 0.0, 0
    for row in rows:
        if len(rows) > 1:
            held = _moves_of(row, first) if phrase is None else _counts_of(row, before)
            drawn.append(text(held, _LEFT, y + SMALL, SMALL))
            y += _HEAD
        drawn.append(_row(row, y, per, phrase, before))
        told_here = _changes_told(row, changes[first : first + len(row)], per)
        drawn.append(drawn_changes(told_here, y + _ROW))
        if row is rows[-1] and any(lasts):
            drawn.append(_key(y + _FLOOR + 6 + SMALL))
        y += _ROW + height_of(told_here)
        before += row[-1][0] + row[-1][1].counts
        first += len(row)
    svg = drawing(title, WIDTH, y, *drawn, kind=strip_kind(len(rows)))
    told = [*changes, *[""] * (len(actions) - len(changes))]
    lines = (
        f"{n}. {_with_new(action, action_in_words(action, long), change)}"
        for n, (action, long, change) in enumerate(zip(actions, lasts, told, strict=True), start=1)
    )
    return Figure(title, svg, tuple(lines))


def _with_new(action: Action, words: str, change: str) -> str:
    if change and action.kind == OPEN:
        # the change says itself that pupils choose, and what
        return f"{words.removesuffix(_('as pupils choose'))}{change}"
    if not change or (action.chosen and change in words.split(", ")):
        return words
    return _("{move} (new: {change})", move=words, change=change)


def _counts_of(row: Row, before: Fraction) -> str:
    last = before + row[-1][0] + row[-1][1].counts
    return _("counts {first} to {last}", first=figures(before + 1), last=figures(last))


def _moves_of(row: Row, before: int) -> str:
    first, last = before + 1, before + len(row)
    if first == last:
        return _("move {number}", number=first)
    return _("moves {first} to {last}", first=first, last=last)


def _changes_told(row: Row, changes: Sequence[str], per: float) -> tuple[Told, ...]:
    """What is new in the moves of a row."""
    lefts = [_LEFT + float(start) * per for start, _action in row]
    boxes = (
        (left, left + float(action.counts) * per, change)
        for left, (_start, action), change in zip(lefts, row, changes, strict=bool(changes))
    )
    return changes_told(boxes, (0, WIDTH))


def _counts_to_a_row(actions: Sequence[Action]) -> int:
    longest = max((action.counts for action in actions), default=Fraction(1))
    for counts in _ROW_COUNTS:
        per = (WIDTH - _LEFT - _RIGHT) / counts
        fits = all(
            text_width(action_label(a), TEXT, bold=True) <= float(a.counts) * per - 4
            for a in actions
        )
        if longest <= counts and fits:
            return counts
    return max(8, -int(-longest // 1))


def _rows(actions: Sequence[Action], counts: int) -> list[Row]:
    rows: list[Row] = [[]]
    used = Fraction(0)
    for action in actions:
        if rows[-1] and used + action.counts > counts:
            rows.append([])
            used = Fraction(0)
        rows[-1].append((used, action))
        used += action.counts
    return rows


def _row(row: Row, y: float, per: float, phrase: int | None, before: Fraction) -> str:
    total = row[-1][0] + row[-1][1].counts
    right = _LEFT + float(total) * per
    lanes = "".join(
        f"M{_LEFT} {num(y + _FLOOR - lift - _BOX / 2)}H{num(right)}" for lift in _LIFT.values()
    )
    pieces = [
        path(lanes, 0.75, kind="rule", dash="1 4"),
        text(_("high"), 0, y + _TOP + _BOX / 2 + 4, SMALL, kind="quiet"),
        text(_("low"), 0, y + _FLOOR - _BOX / 2 + 4, SMALL, kind="quiet"),
    ]
    pieces += [_box(action, _LEFT + float(start) * per, y, per) for start, action in row]
    if phrase is not None:
        whole = -int(-total // 1)
        pieces.append(ruler(_LEFT, y + _FLOOR + 6, whole, per, phrase, start=int(before)))
    return el("g", *pieces)


def _key(y: float) -> str:
    return text(_("a wider box lasts longer"), _LEFT, y, SMALL, kind="quiet")


def _box(action: Action, x: float, y: float, per: float) -> str:
    width = float(action.counts) * per
    start, end = (_lift(part) for part in _levels(action.level))
    gap = 1.5
    x1, x2 = x + gap, x + width - gap
    y1, y2 = y + _FLOOR - start, y + _FLOOR - end
    corners = f"M{num(x1)} {num(y1)}L{num(x2)} {num(y2)}V{num(y2 - _BOX)}L{num(x1)} "
    still = action.kind in ("stillness", OPEN)
    shape = el(
        "path",
        d=f"{corners}{num(y1 - _BOX)}Z",
        class_="open-box" if still else "box",
        fill_opacity=0 if still else 0.1,
        stroke="currentColor",
        stroke_width=1.8,
        **({"stroke_dasharray": "5 3"} if still else {}),
    )
    middle, centre = (x1 + x2) / 2, (y1 + y2) / 2 - _BOX / 2
    strokes = marks(action, middle, centre + 10)
    word_y = centre - 4 if strokes else centre + 5
    word = text(action_label(action), middle, word_y, TEXT, "middle", True, squeeze=width - 5)
    if action.kind == OPEN:
        word = el("g", word, opacity=FAINT) if action.theme else ""
    return el("g", shape, word, strokes)


def _levels(level: str | None) -> tuple[str, str]:
    first, _to, last = (level or "middle").partition(" to ")
    return first, last or first


def _lift(level: str) -> int:
    return _LIFT[level]
