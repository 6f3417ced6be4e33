"""On how many sides of A4 a lesson is printed, with words of one size or another.

What the style sheet lesson.css lays out is worked out here from its own lengths, line by line, so
that an author is told without a browser. Lengths are in points.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import chain

from build_tools.views.diagrams.strip import WIDTH as DRAWN_WIDE
from build_tools.views.paper.columns import Piece, in_two_columns, left_over
from build_tools.views.paper.printed import (
    APART,
    PrintedLesson,
    PrintedStep,
    PrintedTalk,
    Runs,
)
from build_tools.views.paper.typeface import Run, lines, width

MOST_SIDES = 2
"""Sides of A4 that a lesson is printed on: one sheet; common practice, no source."""
_MM = 72 / 25.4
_HIGH = (297 - 15 - 18.5) * _MM
_WIDE = (210 - 20 - 17.5) * _MM
_GAP, _PICTURE_GAP, _PICTURE = 6 * _MM, 5 * _MM, 85 * _MM
_HALF = (_WIDE - _GAP) / 2
_BESIDE_PICTURE = _WIDE - _PICTURE - _PICTURE_GAP
PLAN = 84 * _MM
"""How wide a plan of the floor is: two stand side by side."""
PLAN_MARGIN = 0.2
"""Above and below plans, in sizes of the words."""
_LINE = 0.75
"""The line above a step, and above and below looking and talking."""
_SAID, _SAID_LEADING = 14.0, 1.15
_BEFORE_STEPS = 4
"""How many parts stand before the first step."""
_SAID_EDGE = 3.0
"""The line down the edge of what is said."""
_HEADING = 1.2
"""The leading of headings."""


@dataclass(frozen=True, slots=True)
class Setting:
    """How words are set: their size, their leading, and what runs on to save room."""

    points: float
    leading: float
    tight: bool = False
    """Whether tasks and questions run on, and the kind of step is left out."""
    rows: bool = False
    """Whether where to start next time has lines of its own."""
    said_leading: float = _SAID_LEADING


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
    high = _LINE + 0.2 * setting.points + _high(turn, _WIDE, setting)
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
    return (
        written * setting.points * setting.leading
        + PLAN * max(shapes)
        + 2 * PLAN_MARGIN * setting.points
    )


def told_height(runs: Runs, setting: Setting) -> float:
    """How high a step's paragraph of moves is."""
    return _high(runs, _WIDE, setting) if runs else 0.0


def sides(parts: Sequence[Part], stretch: float = 1.0) -> int:
    """How many sides the parts of a lesson fill, one after another.

    `stretch` lengthens every part, to see how much a small error would change.
    """
    side = _HIGH / stretch
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
    yield _first(printed, setting)
    sections = [_paragraphs(section, setting) for section in printed.before]
    yield 0.2 * size
    yield _flow(chain.from_iterable(sections), 2)
    yield 0.4 * size
    for step in printed.steps:
        yield _step(step, setting)
    if printed.talk:
        yield _talk(printed.talk, setting)
    yield 0.2 * size
    yield _flow(_tail(printed, setting), 2)
    yield 0.3 * size
    yield _flow((_paragraph((Run(printed.deference),), _WIDE, setting),), 1)


def _paragraph(runs: Runs, wide: float, setting: Setting, together: bool = False) -> Piece:
    return Piece(lines(runs, wide, setting.points), setting.points * setting.leading, 0.0, together)


def _high(runs: Runs, wide: float, setting: Setting, indent: float = 0.0) -> float:
    count = lines(runs, wide, setting.points, indent)
    return count * setting.points * setting.leading


