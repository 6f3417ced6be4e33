"""What each view of a lesson tells its scripts of the lesson."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit


@dataclass(frozen=True, slots=True)
class ForScripts:
    """What the page tells its scripts, and every view of the hall with it."""

    unit: str
    """The unit's name in addresses."""
    lesson: str
    """The lesson's number."""
    lessons: str
    """How many lessons there are."""
    minutes: str
    """How many minutes the lesson lasts."""


def for_scripts(unit: Unit, lesson: Lesson) -> ForScripts:
    """What every view of a lesson tells its scripts."""
    return ForScripts(unit.slug, str(lesson.number), str(len(unit.lessons)), str(lesson.minutes))
