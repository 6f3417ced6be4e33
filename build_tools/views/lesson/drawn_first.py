"""What stands first on a lesson's page, drawn: the first motif it makes that the class dances."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.drawn_in_steps import drawn_in_steps


def drawn_first(unit: Unit, lesson: Lesson) -> str | None:
    """The motif or development whose picture stands first; None where none is made."""
    return next(
        (name for names in drawn_in_steps(unit.dance, lesson.steps) for name in names), None
    )
