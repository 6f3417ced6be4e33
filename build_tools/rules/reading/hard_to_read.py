"""What a teacher says, sets and looks for is written in plain English.

A reading ease of 60 or more is plain: short sentences of short words. Many who teach dance are new
to it, some read in a second language, and all read in a hurry. Words that the unit teaches are not
counted against it.

Bad:
    task: Investigate contrasting interpretations of expansive gestures individually.
Good:
    task: Try big arm moves in three ways of your own.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.ease import ease_at_a_glance, reading_ease

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
        text = "\n".join(part for s in lesson.steps for part in (s.say, s.task, s.look_for) if part)
        if ease_at_a_glance(text) >= SURE:
            continue
        taught = {*unit.words, *lesson.words, *(t for s in lesson.steps for t in s.teaches)}
        found = reading_ease(text, taught)
        if found is None or found.words < ENOUGH or found.ease >= PLAIN:
            continue
        yield Finding(
            lesson.file,
            ("steps",),
            f"what lesson {lesson.number} says, sets and looks for has a reading ease of "
            f"{found.ease:.0f}, below {PLAIN}, with {found.words / found.sentences:.0f} words a "
            "sentence",
            "use shorter sentences and everyday words",
        )
