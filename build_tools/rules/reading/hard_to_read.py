"""What a teacher says, sets and looks for is written in plain English.

A reading ease of 60 or more is plain: short sentences of short words. Many who teach dance are new
to it, some read in a second language, and all read in a hurry. Words that the unit teaches are not
counted against it. One hard line in a plain lesson is line-hard-to-read.

Bad:
    task: Investigate several contrasting interpretations of expansive gestures,
      individually and together. Communicate imaginative possibilities
      considerately, collaboratively and individually.
Good:
    task: Try big arm moves in three ways of your own.
"""

from __future__ import annotations

from collections.abc import Iterator, Set

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.ease import ReadingEase, ease_at_a_glance, reading_ease

GRADE: Grade = "question"
SOURCE = (
    "Flesch, A new readability yardstick, Journal of Applied Psychology 32, 1948: 60 to 70 is plain"
)
PLAIN = 60
SURE = 75
"""Reading ease at a glance: a text this easy is never under 60 when counted with care."""
ENOUGH = 100
"""The formula wanders on texts of fewer words."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose steps score under 60."""
    for lesson in unit.lessons:
        whole = hard_lesson(lesson, taught_words(unit, lesson))
        if whole is not None:
            yield whole


def taught_words(unit: Unit, lesson: Lesson) -> frozenset[str]:
    """The words that the unit or the lesson teaches."""
    return frozenset({*unit.words, *lesson.words, *(t for s in lesson.steps for t in s.teaches)})


def hard_lesson(lesson: Lesson, taught: Set[str]) -> Finding | None:
    """The finding on a lesson that is hard to read as a whole."""
    parts = (part for s in lesson.steps for part in (s.say, s.task, s.you, s.look_for))
    text = "\n".join(part for part in parts if part)
    found = score(text, taught, ENOUGH)
    if found is None or found.ease >= PLAIN:
        return None
    return Finding(
        lesson.file,
        ("steps",),
        f"what lesson {lesson.number} says, sets and looks for has a reading ease of "
        f"{found.ease:.0f}, below {PLAIN}, with {found.words / found.sentences:.0f} words a "
        "sentence",
        "use shorter sentences and everyday words",
    )


def score(text: str, taught: Set[str], enough: int) -> ReadingEase | None:
    """The text's score; None where it is easy at a glance or too short to be judged."""
    if not text or ease_at_a_glance(text) >= SURE:
        return None
    found = reading_ease(text, taught)
    return found if found is not None and found.words >= enough else None
