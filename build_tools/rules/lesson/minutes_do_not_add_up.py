"""The minutes of a lesson's steps add up to the minutes of the lesson.

A teacher plans the morning by the lesson's minutes. If the steps take longer, the last ones are
lost, and those are the ones where pupils look, talk and cool down. Where the lesson is as long as
the others, and only one step could give what is too much, it is told at that step.

Bad:
    minutes: 45
    steps: [{minutes: 6, …}, {minutes: 10, …}, {minutes: 12, …}, {minutes: 10, …}, {minutes: 4, …}]
Good:
    minutes: 45
    steps: [{minutes: 6, …}, {minutes: 10, …}, {minutes: 12, …}, {minutes: 10, …}, {minutes: 7, …}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.lesson.timings import step_minutes
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose steps do not fill it exactly."""
    for lesson in unit.lessons:
        steps = [step.minutes for step in lesson.steps]
        whole = step_minutes(lesson)
        if whole == lesson.minutes:
            continue
        left = lesson.minutes - whole
        yield Finding(
            lesson.file,
            _place(unit, lesson, -left),
            f"the lesson has {minutes_in_words(lesson.minutes)}, but its steps add up to "
            f"{whole} ({' + '.join(str(m) for m in steps)})",
            f"add {minutes_in_words(left)} to a step"
            if left > 0
            else f"take {minutes_in_words(-left)} off the steps",
        )


def _place(unit: Unit, lesson: Lesson, over: int) -> FieldPath:
    """The one step that has minutes enough to lose, if the lesson is as long as another."""
    others = [one.minutes for one in unit.lessons if one is not lesson]
    can = [n for n, step in enumerate(lesson.steps) if step.minutes - over >= _fewest(step)]
    if over > 0 and len(can) == 1 and lesson.minutes in others:
        return ("steps", can[0], "minutes")
    return ("minutes",)


def _fewest(step: Step) -> int:
    """Its fewest minutes; one where the step does not say."""
    return step.least if step.least < step.minutes else 1
