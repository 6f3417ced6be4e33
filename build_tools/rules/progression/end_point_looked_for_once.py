"""Each end point is looked for in two lessons of the unit or more.

Looked for once, an end point is a test. Looked for again, pupils and teacher see what has grown
since. It need not be in the last lesson, where one thing to look for is enough.

Bad:
    no other lesson names clear-start
    lesson 2: look_and_talk: {end_points: [clear-start, …], …}
Good:
    lesson 2: look_and_talk: {end_points: [clear-start, …], …}
    lesson 4: look_and_talk: {end_points: [clear-start, …], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "no-look-and-talk", "end-point-never-looked-for")
FEWEST_LESSONS = 4
"""A unit of fewer lessons has no room to come back to each."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each end point that only one of four lessons or more looks for."""
    if len(unit.lessons) < FEWEST_LESSONS:
        return
    for name in unit.end_points:
        looking = [
            lesson
            for lesson in unit.lessons
            if lesson.look_and_talk and name in lesson.look_and_talk.end_points
        ]
        if len(looking) == 1:
            yield Finding(
                unit.file,
                ("end_points", name),
                f"the end point `{name}` is looked for in lesson {looking[0].number} alone, 1 of "
                f"{how_many(len(unit.lessons), 'lesson')}",
                f"write `{name}` under `end_points` in the `look_and_talk` of a second lesson, "
                "before or after",
            )
