"""A step that may be left out makes nothing that the dance needs.

`can_wait` marks what goes first when a class comes late to the hall. If a motif is made in it, or
a choice settled, every later step is without it.

Bad:
    phase: make, makes: [wave], can_wait: true
Good:
    phase: explore, can_wait: true
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that can wait and that makes, develops or settles something."""
    sections = unit.dance.sections
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            names = (*step.makes, *step.develops, *step.settles)
            if not step.can_wait or not names:
                continue
            said = [f"section {name}" if name in sections else f"`{name}`" for name in names]
            does = "makes" if step.makes or step.develops else "settles"
            yield Finding(
                lesson.file,
                ("steps", n, "can_wait"),
                f"step {n + 1} has `can_wait`, but it {does} {listed(said)}",
                "put `can_wait` on a step that only explores or practises",
            )
