"""No line of a plain lesson is hard to read by itself.

A lesson that is plain on the whole may have one task that nobody follows, so a line of ten words or
more is judged by itself too, where under 50 is difficult. The formula wanders on so few words: this
is a note, to be looked at. Words that the unit teaches are not counted against it.

Bad:
    task: Investigate several contrasting interpretations of expansive gestures,
      individually and together.
Good:
    task: Try big arm moves in three ways of your own.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.reading.hard_to_read import score, taught_words
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = (
    "Flesch, A new readability yardstick, Journal of Applied Psychology 32, 1948: 60 to 70 is plain"
)
NEEDS = ("hard-to-read",)
READS = "en"
DIFFICULT = 50
"""Reading ease of one line alone; the gap to 60 is for its wandering."""
ENOUGH_ALONE = 10
_FIELDS = ("say", "task", "you")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a note for each line of a step that scores under 50."""
    for lesson in unit.lessons:
        taught = taught_words(unit, lesson)
        for n, step in enumerate(lesson.steps):
            for field in _FIELDS:
                found = score(getattr(step, field) or "", taught, ENOUGH_ALONE)
                if found is not None and found.ease < DIFFICULT:
                    yield Finding(
                        lesson.file,
                        ("steps", n, field),
                        f"`{field}` of step {n + 1} has a reading ease of {found.ease:.0f}, and "
                        f"under {DIFFICULT} is difficult",
                        "use shorter sentences and everyday words",
                    )
