"""The floor in the steps of a lesson in which pupils first stand so."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.diagrams.standing_plan import standing_plan
from build_tools.views.lesson.standing_in_steps import stands_anew


def standing_plans(unit: Unit, lesson: Lesson) -> tuple[tuple[Picture, ...], ...]:
    """For each step the plans of what is new in it."""
    return tuple(
        tuple(picture(standing_plan(unit, letter)) for letter in letters)
        for letters in stands_anew(unit, lesson)
    )
