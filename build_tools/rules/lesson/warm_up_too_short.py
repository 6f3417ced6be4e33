"""A warm-up lasts 3 minutes or more, and a cool-down 2.

Under that, joints are not loose and the pulse has neither risen nor come down. Five minutes are
better; in a short lesson three and two have to do, and in one of 20 minutes or less a minute less.

Bad:
    phase: warm-up, minutes: 1
Good:
    phase: warm-up, minutes: 5
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "question"
SOURCE = (
    "Taylor and Francis 10.4324/9780203064665-4: a cool-down of 5 to 10 minutes; the least here "
    "is common practice for short lessons"
)

_LEAST = {"warm-up": 3, "cool-down": 2}
_SHORT = 20
"""In a lesson of so many minutes or fewer, a minute less will do."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose warm-up or cool-down, all of it, is too short."""
    for lesson in unit.lessons:
        for phase, least in _LEAST.items():
            yield from _too_short(lesson, phase, least - (lesson.minutes <= _SHORT))


def _too_short(lesson: Lesson, phase: str, least: int) -> Iterator[Finding]:
    steps = [(n, step) for n, step in enumerate(lesson.steps) if step.phase == phase]
    minutes = sum(step.minutes for _, step in steps)
    if steps and minutes < least:
        yield Finding(
            lesson.file,
            ("steps", steps[0][0], "minutes"),
            f"the {phase} of lesson {lesson.number} has {minutes_in_words(minutes)}, and "
            f"{least} is the least that does what it is for",
            f"give it {minutes_in_words(least)} or more, and take them off another step",
        )
