"""In each lesson, pupils hear how to land before their first jump.

Jumps hurt in the landing: knees bent, feet quiet. Said once a lesson is enough, in the step with
the first jump, in an earlier step, or under `safety`.

Bad:
    say: Rush in and jump.
Good:
    say: Rush in and jump. Land softly; bend your knees.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.jumps import says_how_to_land
from build_tools.views.written.hazards import told_in
from build_tools.views.written.jumps import jump_in

GRADE: Grade = "error"
READS = "en"
SOURCE = "common practice, no source; knees over toes when bending: afPE, Safe Practice, 2016, 8.26"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first jump of each lesson that comes with no landing cue."""
    for lesson in unit.lessons:
        finding = _uncued(unit.dance, lesson)
        if finding:
            yield finding


def _uncued(dance: Dance, lesson: Lesson) -> Finding | None:
    if any(says_how_to_land(line) for line in lesson.safety):
        return None
    for index, step in enumerate(lesson.steps):
        if _told_to_land(step):
            return None
        jump = jump_in(dance, step)
        if jump is None:
            continue
        path: FieldPath = ("steps", index, jump.field) if jump.field else ("steps", index)
        return Finding(
            lesson.file,
            path,
            f"step {index + 1} has the first jump of lesson {lesson.number} ({jump.said}), but "
            "nothing up to there says how to land",
            "add a landing cue to `say`, such as: land softly, knees bent",
        )
    return None


def _told_to_land(step: Step) -> bool:
    return any(says_how_to_land(text) for text in told_in(step))
