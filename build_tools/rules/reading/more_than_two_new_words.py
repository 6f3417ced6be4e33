"""A lesson teaches two new words of dance at most.

Motif, mirror and change of speed in one morning: seven-year-olds keep the last of them. A third
idea can be danced all the same, in plain words ("the other side", "slower"), and gets its name in
another lesson.

Bad:
    teaches: [motif, canon, mirror]
Good:
    teaches: [motif, canon]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)
MOST = 2


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson with a third new word, at the step that brings it."""
    known: set[str] = set()
    for lesson in unit.lessons:
        new: list[str] = []
        third: int | None = None
        for n, step in enumerate(lesson.steps):
            new += [word for word in step.teaches if word.casefold() not in known]
            known.update(word.casefold() for word in step.teaches)
            if third is None and len(new) > MOST:
                third = n
        if third is None:
            continue
        yield Finding(
            lesson.file,
            ("steps", third, "teaches"),
            f"lesson {lesson.number} teaches {len(new)} new words ({listed(new)}), and {MOST} are "
            "as many as a class keeps",
            "say one of them in plain words here, and teach its name in another lesson",
        )
