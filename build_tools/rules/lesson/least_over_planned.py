"""The fewest minutes of a step are no more than the minutes it has.

When a lesson is squeezed into a shorter slot, each step may go down to its least. A least above
the plan can be kept by nobody.

Bad:
    minutes: 5, least: 7
Good:
    minutes: 7, least: 5
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step whose least is more than its minutes."""
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.least > step.minutes:
                yield Finding(
                    lesson.file,
                    ("steps", index, "least"),
                    f"step {index + 1} has {minutes_in_words(step.minutes)}, but `least` is "
                    f"{step.least}, {step.least - step.minutes} more",
                    f"write `least: {step.minutes}` or less, or give the step "
                    f"{minutes_in_words(step.least)}",
                )
