"""On how many sides of A4 a lesson is printed, with words of one size or another.

What the style sheet lesson.css lays out is worked out here from its own lengths, line by line, so
that an author is told without a browser. Lengths are in points.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import chain

from build_tools.views.paper.columns import Piece, in_two_columns, left_over
from build_tools.views.paper.printed import (
    APART,
    PrintedLesson,
    PrintedStep,
    PrintedTalk,
    Runs,
)
from build_tools.views.paper.sheet import HALF, HEADING, HIGH, MM, WIDE, Setting, words_high
from build_tools.views.paper.top_of_lesson import is_tall, top_high
from build_tools.views.paper.typeface import Run, lines, width

MOST_SIDES = 2
"""Sides of A4 that a lesson is printed on: one sheet; common practice, no source."""
PLAN = 84 * MM
"""How wide a plan of the floor is: two stand side by side."""
PLAN_MARGIN = 0.2
"""Above and below plans, in sizes of the words."""
_LINE = 0.75
"""The line above a step, and above and below looking and talking."""
_SAID = 14.0
_BEFORE_STEPS = 4
"""How many parts stand before the first step."""
_SAID_EDGE = 3.0
"""The line down the edge of what is said."""


@dataclass(frozen=True, slots=True)
class Flow:
    """Paragraphs that may go on over the end of a side, in one column or two."""

    pieces: tuple[Piece, ...]
    columns: int
    high: float
    """How high it is where it need not be broken."""


Part = float | Flow
"""The height of what stays together, or paragraphs."""


def laid_out(printed: PrintedLesson, setting: Setting) -> tuple[Part, ...]:
    """Each part in order: its height where it stays together, else its paragraphs."""
    return tuple(_parts(printed, setting))


def with_turn(
    parts: tuple[Part, ...], turn: Runs, setting: Setting, after: int
) -> tuple[Part, ...]:
    """The same where after so many steps one sitting turns to the next, in the words `turn`."""
    place = _BEFORE_STEPS + after
    high = _LINE + 0.2 * setting.points + words_high(turn, WIDE, setting)
    return (*parts[:place], high, *parts[place:])


def with_told(parts: Sequence[Part], heights: Sequence[float]) -> tuple[Part, ...]:
    """The same with a paragraph more in each step, so high; 0 where it has none."""
    found = list(parts)
    for place, high in enumerate(heights, start=_BEFORE_STEPS):
        part = found[place]
        assert isinstance(part, float)
        found[place] = part + high
    return tuple(found)


def with_plans(parts: Sequence[Part], high: float) -> tuple[Part, ...]:
    """The same with the plans of the floor before the steps, so high."""
    gap = parts[_BEFORE_STEPS - 1]
    assert isinstance(gap, float)
    return (*parts[: _BEFORE_STEPS - 1], gap + high, *parts[_BEFORE_STEPS:])


def plans_height(titles: Sequence[str], shapes: Sequence[float], setting: Setting) -> float:
    """How high plans of the floor are, two side by side; `shapes` are their heights by width."""
    if not shapes:
        return 0.0
    written = max(lines((Run(title),), PLAN, setting.points) for title in titles)
    return written * setting.line + PLAN * max(shapes) + 2 * PLAN_MARGIN * setting.points


def told_height(runs: Runs, setting: Setting) -> float:
    """How high a step's paragraph of moves is."""
    return words_high(runs, WIDE, setting) if runs else 0.0


def sides(parts: Sequence[Part], stretch: float = 1.0) -> int:
    """How many sides the parts of a lesson fill, one after another.

    `stretch` lengthens every part, to see how much a small error would change.
    """
    side = HIGH / stretch
    full, used = 0, 0.0
    for part in parts:
        if isinstance(part, float):
            if used + part > side and used:
                full, used = full + 1, 0.0
            used += part
            continue
        high, rest = part.high, part.pieces
        while used + high > side:
            left = left_over(rest, part.columns, side - used)
            if not used and len(left) == len(rest) and left[0] == rest[0]:
                break
            full, used, rest = full + 1, 0.0, tuple(left)
            high = _flow_high(rest, part.columns)
        used += high
    return full + (used > 0)


