"""Vigorous work comes after something that gets bodies ready for it.

Cold muscles tear, and a class sent off at full tilt does not settle. A step is vigorous where it
says so, or where it dances a jump or travels fast and says nothing of how hard the body works. A
warm-up gets bodies ready, and so does walking through what was danced last time.

Bad:
    step 1: phase: recall, intensity: vigorous
    step 2: phase: warm-up
Good:
    step 1: phase: warm-up
    step 2: phase: recall, intensity: vigorous
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.vigorous import place_of, unprepared

GRADE: Grade = "error"
SOURCE = (
    "Warming-up in primary schools (county leaflet): pulse raising, then mobility, then the "
    "activity; ACARA, Australian Curriculum version 9: warm up before, cool down after"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each vigorous step before which nothing gets bodies ready."""
    for lesson in unit.lessons:
        for index, why in unprepared(unit.dance, lesson):
            place = place_of(lesson, index)
            yield Finding(lesson.file, place, _message(lesson, index, why), _help(lesson, index))


def _message(lesson: Lesson, index: int, why: str) -> str:
    number, warm = index + 1, _warm_up(lesson)
    if warm == index:
        return f"step {number} {why}, but it is the warm-up itself"
    if warm is not None and warm > index:
        return f"step {number} {why}, but the warm-up is step {warm + 1}"
    if index == 0:
        return f"step 1 {why}, and the lesson has no warm-up before it"
    before = "step 1 does not get" if index == 1 else f"none of the {index} steps before gets"
    return f"step {number} {why}, but {before} bodies ready for it"


def _help(lesson: Lesson, index: int) -> str:
    warm = _warm_up(lesson)
    if warm == index:
        return "start gently: write `intensity: steady`, and let the work grow"
    if warm is None or warm < index:
        return "put a step with `phase: warm-up` before it, or make it gentle"
    return "move it after the warm-up, or make it gentle"


def _warm_up(lesson: Lesson) -> int | None:
    return next((n for n, step in enumerate(lesson.steps) if step.phase == "warm-up"), None)
