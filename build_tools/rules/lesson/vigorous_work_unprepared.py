"""Vigorous work comes after the warm-up and before the cool-down, and each lesson has both.

Cold muscles tear, and a class sent off at full tilt does not settle. A step is vigorous where it
says so, or where it dances a jump and says nothing of how hard the body works.

Bad:
    recall with intensity: vigorous, then warm-up
Good:
    warm-up, then recall with intensity: vigorous, … and last a cool-down
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade, Path
from build_tools.rules.jumps import jump_danced
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = (
    "Warming-up in primary schools (county leaflet): pulse raising, then mobility, then the "
    "activity; ACARA, Australian Curriculum version 9: warm up before, cool down after"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each missing end of a lesson and each step on the wrong side of one."""
    for lesson in unit.lessons:
        yield from _missing(lesson)
        phases = [step.phase for step in lesson.steps]
        warm = phases.index("warm-up") if "warm-up" in phases else -1
        cool = phases.index("cool-down") if "cool-down" in phases else len(phases)
        for index, step in enumerate(lesson.steps):
            if warm < index < cool:
                continue
            why = _vigorous(unit.dance, step)
            if why is None:
                continue
            place: Path = ("steps", index, "intensity") if step.intensity else ("steps", index)
            yield Finding(
                lesson.file,
                place,
                f"step {index + 1} {why}, but "
                + (
                    f"the warm-up is step {warm + 1}"
                    if index < warm
                    else "it is the warm-up itself"
                    if index == warm
                    else f"the cool-down starts with step {cool + 1}"
                ),
                _help(index, warm),
            )


def _help(index: int, warm: int) -> str:
    if index == warm:
        return "start gently: write `intensity: steady`, and let the work grow"
    where = "after the warm-up" if index < warm else "before the cool-down"
    return f"move it {where}, or make it gentle"


def _missing(lesson: Lesson) -> Iterator[Finding]:
    phases = {step.phase for step in lesson.steps}
    for phase, where in (("warm-up", "at the start"), ("cool-down", "at the end")):
        if phase not in phases:
            yield Finding(
                lesson.file,
                ("steps",),
                f"none of the {len(lesson.steps)} steps is a {phase}",
                f"add a step with `phase: {phase}` {where}",
            )


def _vigorous(dance: Dance, step: Step) -> str | None:
    """Why the step is vigorous work, to be read after its number; None if it is not."""
    if step.intensity:
        return "is vigorous" if step.intensity == "vigorous" else None
    jump = jump_danced(dance, step)
    return f"dances a jump ({jump.said})" if jump else None
