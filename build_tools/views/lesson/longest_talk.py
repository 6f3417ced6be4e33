"""How long pupils of an age can sit and talk before they move again.

The rule too-long-sitting holds an author to it, and fitting a lesson to a long slot keeps to it.
"""

from __future__ import annotations

from build_tools.model.lesson import Lesson, Step
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.sentences.watching import some_dance

YOUNG, OLDER = 4, 6
"""Minutes in a row up to age 7, and from then on; common practice, no source."""


def longest_talk(unit: Unit, lesson: Lesson) -> int:
    """The most minutes in a row that pupils of the unit sit and talk in this lesson.

    In the last lesson the talk looks back over the whole unit, and may be half as long again.
    """
    span = ages(unit.years)
    usual = YOUNG if span is not None and span[1] <= 7 else OLDER
    return usual + usual // 2 if lesson is unit.lessons[-1] else usual


def is_sat_through(step: Step) -> bool:
    """Whether a step is for looking and talking and nobody dances in it."""
    if step.phase != "look and talk":
        return False
    if step.makes or step.develops or step.joins or step.dances or step.shows:
        return False
    return not some_dance(step.task)
