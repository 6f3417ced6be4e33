"""What each step tells on paper of its moves, as much as there is room for."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import chain

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.lesson.groups_told import left_over_in_words, watching_in_words
from build_tools.views.lesson.move_meanings import MoveMeant, meant
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.moves_met import MoveMet, StepMoves
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.parts_told import PartLines, parts_again, parts_made
from build_tools.views.paper.printed import Runs, labelled, row

MOVES, GROUPS, PARTS, MOVES_AGAIN, PARTS_AGAIN = range(1, 6)
"""Levels of what is told besides, the first that there is room for first: what new moves mean,
who watches whom and what one left over does, who dances what, and the same of what is old."""
MOST_TOLD = PARTS_AGAIN
_ORDER = (GROUPS, MOVES, PARTS, MOVES_AGAIN, PARTS_AGAIN)
"""In which they stand in a step."""


@once_a_lesson
def told_at_each_level(unit: Unit, lesson: Lesson) -> tuple[tuple[Runs, ...], ...]:
    """What is told besides in each step on paper, a paragraph, for every level and those below it.

    Level 0 tells nothing.
    """
    today = todays_moves(unit, lesson)
    steps = [_told(unit, lesson, index, one) for index, one in enumerate(today.steps)]
    return tuple(
        tuple(tuple(chain.from_iterable(told[n] for n in _ORDER if n <= level)) for told in steps)
        for level in range(MOST_TOLD + 1)
    )


def _told(unit: Unit, lesson: Lesson, index: int, moves: StepMoves) -> dict[int, Runs]:
    """What a step tells of each level."""
    watching = watching_in_words(lesson, lesson.steps[index])
    left_over = left_over_in_words(unit, lesson, index)
    return {
        MOVES: _moves(moves.made),
        GROUPS: (
            *(labelled(_("Who watches"), watching) if watching else ()),
            *(labelled(_("Left over"), left_over) if left_over else ()),
        ),
        PARTS: _parts(parts_made(unit, lesson, index, moves.parts)),
        MOVES_AGAIN: _moves(moves.again),
        PARTS_AGAIN: _parts(parts_again(unit.dance, moves.parts_again)),
    }


def _moves(met: Iterable[MoveMet]) -> Runs:
    return tuple(chain.from_iterable(row(*_move_row(meant(one))) for one in met))


def _parts(parts: Iterable[PartLines]) -> Runs:
    rows = ((part.heading, "; ".join(part.lines)) for part in parts)
    return tuple(chain.from_iterable(row(*one) for one in rows))


def _move_row(move: MoveMeant) -> tuple[str, str]:
    return move.word, " ".join(filter(None, (move.means, move.feel)))
