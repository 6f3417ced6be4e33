"""A task has no more than 30 words, or 45 where something is made.

Three or four short sentences are taken in at a glance. A task with more in it is usually two
tasks. Where pupils make or change something, what it must hold needs room: the counts, the way,
the gap. Where they stand and which way they face has fields of its own, `place` and `facing`.

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
LIMIT_MAKING = 45


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `task` of more than 30 words, or 45 in a step that makes."""
    for lesson, n, step in steps_of(unit):
        makes = bool(step.makes or step.develops or step.joins)
        limit = LIMIT_MAKING if makes else LIMIT
        number = longer_than(limit, step.task)
        if number:
            yield Finding(
                lesson.file,
                ("steps", n, "task"),
                f"`task` has {number} words, {number - limit} more than {limit}",
                "cut what another field says (`place` and `facing` do not count), or make two "
                "steps of it",
            )
