"""What a class is handed in a lesson: strips to put up or to follow in groups, and words for the
wall.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import EndPoint, Unit
from build_tools.movement.class_groups import USUAL_CLASS, groups
from build_tools.movement.development import actions_of
from build_tools.views.dance.parts_named import motifs_in
from build_tools.views.lesson.class_groups import class_groups, groupings_known
from build_tools.views.words.plain_words import action_label

_STRIPS = re.compile(r"\bstrips?\b", re.IGNORECASE)
TO_PUT_UP = "whole class"
"""The grouping of what there is one of."""


@dataclass(frozen=True, slots=True)
class StripToHand:
    """A motif or development, and how many of its strips a class needs."""

    name: str
    grouping: str
    """The grouping of which each group needs one; the whole class where one is put up."""
    copies: int
    more: str | None = None
    """Of which grouping each group may have one, where one to put up is enough."""


def strips_to_hand(
    unit: Unit, lesson: Lesson, pupils: int = USUAL_CLASS
) -> tuple[StripToHand, ...]:
    """What the lesson makes and changes, then what else it dances, each once.

    One of each to put up, unless "What to get" asks for strips: then each group of the step has
    one that makes or changes it first, else of the first that dances it. A class that learns by
    doing needs no paper: a teacher would have cut 15 of each of eight.
    """
    asked, needed = asks_for_strips(lesson), _groupings(unit.dance, lesson)
    return tuple(
        StripToHand(name, grouping, copies_for(unit, lesson, grouping, pupils))
        if asked
        else StripToHand(name, TO_PUT_UP, 1, _first_grouping(unit, name))
        for name, grouping in needed.items()
    )


def asks_for_strips(lesson: Lesson) -> bool:
    """Whether "What to get" asks for strips."""
    return any(_STRIPS.search(line) for line in lesson.collect)


def _groupings(dance: Dance, lesson: Lesson) -> dict[str, str]:
    """The grouping in which each motif and development of a lesson is needed first."""
    found: dict[str, str] = {}
    for step in lesson.steps:
        for name in _made(dance, step):
            found.setdefault(name, step.grouping)
    for step in lesson.steps:
        parts = (*step.makes, *step.joins, *step.dances, *step.shows)
        for name in motifs_in(dance, parts):
            found.setdefault(name, step.grouping)
    return found


def _first_grouping(unit: Unit, name: str) -> str | None:
    """In which groups a motif is first needed in the unit; None where all do it as one."""
    known = (_groupings(unit.dance, lesson) for lesson in unit.lessons)
    found = next(one[name] for one in known if name in one)
    return None if found == TO_PUT_UP else found


def copies_for(unit: Unit, lesson: Lesson, grouping: str, pupils: int) -> int:
    """One strip for each group; pupils who dance alone share one between two."""
    if grouping == "alone":
        return len(groups(pupils, 2))
    return len(class_groups(groupings_known(unit, lesson), grouping, pupils))


def action_words(dance: Dance, names: tuple[str, ...]) -> tuple[str, ...]:
    """The pupils' words for the actions of some motifs and developments, each once."""
    every = (action_label(action) for name in names for action in actions_of(dance, name))
    return tuple(dict.fromkeys(every))


def looked_for(unit: Unit, lesson: Lesson) -> tuple[EndPoint, ...]:
    """The end points that a lesson looks for; those of the unit where it names none."""
    talk = lesson.look_and_talk
    named = [unit.end_points[n] for n in (talk.end_points if talk else ()) if n in unit.end_points]
    return tuple(named or unit.end_points.values())


def _made(dance: Dance, step: Step) -> Iterator[str]:
    for name in (*step.makes, *step.develops):
        if name in dance.motifs or name in dance.developments:
            yield name
