"""How the moves of a strip stand in rows, where words and bodies have room."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from build_tools.model.dance import Action
from build_tools.views.dance.moves_before import shown
from build_tools.views.diagrams.svg import TEXT, text_width
from build_tools.views.words.plain_words import action_label

WIDTH = 360
EDGE = 2.0
"""Room at either end."""
_ROW_COUNTS = (8, 12, 16, 4, 2)
"""Counts to a row, the best first; a row that holds every word is taken."""
_MOST_BODIES = 6
"""In a row of more counts than the best: more would be drawn too small."""

Row = list[tuple[Fraction, int]]
"""Where each action of a row starts in it, and its place in the whole."""


def per_count(counts: int) -> float:
    """How wide a count is where so many stand in a row."""
    return (WIDTH - 2 * EDGE) / counts


def counts_to_a_row(actions: Sequence[Action]) -> int:
    """So many that every word stands in its bar, in as few rows as bodies have room in."""
    longest = max((action.counts for action in actions), default=Fraction(1))
    words = [(text_width(action_label(a), TEXT, bold=True), float(a.counts)) for a in actions]
    fitting = [
        counts
        for counts in _ROW_COUNTS
        if longest <= counts and all(wide <= long * per_count(counts) - 2 for wide, long in words)
    ]
    if not fitting:
        return max(8, -int(-longest // 1))
    rows = {counts: rows_of(actions, counts) for counts in fitting}
    roomy = [
        counts
        for counts in fitting
        if counts == fitting[0]
        or all(_moving(row, actions) <= _MOST_BODIES for row in rows[counts])
    ]
    return min(roomy, key=lambda counts: len(rows[counts]))


def _moving(row: Row, actions: Sequence[Action]) -> int:
    return sum(shown(actions[n]) is not None for _, n in row)


def rows_of(actions: Sequence[Action], counts: int) -> list[Row]:
    """The actions row by row, so many counts to a row."""
    rows: list[Row] = [[]]
    used = Fraction(0)
    for place, action in enumerate(actions):
        after = used + action.counts
        if rows[-1] and after > counts:
            rows.append([])
            used, after = Fraction(0), action.counts
        rows[-1].append((used, place))
        used = after
    return rows
