"""Where a lesson starts, from what was seen at the end of the one before."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.lesson_wording import lesson_before, looked_for_last_time
from build_tools.views.words.punctuation import sentence


@dataclass(frozen=True, slots=True)
class LastTime:
    """Where this lesson starts, from what was seen at the end of the one before."""

    lesson: str
    """The number of the lesson before."""
    looked_for: str
    """What was looked for then."""
    seen: str
    """Where to start if it was seen."""
    not_yet: str
    """Where to start if it was not seen yet."""


def last_time_of(unit: Unit, lesson: Lesson) -> LastTime | None:
    """Both starts that the lesson before left, or None for a first lesson."""
    before = lesson_before(unit, lesson)
    if before is None or before.look_and_talk is None or before.look_and_talk.next is None:
        return None
    talk, start = before.look_and_talk, before.look_and_talk.next
    return LastTime(
        lesson=str(before.number),
        looked_for=looked_for_last_time(talk),
        seen=sentence(start.seen),
        not_yet=sentence(start.not_yet),
    )
