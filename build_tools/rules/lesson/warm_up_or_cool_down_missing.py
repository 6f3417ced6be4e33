"""Each lesson has a warm-up before its vigorous work and a cool-down after it.

A recall that starts gently can warm a class up, and a quiet last step can calm it down. A teacher
who reads the lesson in the morning sees it only where the step is called so.

Bad:
    phase: recall
Good:
    phase: warm-up
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.vigorous import place_of, unprepared, vigorous

GRADE: Grade = "question"
SOURCE = (
    "ACARA, Australian Curriculum version 9: warm up before, cool down after; Warming-up in "
    "primary schools (county leaflet): pulse raising, then mobility, then the activity"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each end of a lesson that is missing, or comes on the wrong side."""
    for lesson in unit.lessons:
        yield from _warm_up(unit.dance, lesson)
        yield from _cool_down(unit.dance, lesson)


def _warm_up(dance: Dance, lesson: Lesson) -> Iterator[Finding]:
    if any(unprepared(dance, lesson)):
        return
    phases = [step.phase for step in lesson.steps]
    if "warm-up" not in phases:
        yield _missing(lesson, "warm-up", "step 1, if it gets bodies ready, or on a new step there")
        return
    warm = phases.index("warm-up")
    for index in range(warm):
        if why := vigorous(dance, lesson.steps[index]):
            yield Finding(
                lesson.file,
                place_of(lesson, index),
                f"step {index + 1} {why}, and the warm-up comes only after it, as step {warm + 1}",
                "move it after the warm-up, or make it gentle",
            )


def _cool_down(dance: Dance, lesson: Lesson) -> Iterator[Finding]:
    phases = [step.phase for step in lesson.steps]
    if "cool-down" not in phases:
        yield _missing(lesson, "cool-down", "the last step, if it calms, or on a new step there")
        return
    last = len(phases) - phases[::-1].index("cool-down")
    for index in range(last, len(phases)):
        if why := vigorous(dance, lesson.steps[index]):
            yield Finding(
                lesson.file,
                place_of(lesson, index),
                f"step {index + 1} {why}, but the cool-down is step {last}, and none follows",
                "move it before the cool-down, or make it gentle",
            )


def _missing(lesson: Lesson, phase: str, where: str) -> Finding:
    return Finding(
        lesson.file,
        ("steps",),
        f"none of the {len(lesson.steps)} steps is a {phase}",
        f"write `phase: {phase}` on {where}",
    )
