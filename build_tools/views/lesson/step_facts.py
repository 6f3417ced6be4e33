"""What a page tells its scripts of each step: minutes, groups, what is shown, what can wait."""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.paths.group_sizes import groups_of
from build_tools.views.dance.parts_named import letters_in, motifs_in
from build_tools.views.lesson.class_groups import GROUP_SIZES, made_before
from build_tools.views.lesson.groups_told import stood_in
from build_tools.views.lesson.halves_said import Halves, halves_said
from build_tools.views.lesson.longest_talk import is_sat_through, longest_talk
from build_tools.views.lesson.showing import Showing, showing

_TRAVELLING = re.compile(
    r"\b(?:walk|run|skip|side-step|gallop|travel|step sideways|tiptoe)(?:s|ping|ning|ing)?\b",
    re.IGNORECASE,
)

_OF_GROUPS = ("pairs", "small groups")
"""Formations in which each group has its own place."""


@dataclass(frozen=True, slots=True)
class StepFacts:
    """One step. `number` counts from 1; `minutes` and `least` are whole minutes."""

    number: int
    minutes: int
    """How long the author plans it."""
    least: int
    """The fewest minutes the author says it can be done in, without getting into groups."""
    phase: str
    grouping: str
    sits: int | None
    """The most minutes pupils can sit in a row, where they sit in it; None where they move."""
    showing: Showing | None
    """How it shows to a class of the usual size; None where it shows nothing that is timed."""
    can_wait: bool
    """Whether the author says it may be left out when time is short."""
    travels: bool
    """Whether all travel in it at once, so that on a floor of too few metres it runs in turns."""
    parts: tuple[str, ...]
    """The sections it dances where they stand in the dance, by their letters."""
    stands: str | None = None
    """By which groups pupils stand on spots in it though each dances alone: pairs; None by none."""
    made_before: tuple[str, ...] = ()
    """The groupings that earlier lessons made, said of the first step: pairs, fours."""
    halves: Halves | None = None
    """What the halves are of a class that is divided in two, where the step's words say it."""


def travels(dance: Dance, step: Step) -> bool:
    """Whether the whole class travels at once: in what it makes or dances, or by its words.

    A step in which half the class watches has its turns already.
    """
    if step.grouping == "half class" or step.phase in ("look and talk", "show"):
        return False
    parts = (*step.makes, *step.develops, *step.joins, *step.dances)
    moves = [action for name in motifs_in(dance, parts) for action in actions_of(dance, name)]
    sections = [dance.sections[letter] for letter in letters_in(dance, parts)]
    if any("travel" in action.kinds for action in moves) or any(
        section.seconds is not None for section in sections
    ):
        return True
    return not parts and bool(_TRAVELLING.search(f"{step.does} {step.task}"))


def parts_placed(unit: Unit, lesson: Lesson, index: int) -> tuple[str, ...]:
    """The sections that a step dances in their own places, by their letters.

    Where groups have places of their own, pupils stand anywhere until they are in such groups, and
    where each works alone.
    """
    step, dance = lesson.steps[index], unit.dance
    named = (*step.makes, *step.joins, *step.dances, *step.shows, *_made_at_home(dance, step))
    apart = step.grouping == "alone"
    return tuple(
        letter
        for letter in letters_in(dance, named)
        if dance.sections[letter].start.formation not in _OF_GROUPS
        or not (apart or _not_yet(unit, lesson, index, groups_of(dance.sections[letter]).size))
    )


def stands_by(lesson: Lesson, index: int) -> str | None:
    """By which groups pupils stand on spots in a step of which each dances alone.

    It sends them to them, or it names the spots to which an earlier step sent them.
    """
    step = lesson.steps[index]
    if step.grouping not in ("alone", "whole class") or step.phase == "cool-down":
        return None
    sent = stood_in(step)
    if sent:
        return sent
    if not _HOME.search(" ".join(filter(None, (step.say, step.task, step.you, step.place)))):
        return None
    return next(filter(None, map(stood_in, reversed(lesson.steps[:index]))), None)


_HOME = re.compile(r"\b(?:home|spots?|marks?)\b", re.IGNORECASE)


def _made_at_home(dance: Dance, step: Step) -> tuple[str, ...]:
    """The sections whose moves a step makes, where pupils stand on their own spots for it."""
    made = {*step.makes, *step.develops}
    if not made or not _HOME.search(step.place or ""):
        return ()
    return tuple(
        letter
        for letter, section in dance.sections.items()
        if any(made.intersection(passage.what) for passage in section.danced)
    )


def _not_yet(unit: Unit, lesson: Lesson, index: int, size: int) -> bool:
    """Whether groups of that size are made in a later step of the unit."""
    made = [
        (one.number, n)
        for one in unit.lessons
        for n, step in enumerate(one.steps)
        if GROUP_SIZES.get(step.grouping) == size
    ]
    return size > 1 and bool(made) and min(made) > (lesson.number, index)


def step_facts(unit: Unit, lesson: Lesson) -> tuple[StepFacts, ...]:
    """The facts of every step of the lesson, in its order."""
    most = longest_talk(unit, lesson)
    return tuple(
        StepFacts(
            number=index + 1,
            minutes=step.minutes,
            least=step.least,
            phase=step.phase,
            grouping=step.grouping,
            sits=most if is_sat_through(step) else None,
            showing=showing(unit, lesson, index),
            can_wait=step.can_wait,
            travels=travels(unit.dance, step),
            parts=parts_placed(unit, lesson, index),
            stands=stands_by(lesson, index),
            made_before=() if index else made_before(unit, lesson),
            halves=halves_said(step),
        )
        for index, step in enumerate(lesson.steps)
    )
