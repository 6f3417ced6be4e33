"""What to look for is one thing, in no more than 15 words.

A teacher can look for one thing while counting, drumming and keeping everyone safe. Two or
three are not looked for at all.

Bad:
    look_for: soft knees, straight arms, eyes up, a slow sink, and everyone in a space of their own
Good:
    look_for: Knees bend slowly; nobody drops.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.words_counted import longer_than, steps_of

GRADE: Grade = "question"
SOURCE = "common practice, no source"
LIMIT = 15


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `look_for` of more than 15 words."""
    for lesson, n, step in steps_of(unit):
        number = longer_than(LIMIT, step.look_for)
        if number:
            yield Finding(
                lesson.file,
                ("steps", n, "look_for"),
                f"`look_for` has {number} words, {number - LIMIT} more than {LIMIT}",
                "keep the one thing that shows most, and leave out the rest",
            )
