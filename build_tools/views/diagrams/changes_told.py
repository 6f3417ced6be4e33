"""What is new in the moves of a strip, under their boxes: one label for all that share it.

A label is never cut. Over boxes too narrow for it, it goes on below its neighbours that have none,
and then as far down as it needs.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from build_tools.views.diagrams.svg import SMALL, el, num, text, text_width, wrapped

_WORD = 16
_LINES = 4
"""More than these are not nice: a label first takes what room there is beside it."""
_WIDER = 8.0
_LONGEST = 99

Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Told:
    """A label: the boxes that it is told of, from where to where, its lines and their middle."""

    over: tuple[Span, ...]
    lines: tuple[str, ...]
    middle: float
    room: float


def changes_told(boxes: Iterable[tuple[float, float, str]], row: Span) -> tuple[Told, ...]:
    """The labels of a row: each box from where to where, and what is new in it, "" for nothing."""
    labels: list[tuple[str, list[Span]]] = []
    plain = False
    for left, right, words in boxes:
        if not words:
            plain = True
            continue
        if labels and labels[-1][0] == words:
            over = labels[-1][1]
            if plain:
                over.append((left, right))
            else:
                over[-1] = (over[-1][0], right)
        else:
            labels.append((words, [(left, right)]))
        plain = False
    ends = [row[0], *(end for _, over in labels for end in (over[0][0], over[-1][1])), row[1]]
    return tuple(
        _placed(words, tuple(over), (ends[2 * n], ends[2 * n + 3]))
        for n, (words, over) in enumerate(labels)
    )


def _placed(words: str, over: tuple[Span, ...], free: Span) -> Told:
    """The label as narrow as its boxes if it can be, within what is free for it."""
    left, right = over[0][0], over[-1][1]
    room, most = right - left, free[1] - free[0]
    longest = max(text_width(word, SMALL, bold=True) for word in words.split())
    while room < most and (longest > room or len(_lines(words, room)) > _LINES):
        room = min(most, room + _WIDER)
    middle = min(max((left + right) / 2, free[0] + room / 2), free[1] - room / 2)
    return Told(over, tuple(_lines(words, room)), middle, room)


def _lines(words: str, room: float) -> list[str]:
    bold = text_width(words, SMALL, bold=True) / text_width(words, SMALL)
    return wrapped(words, room / bold, SMALL, _LONGEST)


def height_of(told: Sequence[Told]) -> float:
    """How high the labels of a row are."""
    return max((len(one.lines) for one in told), default=0) * _WORD + (6 if told else 0)


def drawn_changes(told: Sequence[Told], y: float) -> str:
    """A line under the boxes that a label tells of, in dots under those between, and its words."""
    pieces = []
    for one in told:
        way = "".join(f"M{num(left + 3)} {num(y)}H{num(right - 3)}" for left, right in one.over)
        pieces.append(el("path", class_="quiet", d=way, stroke="currentColor", stroke_width=1))
        between = "".join(
            f"M{num(first[1] + 1)} {num(y)}H{num(last[0] - 1)}"
            for first, last in zip(one.over, one.over[1:], strict=False)
        )
        if between:
            dots = el("path", d=between, stroke="currentColor", stroke_dasharray="1 4")
            pieces.append(el("g", dots, class_="quiet", stroke_width=1))
        pieces += [
            text(
                words, one.middle, y + SMALL + 3 + n * _WORD, SMALL, "middle", True,
                squeeze=one.room,
            )
            for n, words in enumerate(one.lines)
        ]  # fmt: skip
    return "".join(pieces)
