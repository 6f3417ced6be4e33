"""A cool-down is gentle.

The last step lets breath and pulse come down before pupils walk back to the classroom. A cool-down
that is put down as steady or vigorous has been copied from another step, or is none.

Bad:
    phase: cool-down, intensity: vigorous
Good:
    phase: cool-down, intensity: gentle
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "ACARA, Australian Curriculum version 9: warm up before complex patterns, cool down after"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each cool-down that says it is steady or vigorous."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.phase == "cool-down" and step.intensity in ("steady", "vigorous"):
                yield Finding(
                    lesson.file,
                    ("steps", n),
                    f"step {n + 1} is the cool-down, but its `intensity` is {step.intensity}",
                    "write `intensity: gentle`, and let the task grow slower and smaller",
                )
