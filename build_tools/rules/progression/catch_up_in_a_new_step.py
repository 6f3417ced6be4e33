"""A class that missed a lesson catches up in a step that goes over it.

`never_did_last` sends the teacher to the step where the last lesson's work is danced again. A step
that makes something new is no place for it: what it stands on should have come before.

Bad:
    step 4 makes B: never_did_last: In step 4, teach the fold.
Good:
    step 2 recalls A: never_did_last: In step 2, teach the fold.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.numbered import steps_said
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "number-said-is-not-there")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that catches up first in a step that makes something."""
    for lesson in unit.lessons:
        numbers = steps_said(lesson.never_did_last or "")
        if not numbers or numbers[0] > len(lesson.steps):
            continue
        step = lesson.steps[numbers[0] - 1]
        new = (*step.makes, *step.develops)
        if not new:
            continue
        said = [f"section {name}" if name in unit.dance.sections else f"`{name}`" for name in new]
        yield Finding(
            lesson.file,
            ("never_did_last",),
            f"`never_did_last` catches up in step {numbers[0]}, which makes {listed(said)}",
            "name the step that recalls what the last lesson made",
        )
