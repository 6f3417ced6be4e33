"""What helps a teacher with a step beside its own words, the same on the page and the card."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _, ngettext
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.script import ScriptPiece, pieces_of
from build_tools.views.lesson.groups_told import left_over_in_words, watching_in_words
from build_tools.views.lesson.move_meanings import meant
from build_tools.views.lesson.moves_met import MetBefore, MoveMet, StepMoves, TodaysMoves
from build_tools.views.lesson.parts_told import PartLines, parts_again, parts_made
from build_tools.views.lesson.running_minutes import run_in_words
from build_tools.views.lesson.sitting_or_wheels import SeatedMove as SeatedWay
from build_tools.views.lesson.sitting_or_wheels import SeatedWays, all_seated_ways
from build_tools.views.words.choices_said import chosen_in_step
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital


@dataclass(frozen=True, slots=True)
class MoveTold:
    """A move and what it means."""

    word: str
    """The pupils' word."""
    means: str
    """What the body does, in plain words."""
    feel: str | None
    """How it feels: slow and smooth. None where the meaning says it."""


@dataclass(frozen=True, slots=True)
class PartTold:
    """A section of the dance: who dances what, when; or how pupils get on, or how it ends."""

    heading: str
    """Part, its letter and name; or which two parts, or that it ends."""
    lines: tuple[str, ...]
    """What is danced on which counts, in order, and its sound; or how."""


@dataclass(frozen=True, slots=True)
class SeatedMove:
    """A move sitting and on wheels."""

    word: str
    """The pupils' word."""
    chair: str
    """What it is on a chair; in a wheelchair too, where nothing is said of that."""
    wheels: str | None
    """What it is in a wheelchair, where that differs."""


@dataclass(frozen=True, slots=True)
class SeatedView:
    """Ways for who sits or uses a wheelchair."""

    moves: tuple[SeatedMove, ...]
    """Move by move."""
    lines: tuple[str, ...]
    """What holds for the whole step."""


@dataclass(frozen=True, slots=True)
class StepHelp:
    """What helps with one step."""

    moves: tuple[MoveTold, ...]
    """The moves that it makes, each with what it means."""
    before: str | None
    """Which of its moves an earlier step told, and which step."""
    again: tuple[MoveTold, ...]
    """Moves of earlier lessons, in the first step that dances them."""
    parts: tuple[PartTold, ...]
    """The sections that it makes: who dances what, when."""
    parts_again: tuple[PartTold, ...]
    """Sections of earlier lessons, in the first step that dances them."""
    notes: Markup
    """The author's notes about it."""
    run: tuple[ScriptPiece, ...]
    """How to run its minutes; those to try in are a piece that follows the step's. Empty where its
    task tells all there is."""
    choose: tuple[str, ...]
    """What is chosen in it, with all there is to choose from."""
    left_over: str | None
    """What a pupil who is left over does."""
    watching: str | None
    """Who watches whom."""
    seated: SeatedView | None
    """Ways for who sits or uses a wheelchair."""


def step_helps(unit: Unit, lesson: Lesson, today: TodaysMoves) -> tuple[StepHelp, ...]:
    """The help of every step of a lesson."""
    seated = all_seated_ways(unit, lesson.steps, today.steps)
    return tuple(
        _help(unit, lesson, index, moves, ways)
        for index, (moves, ways) in enumerate(zip(today.steps, seated, strict=True))
    )


def _help(unit: Unit, lesson: Lesson, index: int, moves: StepMoves, ways: SeatedWays) -> StepHelp:
    step = lesson.steps[index]
    return StepHelp(
        moves=_moves(moves.made),
        before=told_before(moves.before),
        again=_moves(moves.again),
        parts=_parts(parts_made(unit, lesson, index, moves.parts)),
        parts_again=_parts(parts_again(unit.dance, moves.parts_again)),
        notes=notes_html("\n\n".join(moves.helps), 4),
        run=pieces_of(run_in_words(unit.dance, lesson, index, moves.helps) or ""),
        choose=chosen_in_step(unit.dance, step),
        left_over=left_over_in_words(unit, lesson, index),
        watching=watching_in_words(lesson, step),
        seated=_seated(ways) if ways.any else None,
    )


def _moves(met: tuple[MoveMet, ...]) -> tuple[MoveTold, ...]:
    found = (meant(one) for one in met)
    return tuple(MoveTold(one.word, one.means, one.feel) for one in found)


def told_before(before: tuple[MetBefore, ...]) -> str | None:
    """Which moves an earlier step told: Tight and burst are as in step 4."""
    if not before:
        return None
    words = listed([one.word for one in before])
    steps = listed([str(n) for n in dict.fromkeys(one.step for one in before)])
    return ngettext(
        "{moves} is told in step {steps}.",
        "{moves} are told in step {steps}.",
        len(before),
        moves=capital(words),
        steps=steps,
    )


def _parts(parts: Iterable[PartLines]) -> tuple[PartTold, ...]:
    return tuple(PartTold(part.heading, part.lines) for part in parts)


def _seated(ways: SeatedWays) -> SeatedView:
    return SeatedView(tuple(map(_seated_move, ways.moves)), ways.lines)


def _seated_move(one: SeatedWay) -> SeatedMove:
    """Both ways, or the one for both; what is said of a chair alone says so."""
    if not one.wheels:
        return SeatedMove(one.word, _("Chair: {way}", way=one.chair), None)
    return SeatedMove(one.word, one.chair, one.wheels if one.wheels != one.chair else None)
