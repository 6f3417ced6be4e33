"""A lesson on paper when a teacher's slot makes two sittings of it: what is printed besides.

The page's script writes these words for the slot of the day; here they stand as long as it writes
them, so that the lesson is known to keep to its sides then too.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from build_tools.model.lesson import Lesson
from build_tools.views.lesson.lesson_wording import step_in_short
from build_tools.views.paper.printed import PrintedLesson, PrintedStep, Runs
from build_tools.views.paper.typeface import Run

_FRAME = ("warm-up", "cool-down")
_TIME = "25 to 30"
_GROUPS = "Twelve pairs and one three"
"""Groups as the page tells them for a class, which is longer than it tells a grouping."""
_AGAIN = "Dance again what you made"


def in_two_sittings(printed: PrintedLesson, lesson: Lesson) -> PrintedLesson:
    """The same with what two sittings add to its short lines and its steps."""
    frame = [n for n, step in enumerate(lesson.steps, start=1) if step.phase in _FRAME]
    short = [*range(1, len(lesson.steps) + 1), *frame]
    lines = [f"{_TIME} {step_in_short(lesson, number)}" for number in short]
    run_in: Runs = (
        Run("First sitting:", bold=True),
        Run(" · ".join((*lines, f"{_TIME} {_AGAIN}"))),
        Run("Second sitting:", bold=True),
    )
    return replace(
        printed,
        short=(),
        run_in=run_in,
        steps=tuple(
            _step(step, number in frame) for number, step in enumerate(printed.steps, start=1)
        ),
    )


def turns_of_sittings(lesson: Lesson) -> Iterator[int]:
    """After how many steps one sitting may turn to the next."""
    for number, step in enumerate(lesson.steps[:-1], start=1):
        if step.phase not in (*_FRAME, "recall"):
            yield number


def turn_of_sittings(lesson: Lesson) -> Runs:
    """What stands between the last step of the first sitting and the next."""
    opening = [step.does for step in lesson.steps if step.phase == _FRAME[0]]
    closing = [step.does for step in lesson.steps if step.phase == _FRAME[1]]
    first = "; ".join(f"{does}, {_TIME}" for does in closing)
    second = "; ".join(f"{does}, {_TIME}" for does in (*opening, _AGAIN))
    return (
        Run("The first sitting ends here.", bold=True),
        Run(f"{first}."),
        Run("The second sitting:", bold=True),
        Run(f"{second}. Then:"),
    )


def _step(step: PrintedStep, twice: bool) -> PrintedStep:
    time = f"{step.time.removesuffix(' min')}, then {_TIME} min" if twice else step.time
    _, _, into = step.how.text.partition(" · ")
    how = f"· {_GROUPS}{f' · {into}' if into else ''}"
    return replace(step, time=time, how=step.how._replace(text=how))
