"""How large the words of a lesson can be so that it prints on two sides of A4.

Twelve points where they fit, never under eleven. What each new move means is told in its step;
where there is still room, who dances what when, and the moves danced again. A lesson that does not
even fit in eleven points is not squeezed: it is printed in twelve, well apart, on as many sides as
it needs.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache, partial
from itertools import chain

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.speaking import speaking
from build_tools.views.diagrams.standing_plan import plan_height
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.standing_in_steps import plans_of
from build_tools.views.lesson.teachers_part import teachers_parts
from build_tools.views.paper.printed import PrintedLesson, Runs, printed_words
from build_tools.views.paper.sheet import Setting
from build_tools.views.paper.sides import (
    MOST_SIDES,
    Part,
    laid_out,
    plans_height,
    sides,
    told_height,
    with_plans,
    with_told,
    with_turn,
)
from build_tools.views.paper.told_in_steps import MOST_TOLD, told_at_each_level
from build_tools.views.paper.two_sittings import (
    in_two_sittings,
    turn_of_sittings,
    turns_of_sittings,
)
from build_tools.views.paper.what_is_printed import ASIDE, picture_size, printed_lesson
from build_tools.views.reading.lesson_text import is_printed
from build_tools.views.words.marked_words import said_in
from build_tools.views.words.the_room import the_room
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
MOST_WORKED_OUT = 1000
"""Letters that what is worked out of the dance for a lesson's steps hardly ever has."""
_TWICE = frozenset({"say", "does"})
"""Kinds of text that take twice the room: printed larger, or in two places."""
_LETTERS_OF_A_STEP, _LETTERS_OF_A_DRAWING = 200, 2
"""For a step's lines that are not full, and for each unit of the height of what is drawn."""
STRETCHES = (1.0, 1.01, 1.02)
"""The browser lays out within two hundredths of what is worked out here."""
WITH_PLANS = (*STRETCHES, 1.05)
"""Plans of the floor are drawn where there is room to spare: they can stand among the notes too."""


@dataclass(frozen=True, slots=True)
class OnPaper:
    """How a lesson is printed: its size, and how much each step tells of its moves.

    `told` has a level of `told_at_each_level` for each step, 0 for nothing; `plans` says whether
    the floor is drawn before the steps; `said` has the steps, from 0, whose beat has its words;
    `aside` has what makes room for the moves and stands on the further side.
    """

    size: str
    told: tuple[int, ...]
    plans: bool = False
    said: frozenset[int] = frozenset()
    aside: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class TooLong:
    """A lesson that two sides cannot hold: the words it prints, and how many of them they hold."""

    words: int
    held: int


@once_a_lesson
def on_paper(unit: Unit, lesson: Lesson) -> OnPaper:
    """The size of the lesson's words on paper, and how much of its moves is told.

    What the new moves mean comes before large print: a lesson is set smaller so that it is told.
    The floor is drawn where there is room for both; else it is drawn on the side of notes.
    """
    # a rule asks too, in English; what is printed is in the unit's language
    with speaking(unit.language):
        return _on_paper(unit, lesson)


def _on_paper(unit: Unit, lesson: Lesson) -> OnPaper:
    printed = printed_lesson(unit, lesson)
    runs = told_at_each_level(unit, lesson)
    sizes = [size for size in SETTINGS if _holds(lesson, printed, size)]
    if not sizes and _surely_fits(unit, lesson):
        sizes = [LEAST]
    if not sizes:
        every = frozenset(range(len(lesson.steps)))
        drawn = bool(plans_of(unit, lesson))
        return OnPaper(MORE_SIDES, (MOST_TOLD,) * len(lesson.steps), drawn, every)
    found = {size: _told(printed, runs, SETTINGS[size]) for size in sizes}
    whole = (size for size in sizes if min(found[size], default=0) > 0)
    size = next(whole, sizes[-1])
    bare = _with_room_for_moves(unit, lesson, OnPaper(size, found[size]))
    beside = _told_beside_plans(unit, lesson, printed, runs, SETTINGS[size])
    return _with_words(unit, lesson, OnPaper(size, beside, plans=True) if beside else bare)


def _with_room_for_moves(unit: Unit, lesson: Lesson, full: OnPaper) -> OnPaper:
    """The same, or with what is read before the lesson aside where more steps tell their moves so.

    A move that nobody can look up in the hall is worse than a word card that is read at breakfast.
    """
    best, runs = full, told_at_each_level(unit, lesson)
    for aside in ASIDE:
        if min(best.told, default=1) > 0:
            break
        printed = printed_lesson(unit, lesson, aside=aside)
        told = _told(printed, runs, SETTINGS[full.size])
        if told.count(0) < best.told.count(0):
            best = OnPaper(full.size, told, aside=aside)
    return best


def _with_words(unit: Unit, lesson: Lesson, bare: OnPaper) -> OnPaper:
    """The same with the words of the beat, step by step, where two sides hold them too.

    They come after what the new moves mean, and before all else that is told.
    """
    best = bare
    runs = told_at_each_level(unit, lesson)
    for index, lines in enumerate(teachers_parts(unit, lesson, in_full=False)):
        if not any(said_in(one.words) for one in lines):
            continue
        said = best.said | {index}
        printed = printed_lesson(unit, lesson, said=said, aside=bare.aside)
        if not _holds(lesson, printed, bare.size):
            continue
        setting = SETTINGS[bare.size]
        told = (
            _told_beside_plans(unit, lesson, printed, runs, setting)
            if bare.plans
            else _told(printed, runs, setting)
        )
        if told and (min(told) > 0 or min(bare.told) == 0):
            best = OnPaper(bare.size, told, bare.plans, said, bare.aside)
    return best


