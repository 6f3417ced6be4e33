"""The last lesson looks for every end point of the unit.

The last lesson is where the teacher sees what every pupil can now do. An end point looked for only
earlier is one that nobody knows about at the end.

Bad:
    lesson 6 of 6: end_points: [clear-start], and the unit has clear-start and in-time
Good:
    lesson 6 of 6: end_points: [clear-start, in-time]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "no-look-and-talk", "end-point-never-looked-for")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if the last of two lessons or more leaves end points out."""
    last = unit.lessons[-1] if len(unit.lessons) > 1 else None
    if last is None or last.look_and_talk is None:
        return
    missing = [name for name in unit.end_points if name not in last.look_and_talk.end_points]
    if not missing:
        return
    there = len(unit.end_points) - len(missing)
    yield Finding(
        last.file,
        ("look_and_talk", "end_points") if last.look_and_talk.end_points else ("look_and_talk",),
        f"lesson {last.number} is the last, and it looks for {there} of the "
        f"{len(unit.end_points)} end points: {listed([f'`{n}`' for n in missing])} "
        f"{'is' if len(missing) == 1 else 'are'} left out",
        f"add {listed([f'`{n}`' for n in missing])} to its `end_points`",
    )
