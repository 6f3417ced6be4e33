"""The order strip for a wall: few words, very large, read from the back of a hall."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import zip_longest

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import OPEN
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.marks import marks
from build_tools.views.diagrams.strip import FAINT
from build_tools.views.diagrams.svg import drawing, el, line, num, text, text_width
from build_tools.views.words.plain_words import action_in_words, action_label

WIDTH = 1160
_WORD = 46
_NUMBER = 42
"""Sizes of type: one unit is about one pixel where the screen is 1280 wide and 720 high."""
_ROW_COUNTS = (16, 8, 12, 6, 4)
"""Counts to a row; the first that holds every word is taken."""
_ROWS = 2
"""Rows to a screen."""
_BOX, _LIFT = 90, {"low": 0, "middle": 14, "high": 28}
_ROW = _BOX + _LIFT["high"] + 54
_MARKS = 2.1
"""How much larger the small strokes are than on a page."""

Placed = tuple[Fraction, Action]


def wall_strips(
    title: str, actions: Sequence[Action], lasts: Sequence[str] | None = None
) -> tuple[Figure, ...]:
    """The strip of `actions` over as many screens as it needs.

    `lasts` says how long each action lasts where nobody counts; then there are no numbers.
    """
    counts = _counts_to_a_row(actions)
    rows = _rows(actions, counts)
    screens = [rows[n : n + _ROWS] for n in range(0, len(rows), _ROWS)]
    told = [action_in_words(action, long) for action, long in zip_longest(actions, lasts or ())]
    found, first = [], 0
    for screen in screens:
        end = first + sum(len(row) for row in screen)
        named = _named(title, screen) if len(screens) > 1 and lasts is None else title
        drawn = _drawn(named, screen, counts, lasts is None)
        found.append(Figure(named, drawn, tuple(told[first:end])))
        first = end
    return tuple(found)


def _counts_to_a_row(actions: Sequence[Action]) -> int:
    longest = max((action.counts for action in actions), default=Fraction(1))
    total = sum((action.counts for action in actions), Fraction(0))
    for counts in _ROW_COUNTS:
        per = WIDTH / counts
        room = [float(action.counts) * per - 24 for action in actions]
        words = [text_width(action_label(action), _WORD, bold=True) for action in actions]
        if longest <= counts and all(w <= r for w, r in zip(words, room, strict=True)):
            return max(1, min(counts, -int(-total // 1)))
    return max(8, -int(-longest // 1))


def _rows(actions: Sequence[Action], counts: int) -> list[list[Placed]]:
    """The actions by row, each with the count of the whole before which it starts."""
    rows: list[list[Placed]] = [[]]
    at = first = Fraction(0)
    for action in actions:
        if rows[-1] and at + action.counts - first > counts:
            rows.append([])
            first = at
        rows[-1].append((at, action))
        at += action.counts
    return rows


def _named(title: str, rows: Sequence[Sequence[Placed]]) -> str:
    start, (at, action) = rows[0][0][0], rows[-1][-1]
    first, last = figures(start + 1), figures(at + action.counts)
    return _("{title}, counts {first} to {last}", title=title, first=first, last=last)


def _drawn(title: str, rows: Sequence[Sequence[Placed]], counts: int, counted: bool) -> str:
    per = WIDTH / counts
    kind = "wall-strip" if len(rows) == 1 else "wall-strip tall"
    pieces = [_row(row, n * _ROW, per, counted) for n, row in enumerate(rows)]
    return drawing(title, WIDTH, len(rows) * _ROW, *pieces, kind=kind)


def _row(row: Sequence[Placed], y: float, per: float, counted: bool) -> str:
    first = row[0][0]
    pieces = []
    for at, action in row:
        x = float(at - first) * per
        pieces.append(_box(action, x, y, per))
        if counted:
            numbers = (
                figures(at + 1) if action.counts <= 1 else f"{figures(at + 1)}–{_end(at, action)}"
            )
            middle = x + float(action.counts) * per / 2
            pieces.append(text(numbers, middle, y + _ROW - 14, _NUMBER, "middle", kind="quiet"))
    return el("g", *pieces)


def _end(at: Fraction, action: Action) -> str:
    return figures(Fraction(-int(-(at + action.counts) // 1)))


def _box(action: Action, x: float, y: float, per: float) -> str:
    width = float(action.counts) * per
    start, _to, end = (action.level or "middle").partition(" to ")
    floor = y + _LIFT["high"] + _BOX
    y1, y2 = floor - _LIFT[start], floor - _LIFT[end or start]
    x1, x2 = x + 4, x + width - 4
    still = action.kind in ("stillness", OPEN)
    shape = el(
        "path",
        d=f"M{num(x1)} {num(y1)}L{num(x2)} {num(y2)}V{num(y2 - _BOX)}L{num(x1)} {num(y1 - _BOX)}Z",
        class_="open-box" if still else "box",
        fill="none" if still else "currentColor",
        fill_opacity=0 if still else 0.1,
        stroke="currentColor",
        stroke_width=4,
        stroke_linejoin="round",
        **({"stroke_dasharray": "12 8"} if still else {}),
    )
    middle, centre = (x1 + x2) / 2, (y1 + y2) / 2 - _BOX / 2
    strokes = marks(action, 0, 0)
    word = text(
        action_label(action), middle, centre + (2 if strokes else 16), _WORD, "middle", True,
        squeeze=width - 16,
    )  # fmt: skip
    if strokes:
        place = f"translate({num(middle)} {num(centre + 27)}) scale({_MARKS})"
        strokes = el("g", strokes, transform=place)
    if action.kind == OPEN:
        word = el("g", word, opacity=FAINT) if action.theme else ""
    return el("g", shape, word, strokes, line(x1, floor + 6, x2, floor + 6, 2, kind="rule"))