def _first(printed: PrintedLesson, setting: Setting) -> float:
    """The title, the drawing, what to get and the lesson in short."""
    size = setting.points
    title = lines((Run(printed.title, bold=True),), _WIDE, 1.5 * size) * 1.5 * size * _HEADING
    larger = 1.0 if setting.tight else 1.1
    lead = lines((Run(printed.lead),), _BESIDE_PICTURE, larger * size) * larger * size * 1.25
    facts = _high(printed.facts, _BESIDE_PICTURE, setting)
    beside = 0.4 * size + lead + 0.4 * size + facts
    caption = _high((Run(printed.caption),), _PICTURE, setting)
    picture = caption + _PICTURE * printed.picture.height / DRAWN_WIDE
    if printed.picture.rows > 1 and printed.run_in:
        beside += _kit(printed, _BESIDE_PICTURE, setting)
        return title + max(beside, picture) + _run_in(printed, setting)
    if printed.picture.rows > 1:
        beside += _short(printed, _BESIDE_PICTURE, 1, setting)
        return title + max(beside, picture + _kit(printed, _PICTURE, setting))
    short = _run_in(printed, setting) if printed.run_in else _short(printed, _HALF, 2, setting)
    beside += _kit(printed, _BESIDE_PICTURE, setting)
    return title + max(beside, picture) + short


def _kit(printed: PrintedLesson, wide: float, setting: Setting) -> float:
    """What to get: a box before each thing, as many things to a line as there is room for."""
    size = setting.points
    line = size * setting.leading
    space, box, gap = width("n", False, size) / 2, 3 * _MM + 1.5 * _MM, 4 * _MM
    high, at = line, width("What to get:", True, size) + space
    for thing in printed.collect:
        long = box + width(thing, False, size) + gap
        if at + long > wide:
            high, at = high + line, 0.0
        if long > wide:
            more = lines((Run(thing),), wide - gap, size, box) - 1
            high, at = high + more * line, wide
        else:
            at += long + space
    return high


def _short(printed: PrintedLesson, wide: float, columns: int, setting: Setting) -> float:
    """The lesson in short, each line beside its minutes."""
    size = setting.points
    pieces = [
        Piece(lines((Run(does),), wide - 4.5 * size, size), size * setting.leading, 0.0, True)
        for _, does in printed.short
    ]
    return 0.6 * size + _flow_high(pieces, columns)


def _run_in(printed: PrintedLesson, setting: Setting) -> float:
    """The lesson in short on two lines or more, one sitting after the other."""
    return 0.6 * setting.points + _high(printed.run_in, _WIDE, setting)


def _paragraphs(section: Sequence[Runs], setting: Setting) -> list[Piece]:
    """The paragraphs of a section in half the width."""
    found = [_paragraph(section[0], _HALF, setting)]
    for runs in section[1:]:
        piece = _paragraph(runs, _HALF, setting)
        found.append(Piece(piece.lines, piece.leading, 0.1 * setting.points))
    return found


def _step(step: PrintedStep, setting: Setting) -> float:
    size, points = setting.points, setting.points * setting.leading
    head = (step.title._replace(size=1.2), *(() if setting.tight else (step.phase,)), step.how)
    indent = width(step.time, True, size) + 4 * _MM
    high = _LINE + 0.4 * size
    high += lines(head[:1], _WIDE, size, indent) * (1.2 * _HEADING * size - points)
    if step.say:
        say = (Run("Say", bold=True, size=size / _SAID, gap=0.15), Run(step.say, bold=True))
        count = lines(say, _WIDE - 0.5 * size - _SAID_EDGE, _SAID)
        high += count * _SAID * setting.said_leading + 0.2 * size
    high += told_height(step.told, setting)
    if setting.tight:
        body = (*step.task, *step.rest)
        if not step.say:
            return high + _high((*head, *body), _WIDE, setting, indent)
        return high + _high(head, _WIDE, setting, indent) + _high(body, _WIDE, setting)
    high += _high(head, _WIDE, setting, indent) + _high(step.task, _WIDE - APART * size, setting)
    return high + (_high(step.rest, _WIDE, setting) if step.rest else 0.0)


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
    return 2 * _LINE + 0.4 * size + own + sum(_high(one, _WIDE, setting) for one in runs if one)


def _tail(printed: PrintedLesson, setting: Setting) -> Iterator[Piece]:
    size = setting.points
    yield _paragraph(printed.not_dancing, _HALF, setting)
    yield Piece(1, size * _HEADING, 0.6 * size, together=True)
    for n, runs in enumerate(printed.trouble):
        piece = _paragraph(runs, _HALF, setting, together=True)
        yield Piece(piece.lines, piece.leading, 0.1 * size if n == 0 else 0.0, together=True)
    for runs in (printed.change, printed.words):
        if runs:
            yield _paragraph(runs, _HALF, setting)
