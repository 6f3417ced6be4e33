"""Every end point is looked for in the looking and talking of a lesson.

An end point nobody looks for is a hope. Pupils learn what it is by looking for it in one another,
and the teacher sees who has it.

Bad:
    no lesson names clear-start
    end_points: {clear-start: …}
Good:
    end_points: {clear-start: …}
    lesson 2: look_and_talk: {end_points: [clear-start], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each end point that no lesson looks for."""
    looked_for = {
        name
        for lesson in unit.lessons
        if lesson.look_and_talk
        for name in lesson.look_and_talk.end_points
    }
    for name in unit.end_points:
        if name not in looked_for:
            yield Finding(
                unit.file,
                ("end_points", name),
                f"the end point `{name}` is looked for in 0 of "
                f"{how_many(len(unit.lessons), 'lesson')}",
                f"write `{name}` under `end_points` in the `look_and_talk` of a lesson that works "
                "on it",
            )
