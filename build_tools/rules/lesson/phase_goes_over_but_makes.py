"""A step that warms up, recalls, rehearses, shows or calms brings nothing new.

A recall that makes a motif, or a cool-down that develops one, has the phase of another step: the
plan of the lesson then shows no making, and its minutes count as something else.

Bad:
    phase: recall, makes: [gust]
Good:
    phase: make, makes: [gust]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_GOES_OVER = ("warm-up", "recall", "rehearse", "show", "look and talk", "cool-down")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step of such a phase that makes or develops something."""
    sections = unit.dance.sections
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            names = (*step.makes, *step.develops)
            if step.phase not in _GOES_OVER or not names:
                continue
            said = [f"section {name}" if name in sections else f"`{name}`" for name in names]
            yield Finding(
                lesson.file,
                ("steps", n, "makes" if step.makes else "develops"),
                f"step {n + 1} has `phase: {step.phase}`, but it makes {listed(said)}",
                "write `phase: make` or `phase: develop`, or `dances` in place of what it makes",
            )