def _told_beside_plans(
    unit: Unit,
    lesson: Lesson,
    printed: PrintedLesson,
    runs: Sequence[Sequence[Runs]],
    setting: Setting,
) -> tuple[int, ...]:
    """The level of each step where the floor is drawn, if new moves are told then; else nothing."""
    plans = plans_of(unit, lesson)
    if not plans:
        return ()
    shapes = [plan_height(unit, one.letter) for one in plans]
    high = plans_height([one.title for one in plans], shapes, setting)
    told = _told(printed, runs, setting, high)
    return told if min(told, default=0) > 0 else ()


def _told(
    printed: PrintedLesson,
    runs: Sequence[Sequence[Runs]],
    setting: Setting,
    plans_high: float = 0.0,
) -> tuple[int, ...]:
    """The level of each step: all steps reach one as far as there is room, then the next.

    Nothing at all where not even the lesson with its plans has room.
    """
    parts = with_plans(laid_out(printed, setting), plans_high)
    stretches = WITH_PLANS if plans_high else STRETCHES
    if plans_high and not _fits(parts, stretches=stretches):
        return ()
    heights = [[told_height(told, setting) for told in level] for level in runs]
    steps = range(len(printed.steps))
    levels = [0 for _ in steps]
    for level in range(1, len(runs)):
        for n in (n for n in steps if levels[n] == level - 1):
            levels[n] = level
            more = heights[level][n] > heights[level - 1][n]
            now = with_told(parts, [heights[levels[m]][m] for m in steps])
            if more and not _fits(now, stretches=stretches):
                levels[n] = level - 1
    return tuple(levels)


def too_long(unit: Unit, lesson: Lesson) -> TooLong | None:
    """What is too much for two sides, where `on_paper` gives it more; else None."""
    if _surely_fits(unit, lesson):
        return None
    printed = printed_lesson(unit, lesson)
    if any(_holds(lesson, printed, size) for size in reversed(SETTINGS)):
        return None
    holds = _holding(lesson, printed, LEAST)
    held = next(share for share in range(99, 0, -1) if holds(share / 100))
    words = printed_words(printed)
    return TooLong(words, words * held // 100)


def _surely_fits(unit: Unit, lesson: Lesson) -> bool:
    """Whether so little is written that it need not be laid out to know that two sides hold it."""
    left: float = SURELY_FITTING - _letters_of_words(unit, lesson)
    # a drawing and the teacher's part take longer to measure, and most lessons have words enough
    if left < 0 or (left := left - _letters_of_drawing(unit, lesson)) < 0:
        return False
    return left >= MOST_WORKED_OUT or left >= _letters_worked_out(unit, lesson)


def letters_of_room(unit: Unit, lesson: Lesson) -> float:
    """How much room the lesson takes, in letters, counted fast."""
    return (
        _letters_of_words(unit, lesson)
        + _letters_of_drawing(unit, lesson)
        + _letters_worked_out(unit, lesson)
    )


def _letters_of_words(unit: Unit, lesson: Lesson) -> int:
    written = sum(
        len(field.text) * (2 if field.kind in _TWICE else 1)
        for field in fields_of_lesson(unit, lesson)
        if is_printed(field)
    )
    written += len(the_room(unit.dance)) if unit.dance.sides else 0
    return written + _LETTERS_OF_A_STEP * len(lesson.steps)


def _letters_worked_out(unit: Unit, lesson: Lesson) -> int:
    """Of the beat, who starts when and the signs, over the lines that each step has room for."""
    told = chain.from_iterable(teachers_parts(unit, lesson, in_full=False))
    return sum(len(one.label) + len(one.on_paper(said=False)) for one in told)


def _letters_of_drawing(unit: Unit, lesson: Lesson) -> float:
    return picture_size(unit, lesson).height * _LETTERS_OF_A_DRAWING


def _holds(lesson: Lesson, printed: PrintedLesson, size: str) -> bool:
    """Whether two sides hold the lesson, in one sitting or two."""
    return _holding(lesson, printed, size)(1.0)


def _holding(lesson: Lesson, printed: PrintedLesson, size: str) -> Callable[[float], bool]:
    """Whether they would, in one sitting or two, with parts of such a share of their length."""
    parts = laid_out(printed, SETTINGS[size])
    if size != LEAST:
        return partial(_fits, parts)

    @cache
    def in_two() -> tuple[tuple[Part, ...], ...]:
        halves = laid_out(in_two_sittings(printed, lesson), TWO_SITTINGS)
        turn, turns = turn_of_sittings(lesson), turns_of_sittings(lesson)
        return tuple(with_turn(halves, turn, TWO_SITTINGS, after) for after in turns)

    def holds(share: float) -> bool:
        if not _fits(parts, share):
            return False
        well = sides(parts, share * WELL_WITHIN) <= MOST_SIDES
        return well or all(_fits(one, share) for one in in_two())

    return holds


def _fits(
    parts: Sequence[Part], share: float = 1.0, stretches: Sequence[float] = STRETCHES
) -> bool:
    return all(sides(parts, share * stretch) <= MOST_SIDES for stretch in stretches)
