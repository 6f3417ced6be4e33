"""A unit stops the class by the same signal in every lesson.

What stops a class is learned once. In a lesson that suddenly stops it by a bell, half the class
runs on; and a bell that means something else in the dance stops it there.

Bad:
    lesson 1: say: When I call freeze and raise my hand, be still.
    lesson 2: say: When the bell rings, stop.
Good:
    lesson 1: say: When I call freeze and raise my hand, be still.
    lesson 2: say: When I raise my hand, stop.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.stops_seen import signals_in
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_UNKNOWN = "a sign of its own"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose own signal is none of those of the others."""
    told = [(lesson, *one) for lesson in unit.lessons if (one := _signal(lesson)) is not None]
    often = Counter(kind for _, _, kinds in told for kind in kinds)
    if not often:
        return
    usual, lessons = min(often.items(), key=lambda one: (-one[1], one[0]))
    first = told[0][2]
    if lessons <= len(told) / 2 and usual not in first:
        return
    usual = usual if lessons > 1 else min(first)
    for lesson, path, kinds in told:
        if usual not in kinds and not kinds & first and _UNKNOWN not in kinds:
            yield Finding(
                lesson.file,
                path,
                f"lesson {lesson.number} stops the class by {listed(sorted(kinds))}, and the unit "
                f"stops it by {usual}",
                "stop the class as the other lessons do, or say the usual signal with it",
            )


def _signal(lesson: Lesson) -> tuple[FieldPath, frozenset[str]] | None:
    """The signal of the lesson's first step: where it is said, and of what kinds it is."""
    for n, step in enumerate(lesson.steps[:1]):
        for field in ("say", "task", "you"):
            text = getattr(step, field)
            if text and (kinds := signals_in(text)):
                return ("steps", n, field), kinds
    return None
