"""What a class is handed in a lesson: strips to follow in groups, and words for the wall."""

from __future__ import annotations

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


@dataclass(frozen=True, slots=True)
class StripToHand:
    """A motif or development, and how many of its strips a class needs."""

    name: str
    grouping: str
    """The grouping of the step that needs it."""
    copies: int


def strips_to_hand(
    unit: Unit, lesson: Lesson, pupils: int = USUAL_CLASS
) -> tuple[StripToHand, ...]:
    """What the lesson makes and changes, then what else it dances, each once.

    Each goes by the first step that makes or changes it, else by the first that dances it.
    """
    found: dict[str, str] = {}
    for step in lesson.steps:
        for name in _made(unit.dance, step):
            found.setdefault(name, step.grouping)
    for step in lesson.steps:
        parts = (*step.makes, *step.joins, *step.dances, *step.shows)
        for name in motifs_in(unit.dance, parts):
            found.setdefault(name, step.grouping)
    return tuple(
        StripToHand(name, grouping, copies_for(unit, lesson, grouping, pupils))
        for name, grouping in found.items()
    )


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
