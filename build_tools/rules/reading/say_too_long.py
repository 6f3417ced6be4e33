"""What a teacher says at the start of a step has no more than 25 words.

Pupils stand ready to move and keep about three short sentences in mind. What is longer is
read out from the page, with the eyes off the class.

Bad:
    say: A wave pulls back before it comes, and then it meets the rock and breaks, and the water
      goes everywhere, so think of how it might feel to be that water.
Good:
    say: A wave pulls back, runs in, breaks and melts. Land softly.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.words_counted import longer_than, steps_of

GRADE: Grade = "question"
SOURCE = "common practice, no source"
LIMIT = 25


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `say` of more than 25 words."""
    for lesson, n, step in steps_of(unit):
        number = longer_than(LIMIT, step.say)
        if number:
            yield Finding(
                lesson.file,
                ("steps", n, "say"),
                f"`say` has {number} words, {number - LIMIT} more than {LIMIT}",
                "keep the words pupils need to start, and say the rest while they move",
            )