def _flow(pieces: Iterable[Piece], columns: int) -> Flow:
    found = tuple(pieces)
    return Flow(found, columns, _flow_high(found, columns))


def _flow_high(pieces: Sequence[Piece], columns: int) -> float:
    return in_two_columns(pieces) if columns > 1 else sum(piece.high for piece in pieces)


def _parts(printed: PrintedLesson, setting: Setting) -> Iterator[Part]:
    size = setting.points
    yield top_high(printed, setting)
    below = () if is_tall(printed) else printed.before
    sections = [_paragraphs(section, setting) for section in below]
    yield 0.2 * size if below else 0.0
    yield _flow(chain.from_iterable(sections), 2)
    yield 0.4 * size
    for step in printed.steps:
        yield _step(step, setting)
    if printed.talk:
        yield _talk(printed.talk, setting)
    yield 0.2 * size
    yield _flow(_tail(printed, setting), 2)
    yield 0.3 * size
    yield _flow((_paragraph((Run(printed.deference),), WIDE, setting),), 1)


def _paragraph(runs: Runs, wide: float, setting: Setting, together: bool = False) -> Piece:
    return Piece(lines(runs, wide, setting.points), setting.line, 0.0, together)


def _paragraphs(section: Sequence[Runs], setting: Setting) -> list[Piece]:
    """The paragraphs of a section in half the width."""
    found = [_paragraph(section[0], HALF, setting)]
    for runs in section[1:]:
        piece = _paragraph(runs, HALF, setting)
        found.append(Piece(piece.lines, piece.leading, 0.1 * setting.points))
    return found


def _step(step: PrintedStep, setting: Setting) -> float:
    size, points = setting.points, setting.line
    head = (step.title._replace(size=1.2), *(() if setting.tight else (step.phase,)), step.how)
    indent = width(step.time, True, size) + 4 * MM
    high = _LINE + 0.4 * size
    high += lines(head[:1], WIDE, size, indent) * (1.2 * HEADING * size - points)
    if step.say:
        say = (Run("Say", bold=True, size=size / _SAID, gap=0.15), Run(step.say, bold=True))
        count = lines(say, WIDE - 0.5 * size - _SAID_EDGE, _SAID)
        high += count * _SAID * setting.said_leading + 0.2 * size
    high += told_height(step.told, setting)
    if setting.tight:
        body = (*step.task, *step.rest)
        if not step.say:
            return high + words_high((*head, *body), WIDE, setting, indent)
        return high + words_high(head, WIDE, setting, indent) + words_high(body, WIDE, setting)
    high += words_high(head, WIDE, setting, indent) + words_high(
        step.task, WIDE - APART * size, setting
    )
    return high + (words_high(step.rest, WIDE, setting) if step.rest else 0.0)


def _talk(talk: PrintedTalk, setting: Setting) -> float:
    size = setting.points
    after = (talk.heading, *chain.from_iterable(talk.rows)) if talk.heading else ()
    if setting.tight:
        runs: tuple[Runs, ...] = (talk.opening + tuple(chain.from_iterable(talk.asks)) + after,)
    elif setting.rows and talk.heading:
        runs = (talk.opening, *talk.asks, (talk.heading,), *talk.rows)
    else:
        runs = (talk.opening, *talk.asks, after)
    own = 0.4 * size if setting.rows and talk.heading else 0.0
    return 2 * _LINE + 0.4 * size + own + sum(words_high(one, WIDE, setting) for one in runs if one)


def _tail(printed: PrintedLesson, setting: Setting) -> Iterator[Piece]:
    size = setting.points
    yield _paragraph(printed.not_dancing, HALF, setting)
    yield Piece(1, size * HEADING, 0.6 * size, together=True)
    for n, runs in enumerate(printed.trouble):
        piece = _paragraph(runs, HALF, setting, together=True)
        yield Piece(piece.lines, piece.leading, 0.1 * size if n == 0 else 0.0, together=True)
    for runs in (printed.change, printed.words):
        if runs:
            yield _paragraph(runs, HALF, setting)
