"""Pupils sit and talk for no longer than their age can, and then move again.

Bodies cool and thoughts wander: about four minutes at a time up to age 7, six from then on. In the
last lesson the talk looks back over the whole unit, and may be half as long again.

Bad:
    phase: look and talk, minutes: 9
Good:
    phase: look and talk, minutes: 5
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.lesson.longest_talk import is_sat_through, longest_talk

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each stretch of talk, over one step or more, that is too long."""
    for lesson in unit.lessons:
        yield from _stretches(lesson, longest_talk(unit, lesson))


def _stretches(lesson: Lesson, most: int) -> Iterator[Finding]:
    first = 0
    minutes: list[int] = []
    for index, step in enumerate((*lesson.steps, None)):
        if step is not None and is_sat_through(step):
            first = first if minutes else index
            minutes.append(step.minutes)
            continue
        if sum(minutes) > most:
            steps = f"step {first + 1}"
            if len(minutes) > 1:
                steps = f"steps {first + 1} to {first + len(minutes)}"
            added = f"{' + '.join(map(str, minutes))} = " if len(minutes) > 1 else ""
            yield Finding(
                lesson.file,
                ("steps", first, "minutes"),
                f"pupils sit and talk for {added}{sum(minutes)} minutes in {steps}, and at their "
                f"age {most} in a row are enough",
                f"give the talk {most} minutes or less, or let half dance while half watch",
            )
        minutes = []
