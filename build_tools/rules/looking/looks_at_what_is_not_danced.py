"""What pupils look at is danced in the lesson.

`at` says what the watchers watch. If it names a part that no step of the lesson dances or shows,
it has been copied from another lesson, and pupils look for something that is not there.

Bad:
    lesson 1: at: part C
Good:
    lesson 1: at: part A
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.progress import held, names_in
from build_tools.views.words.parts_said import parts_said

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose watchers look at parts that it does not dance."""
    for lesson in unit.lessons:
        if lesson.look_and_talk is None:
            continue
        danced = held(unit.dance, tuple(n for step in lesson.steps for n in names_in(step)))
        named = parts_said(unit, lesson.look_and_talk.at)
        if not danced or not named or any(one.parts & danced for one in named):
            continue
        yield Finding(
            lesson.file,
            ("look_and_talk", "at"),
            f"pupils look at `{named[0].said}`, but none of the {len(lesson.steps)} steps of "
            f"lesson {lesson.number} dances or shows it",
            "name what is danced while they look",
        )
