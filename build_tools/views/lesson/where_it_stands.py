"""Where pupils are in a step of a lesson: on the spots of the dance, or anywhere."""

from __future__ import annotations

import re

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.paths.group_sizes import groups_of
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.groups_told import stood_in

_SPOTS = re.compile(r"\b(?:home|(?<!on the )(?<!on one )spots?|marks?)\b", re.IGNORECASE)
"""Where somebody stands in the dance; on the spot is wherever one is."""
_OF_GROUPS = ("pairs", "small groups")
"""Formations in which each group has its own place."""
_STAYING = ("make", "develop", "join", "rehearse", "show", "look and talk")
"""Phases in which a class goes on where it is if nothing else is said."""
_SEEN = ("show", "look and talk")


def on_spots(lesson: Lesson, index: int) -> bool:
    """Whether a step sends pupils to the spots of the dance, or leaves them there.

    They stay for what comes next in the same groups, until words send them elsewhere; who watches
    whom on those spots may be told anew.
    """
    step = lesson.steps[index]
    if _SPOTS.search(" ".join(filter(None, (step.place, step.into)))):
        return True
    told = step.place or (step.into and step.phase not in _SEEN)
    if told or not index or step.phase not in _STAYING or not _is_danced(step):
        return False
    return lesson.steps[index - 1].grouping == step.grouping and on_spots(lesson, index - 1)


def parts_placed(unit: Unit, lesson: Lesson, index: int) -> tuple[str, ...]:
    """The sections that a step dances in their own places, by their letters.

    Where groups have places of their own, pupils stand anywhere until they are in such groups, and
    where each works alone. Who tries something out on the spots of the dance is in the sections
    that the next step dances there.
    """
    step, dance = lesson.steps[index], unit.dance
    named = letters_in(dance, (*step.makes, *step.joins, *step.dances, *step.shows))
    if on_spots(lesson, index):
        named = named or _with_its_moves(dance, step)
        if not named and index + 1 < len(lesson.steps):
            return parts_placed(unit, lesson, index + 1)
    apart = step.grouping == "alone"
    return tuple(
        letter
        for letter in named
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
    if not _SPOTS.search(" ".join(filter(None, (step.say, step.task, step.you, step.place)))):
        return None
    return next(filter(None, map(stood_in, reversed(lesson.steps[:index]))), None)


def _is_danced(step: Step) -> bool:
    """Whether something of the dance is made, danced or shown in it."""
    return bool(step.makes or step.develops or step.joins or step.dances or step.shows)


def _with_its_moves(dance: Dance, step: Step) -> tuple[str, ...]:
    """The sections that hold a motif or a development that the step makes, dances or shows."""
    moves = {*step.makes, *step.develops, *step.dances, *step.shows}
    return tuple(
        letter
        for letter in dict.fromkeys(dance.form)
        if any(moves.intersection(passage.what) for passage in dance.sections[letter].danced)
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
