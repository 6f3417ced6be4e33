"""The lines in which a lesson says how it can be changed to fit the class."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.problem import FieldPath


def changes(lesson: Lesson) -> Iterator[tuple[FieldPath, str]]:
    """The lines that make a task easier or harder, step by step, then those of `change`."""
    for n, step in enumerate(lesson.steps):
        if step.easier:
            yield ("steps", n, "easier"), step.easier
        if step.harder:
            yield ("steps", n, "harder"), step.harder
    for name, text in lesson.change.items():
        yield ("change", name), text
