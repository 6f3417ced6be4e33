"""How large the words of a lesson can be so that it prints on two sides of A4.

Twelve points where they fit, never under eleven. Where there is still room, the moves are told in
words too. A lesson that does not even fit in eleven points is not squeezed: it is printed in
twelve, well apart, on as many sides as it needs.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.paper.printed import PrintedLesson, printed_words
from build_tools.views.paper.printed_lesson import picture_size, printed_lesson, told_lists
from build_tools.views.paper.sides import MOST_SIDES, Part, Setting, laid_out, sides, with_turn
from build_tools.views.paper.two_sittings import (
    in_two_sittings,
    turn_of_sittings,
    turns_of_sittings,
)
from build_tools.views.reading.lesson_text import NOT_PRINTED
from build_tools.views.written.unit_text import fields_of_lesson

SETTINGS = {
    "12": Setting(12, 1.2, rows=True),
    "11.5": Setting(11.5, 1.2),
    "11": Setting(11, 1.17, tight=True),
}
"""As the style sheet lesson.css sets each, the largest first."""
LEAST = "11"
WELL_WITHIN = 1.08
"""Stretched so far and still on two sides, a lesson holds in two sittings too."""
TWO_SITTINGS = Setting(11, 1.1, tight=True, said_leading=1.1)
MORE_SIDES = "more"
"""The size of a lesson that is printed on more than two sides."""
SURELY_FITTING = 5800
"""Letters of room that two sides hold however they are laid out: in made lessons, some to spare."""
_TWICE = frozenset({"say", "does"})
"""Kinds of text that take twice the room: printed larger, or in two places."""
_LETTERS_OF_A_STEP, _LETTERS_OF_A_DRAWING = 200, 2
"""For a step's lines that are not full, and for each unit of the height of what is drawn."""
STRETCHES = (1.0, 1.01, 1.02)
"""The browser lays out within two hundredths of what is worked out here."""


@dataclass(frozen=True, slots=True)
class OnPaper:
    """How a lesson is printed: its size, and how many of its four lists of moves."""

    size: str
    told: int


@dataclass(frozen=True, slots=True)
class TooLong:
    """A lesson that two sides cannot hold: the words it prints, and how many of them they hold."""

    words: int
    held: int


def on_paper(unit: Unit, lesson: Lesson) -> OnPaper:
    """The size of the lesson's words on paper, and what is told besides."""
    printed, told = printed_lesson(unit, lesson), told_lists(unit, lesson)
    sizes = (size for size in SETTINGS if _holds(lesson, printed, size))
    size = next(sizes, LEAST if _surely_fits(unit, lesson) else MORE_SIDES)
    if size == MORE_SIDES:
        return OnPaper(size, len(told))
    setting, counts = SETTINGS[size], range(1, len(told) + 1)
    more = (count for count in counts if not _fits(laid_out(printed, setting, told[:count])))
    return OnPaper(size, next(more, len(told) + 1) - 1)


def too_long(unit: Unit, lesson: Lesson) -> TooLong | None:
    """What is too much for two sides, where `on_paper` gives it more; else None."""
    if _surely_fits(unit, lesson):
        return None
    printed = printed_lesson(unit, lesson)
    if any(_holds(lesson, printed, size) for size in reversed(SETTINGS)):
        return None
    held = next(share for share in range(99, 0, -1) if _holds(lesson, printed, LEAST, share / 100))
    words = printed_words(printed)
    return TooLong(words, words * held // 100)


def _surely_fits(unit: Unit, lesson: Lesson) -> bool:
    """Whether so little is written that it need not be laid out to know that two sides hold it."""
    return letters_of_room(unit, lesson) <= SURELY_FITTING


def letters_of_room(unit: Unit, lesson: Lesson) -> float:
    """How much room the lesson takes, in letters, counted fast."""
    written = sum(
        len(field.text) * (2 if field.kind in _TWICE else 1)
        for field in fields_of_lesson(unit, lesson)
        if field.kind not in NOT_PRINTED and field.path
    )
    drawn = picture_size(unit, lesson).height * _LETTERS_OF_A_DRAWING
    return written + drawn + _LETTERS_OF_A_STEP * len(lesson.steps)


def _holds(lesson: Lesson, printed: PrintedLesson, size: str, share: float = 1.0) -> bool:
    """Whether two sides hold the lesson, in one sitting or two, with parts of so much length."""
    parts = laid_out(printed, SETTINGS[size])
    if size != LEAST or not _fits(parts, share):
        return _fits(parts, share)
    if sides(parts, share * WELL_WITHIN) <= MOST_SIDES:
        return True
    in_two, turn = (
        laid_out(in_two_sittings(printed, lesson), TWO_SITTINGS),
        turn_of_sittings(lesson),
    )
    return all(
        _fits(with_turn(in_two, turn, TWO_SITTINGS, after), share)
        for after in turns_of_sittings(lesson)
    )


def _fits(parts: Sequence[Part], share: float = 1.0) -> bool:
    return all(sides(parts, share * stretch) <= MOST_SIDES for stretch in STRETCHES)
