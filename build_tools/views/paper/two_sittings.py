"""A lesson on paper when a teacher's slot makes two sittings of it: what is printed besides.

The page's script writes these words for the slot of the day; here they stand as long as it writes
them, so that the lesson is known to keep to its sides then too.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from build_tools.model.lesson import Lesson
from build_tools.page_words.words import N_, _
from build_tools.views.lesson.lesson_wording import step_in_short
from build_tools.views.lesson.timings import StepTime, step_times
from build_tools.views.paper.printed import PrintedLesson, PrintedStep, Runs
from build_tools.views.paper.typeface import Run

_FRAME = ("warm-up", "cool-down")
_START, _END = 25, 30
_GROUPS = N_("Twelve pairs and one three")
"""Groups as the page tells them for a class, which is longer than it tells a grouping."""
_AGAIN = N_("Dance again what you made")


def in_two_sittings(printed: PrintedLesson, lesson: Lesson) -> PrintedLesson:
    """The same with what two sittings add to its short lines and its steps."""
    frame = [n for n, step in enumerate(lesson.steps, start=1) if step.phase in _FRAME]
    short = [*range(1, len(lesson.steps) + 1), *frame]
    lines = [f"{_time()} {step_in_short(lesson, number)}" for number in short]
    run_in: Runs = (
        Run(_("First sitting:"), bold=True),
        Run(" · ".join((*lines, f"{_time()} {_(_AGAIN)}"))),
        Run(_("Second sitting:"), bold=True),
    )
    return replace(
        printed,
        short=(),
        run_in=run_in,
        steps=tuple(
            _step(one, time if step.phase in _FRAME else None)
            for step, time, one in zip(lesson.steps, step_times(lesson), printed.steps, strict=True)
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
    first = "; ".join(f"{does}, {_time()}" for does in closing)
    second = "; ".join(f"{does}, {_time()}" for does in (*opening, _(_AGAIN)))
    return (
        Run(_("The first sitting ends here."), bold=True),
        Run(f"{first}."),
        Run(_("The second sitting:"), bold=True),
        Run(_("{steps}. Then:", steps=second)),
    )


def _time() -> str:
    return _("{start} to {end}", start=_START, end=_END)


def _step(printed: PrintedStep, twice: StepTime | None) -> PrintedStep:
    """A step as it is printed; `twice` is when it is taught first where both sittings have it."""
    _before, _dot, into = printed.how.text.partition(" · ")
    how = f"· {_(_GROUPS)}{f' · {into}' if into else ''}"
    time = (
        _(
            "{first}, then {second} min",
            first=_("{start} to {end}", start=twice.start, end=twice.end),
            second=_time(),
        )
        if twice
        else printed.time
    )
    return replace(printed, time=time, how=printed.how._replace(text=how))
