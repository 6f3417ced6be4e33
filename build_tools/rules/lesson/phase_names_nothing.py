"""A step that makes, develops, joins, rehearses or shows says what.

What a lesson does to the dance is read off its steps, and everything else is worked out from that.
A join that names no sections, or a showing of nothing, is lost to all of it.

Bad:
    phase: join, dances: [B, C]
Good:
    phase: join, joins: [B, C]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import names_in

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_FIELD = {
    "make": "makes",
    "develop": "develops",
    "join": "joins",
    "rehearse": "dances",
    "show": "shows",
}
_OWN = ("join", "show")
"""Phases that have one field of their own; the others may do several things."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step of such a phase that names nothing it could be doing."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            field = _FIELD.get(step.phase)
            if field is None or _says(step, field):
                continue
            yield Finding(
                lesson.file,
                ("steps", n),
                f"step {n + 1} has `phase: {step.phase}`, but no `{field}`"
                + ("" if step.phase in _OWN else " or anything else that it names"),
                f"add `{field}`, or write the phase that the step is",
            )


def _says(step: Step, field: str) -> bool:
    if step.phase in _OWN:
        return bool(getattr(step, field))
    return bool(names_in(step) or step.settles or step.teaches)
