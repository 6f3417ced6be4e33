"""The minutes of a lesson on the same ruler: a box a step."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.views.diagrams.figure import Figure
from build_tools.views.diagrams.ruler import HEIGHT, ruler
from build_tools.views.diagrams.svg import TEXT, drawing, el, text
from build_tools.views.plain_words import minutes_in_words
from build_tools.views.timings import step_minutes, step_times

WIDTH = 360
_LEFT = 6
_BOX = 26


def minutes_figure(lesson: Lesson) -> Figure:
    """The lesson's steps over its minutes; heavy ticks every five minutes."""
    total = step_minutes(lesson)
    per = (WIDTH - 2 * _LEFT) / total
    pieces = []
    for n, time in enumerate(step_times(lesson), start=1):
        x, width = _LEFT + time.start * per, (time.end - time.start) * per
        pieces.append(_box(str(n), x, width))
    pieces.append(ruler(_LEFT, _BOX + 5, total, per, 5))
    title = f"The {len(lesson.steps)} steps over {minutes_in_words(total)}"
    words = tuple(
        f"{n}. {t.start} to {t.end} minutes: {step.does}"
        for n, (t, step) in enumerate(zip(step_times(lesson), lesson.steps, strict=True), start=1)
    )
    svg = drawing(title, WIDTH, _BOX + 7 + HEIGHT, *pieces, kind="minutes")
    return Figure(title, svg, words)


def _box(number: str, x: float, width: float) -> str:
    shape = el(
        "rect",
        x=x + 0.75,
        y=2,
        width=max(width - 1.5, 1),
        height=_BOX,
        fill="none",
        stroke="currentColor",
        stroke_width=1.5,
    )
    word = text(number, x + width / 2, 2 + _BOX / 2 + 5, TEXT, "middle", True, squeeze=width - 3)
    return el("g", shape, word)
