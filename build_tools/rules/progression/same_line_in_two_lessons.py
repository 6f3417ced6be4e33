"""What a lesson is called, is for and has made is said of that lesson alone.

A new lesson is often begun as a copy of the last. Where its title, its aim or its story so far is
still that of the other lesson, the teacher reads about the wrong morning.

Bad:
    lesson 2: pupils_make: One wave of four moves. lesson 3: pupils_make: One wave of four moves.
Good:
    lesson 2: pupils_make: One wave of four moves. lesson 3: pupils_make: A meeting of two crabs.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.same_words import same_words
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken", "lesson-is-a-copy")

_OWN = ("title", "focus", "pupils_make", "story_so_far", "never_did_last")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each such line that an earlier lesson has word for word."""
    seen: dict[tuple[str, str], int] = {}
    for lesson in unit.lessons:
        for field in _OWN:
            text = same_words(getattr(lesson, field))
            if not text:
                continue
            first = seen.setdefault((field, text), lesson.number)
            if first != lesson.number:
                yield Finding(
                    lesson.file,
                    (field,),
                    f"`{field}` of lesson {lesson.number} is that of lesson {first}, word for word",
                    f"say what is so of lesson {lesson.number}",
                )
