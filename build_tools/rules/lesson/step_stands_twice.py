"""Each step of a lesson is a step of its own.

A step that was pasted once too often makes the lesson longer than its slot, and what the last step
does, such as cooling down, is then asked for twice.

Bad:
    steps:
      - {does: Shake out, task: Shake each arm., …}
      - {does: Shake out, task: Shake each arm., …}
      - {does: Sink, task: Sink slowly., …}
Good:
    steps:
      - {does: Shake out, task: Shake each arm., …}
      - {does: Breathe, task: Breathe out slowly., …}
      - {does: Sink, task: Sink slowly., …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.same_words import same_step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that says what an earlier step of its lesson says."""
    for lesson in unit.lessons:
        seen: dict[tuple[str, str], int] = {}
        for n, step in enumerate(lesson.steps):
            first = seen.setdefault(same_step(step), n)
            if first != n:
                without = lesson.minutes - step.minutes
                yield Finding(
                    lesson.file,
                    ("steps", n, "does"),
                    f"step {n + 1} is step {first + 1} again, word for word; the lesson has "
                    f"{lesson.minutes} minutes with it, {without} without",
                    "keep one of the two, or say in the second what is new in it",
                )
