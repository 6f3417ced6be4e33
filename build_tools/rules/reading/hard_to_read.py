"""What a teacher says, sets and looks for is written in plain English.

A reading ease of 60 or more is plain: short sentences of short words. Many who teach dance are new
to it, some read in a second language, and all read in a hurry. A lesson that is plain on the whole
may have one task that nobody follows, so a line of ten words or more is judged by itself too, where
under 50 is difficult. Words that the unit teaches are not counted against it.

Bad:
    task: Investigate several contrasting interpretations of expansive gestures,
      individually and together.
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
DIFFICULT = 50
"""Reading ease of one line alone; the gap to 60 is for its wandering."""
ENOUGH_ALONE = 10
_FIELDS = ("say", "task")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose steps score under 60, or each line of it under 50."""
    for lesson in unit.lessons:
        taught = {*unit.words, *lesson.words, *(t for s in lesson.steps for t in s.teaches)}
        whole = _whole(lesson, taught)
        if whole is not None:
            yield whole
            continue
        for n, step in enumerate(lesson.steps):
            for field in _FIELDS:
                found = _score(getattr(step, field) or "", taught, ENOUGH_ALONE)
                if found is not None and found.ease < DIFFICULT:
                    yield Finding(
                        lesson.file,
                        ("steps", n, field),
                        f"`{field}` of step {n + 1} has a reading ease of {found.ease:.0f}, and "
                        f"under {DIFFICULT} is difficult",
                        "use shorter sentences and everyday words",
                    )


def _whole(lesson: Lesson, taught: Set[str]) -> Finding | None:
    """The finding on a lesson that is hard to read as a whole."""
    text = "\n".join(part for s in lesson.steps for part in (s.say, s.task, s.look_for) if part)
    found = _score(text, taught, ENOUGH)
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


def _score(text: str, taught: Set[str], enough: int) -> ReadingEase | None:
    """The text's score; None where it is easy at a glance or too short to be judged."""
    if not text or ease_at_a_glance(text) >= SURE:
        return None
    found = reading_ease(text, taught)
    return found if found is not None and found.words >= enough else None
