"""What a page tells its scripts of each step: minutes, groups, what is shown, what can wait."""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.views.dance.parts_named import letters_in, motifs_in
from build_tools.views.lesson.class_groups import made_before
from build_tools.views.lesson.halves_said import Halves, halves_said
from build_tools.views.lesson.longest_talk import is_sat_through, longest_talk
from build_tools.views.lesson.showing import Showing, showing
from build_tools.views.lesson.where_it_stands import on_spots, parts_placed, stands_by

_TRAVELLING = re.compile(
    r"\b(?:walk|run|skip|side-step|gallop|travel|step sideways|tiptoe)(?:s|ping|ning|ing)?\b",
    re.IGNORECASE,
)


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
    on_spots: bool = False
    """Whether pupils are on the spots on which they stand in the dance."""
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
            on_spots=on_spots(lesson, index),
            stands=stands_by(lesson, index),
            made_before=() if index else made_before(unit, lesson),
            halves=halves_said(step),
        )
        for index, step in enumerate(lesson.steps)
    )
