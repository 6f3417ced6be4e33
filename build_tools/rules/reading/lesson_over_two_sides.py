"""A lesson prints on two sides of A4, one sheet to hold in the hall.

What is printed is all but the focus and the notes: easier and harder lines too, and words for
today. A short lesson is printed in 12 points, a longer one in 11. One that does not fit even then
takes a second sheet, and what stands on it is not at hand.

Bad:
    every step of a lesson has lines like these
    easier: >-
      Walk with somebody beside you who counts in a whisper, and stop when they stop. If that is too
      much, walk on the spot, hold the wall or a chair, or only count and lift one hand on eight.
      When it goes well, let go of the chair for the first four counts, and then for all of them.
    harder: >-
      Change the way you face on each first count, and keep to the same line through the hall. Then
      change how high you are too, once in eight counts, so that nobody else is as high as you. When
      that goes well, leave out the counting, and listen for everybody else's feet in place of it.
Good:
    easier: Walk with somebody who whispers the counts.
    harder: Change the way you face on each first count.
    notes: Who finds it hard may hold a chair, and let go of it for four counts.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.paper.paper_size import LEAST, too_long
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that two sides cannot hold in the smallest print."""
    for lesson in unit.lessons:
        found = too_long(unit, lesson)
        if found is None:
            continue
        yield Finding(
            lesson.file,
            ("lesson",),
            f"lesson {lesson.number} prints {how_many(found.words, 'word')}, and in {LEAST} points "
            f"two sides of A4 hold about {found.held} of them",
            f"cut about {how_many(found.words - found.held, 'word')}, of easier and harder too, or "
            "move them to the notes below",
        )
