"""What a teacher does when something goes wrong, a line each, the same on the page and the card."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.pages.pieces.labelled import Labelled
from build_tools.views.lesson.shortening import can_be_shortened
from build_tools.views.words.plain_words import listed, minutes_in_words

SHORT = "short_of_time"
_TROUBLE = {
    "stuck": "They are stuck",
    "finished": "Some finish early",
    "loud": "It gets loud",
    "silly": "It gets silly",
    "will_not_join": "One won’t join in",
    SHORT: "You are short of time",
    "sound_fails": "The sound fails",
    "lesson_lost": "The lesson is lost",
}


def trouble_lines(lesson: Lesson) -> tuple[Labelled, ...]:
    """One line for each thing that can go wrong."""
    return tuple(
        Labelled(label, f"{lesson.trouble[key]}{_short(lesson) if key == SHORT else ''}")
        for key, label in _TROUBLE.items()
        if key in lesson.trouble
    )


def _short(lesson: Lesson) -> str:
    return f"{_left_out(lesson)}{_later(lesson)}"


def _left_out(lesson: Lesson) -> str:
    """Which steps the author's line on short time means, and the minutes that they save."""
    waits = [n for n, step in enumerate(lesson.steps, start=1) if step.can_wait]
    if not waits:
        return ""
    saved = minutes_in_words(sum(lesson.steps[n - 1].minutes for n in waits))
    numbers = listed([str(number) for number in waits])
    what = f"step {numbers}: it saves" if len(waits) == 1 else f"steps {numbers}: they save"
    return f" That is {what} {saved}."


def _later(lesson: Lesson) -> str:
    """What can still be shortened by a teacher who notices after that."""
    given = [f"step {one.step} by {one.minutes}" for one in can_be_shortened(lesson)]
    return f" Later, shorten {listed(given)}." if given else ""
