"""What can wait is never the warm-up, the looking and talking, the cool-down or the last question.

A step marked `can_wait` is the first to go when a class comes late to the hall. Bodies still need
warming and slowing down, and the last question tells where the next lesson starts.

Bad:
    phase: warm-up, can_wait: true
Good:
    phase: explore, can_wait: true
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"

_NEEDED = {
    "warm-up": "bodies get ready for the rest",
    "look and talk": "the class says what it saw",
    "cool-down": "bodies slow down",
}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that is marked `can_wait` and is needed."""
    for lesson in unit.lessons:
        last_asked = _last_asked(lesson)
        for index, step in enumerate(lesson.steps):
            if not step.can_wait:
                continue
            if step.phase in _NEEDED:
                why = f"is the {step.phase}, in which {_NEEDED[step.phase]}"
            elif index == last_asked:
                why = "asks the last question of the lesson"
            else:
                continue
            yield Finding(
                lesson.file,
                ("steps", index, "can_wait"),
                f"step {index + 1} has `can_wait` and {why}",
                f"take `can_wait` from step {index + 1}, and put it on a step to leave instead",
            )


def _last_asked(lesson: Lesson) -> int | None:
    """The step in which the last question is asked, where no step is for looking and talking."""
    if any(step.phase == "look and talk" for step in lesson.steps):
        return None
    asked = [index for index, step in enumerate(lesson.steps) if step.ask]
    return asked[-1] if asked else None
