"""A task has no more than 30 words.

Three or four short sentences are taken in at a glance. A task with more in it is usually two
tasks.

Bad:
    task: Walk it once. Then make your own wave. Swap with your partner and dance theirs. Show
      both to another pair. Join them with a turn, and dance all of it twice to the drum.
Good:
    task: Walk it once. Then dance one wave to the beach and one to the sea.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.words_counted import longer_than, steps_of

GRADE: Grade = "question"
SOURCE = "common practice, no source"
LIMIT = 30


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `task` of more than 30 words."""
    for lesson, n, step in steps_of(unit):
        number = longer_than(LIMIT, step.task)
        if number:
            yield Finding(
                lesson.file,
                ("steps", n, "task"),
                f"`task` has {number} words, {number - LIMIT} more than {LIMIT}",
                "cut what another field says, or make two steps of it",
            )
