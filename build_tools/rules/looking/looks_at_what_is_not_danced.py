"""What pupils look at is danced in the lesson.

`at` says what the watchers watch. If it names a part that no step of the lesson dances or shows,
it has been copied from another lesson, and pupils look for something that is not there. Nor do they
look for an end point of a part of which nothing is made yet.

Bad:
    lesson 1: at: part C
Good:
    lesson 1: at: part A
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, LookAndTalk
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import held, inside, names_in
from build_tools.views.words.parts_said import first_made, parts_said

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose watchers look at parts that it does not dance."""
    for lesson in unit.lessons:
        if lesson.look_and_talk is None:
            continue
        yield from _too_soon(unit, lesson, lesson.look_and_talk)
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


def _too_soon(unit: Unit, lesson: Lesson, talk: LookAndTalk) -> Iterator[Finding]:
    """Yield a finding for each end point of a part of which nothing is made by this lesson."""
    for n, name in enumerate(talk.end_points):
        if (end := unit.end_points.get(name)) is None:
            continue
        for one in parts_said(unit, f"{end.every_pupil}. {end.looks_like}"):
            if not one.parts & unit.dance.sections.keys():
                continue
            parts = inside(unit.dance, one.parts)
            first = first_made(unit, parts)
            if first is not None and first.lesson > lesson.number:
                yield Finding(
                    lesson.file,
                    ("look_and_talk", "end_points", n),
                    f"pupils look for `{name}`, which tells of `{one.said}`, and nothing of that "
                    f"is made before {first}",
                    "look for an end point of what the lesson dances",
                )
                break
