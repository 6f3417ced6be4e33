"""What each lesson adds to the dance: names and letters, each said by a step of the lesson."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.views.dance.parts_named import letters_in


@dataclass(frozen=True, slots=True)
class LessonAdds:
    """What one lesson adds, without repeats, in the order of its steps."""

    number: int
    motifs: tuple[str, ...]
    developments: tuple[str, ...]
    sections: tuple[str, ...]
    """Letters of sections made."""
    joined: tuple[str, ...]
    """Letters of sections joined, in the order danced."""
    settled: tuple[str, ...]
    """Names of choices."""
    shows_whole: bool


def lesson_adds(unit: Unit, lesson: Lesson) -> LessonAdds:
    """What `lesson` adds to the unit's dance."""
    makes = _all(lesson, lambda step: step.makes)
    joined = max((step.joins for step in lesson.steps), key=len, default=())
    return LessonAdds(
        number=lesson.number,
        motifs=tuple(name for name in makes if name in unit.dance.motifs),
        developments=_all(lesson, lambda step: step.develops),
        sections=letters_in(unit.dance, makes),
        joined=joined,
        settled=_all(lesson, lambda step: step.settles),
        shows_whole=any("whole" in step.shows for step in lesson.steps),
    )


def _all(lesson: Lesson, names: Callable[[Step], tuple[str, ...]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for step in lesson.steps for name in names(step)))


def drawn_first(unit: Unit, lesson: Lesson) -> str | None:
    """The motif or development whose strip stands first on the lesson's page; None for none."""
    adds = lesson_adds(unit, lesson)
    return next(iter((*adds.motifs, *adds.developments)), None)
