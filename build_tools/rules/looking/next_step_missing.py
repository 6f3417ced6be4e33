"""Looking and talking ends with the next step: where to start if it was seen, and if not yet.

What a class showed today decides where the next lesson starts. Without it, the next teacher starts
from the page instead of from the pupils. In the last lesson it says where the class goes from here.

Bad:
    a talk that ends with its questions
Good:
    next: {seen: start from the whole wave, not_yet: start from two moves}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "Hattie and Timperley, The Power of Feedback, 2007: where to next is one of three questions"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that looks and talks and names no next step."""
    last = max(lesson.number for lesson in unit.lessons)
    for lesson in unit.lessons:
        if lesson.look_and_talk is None or lesson.look_and_talk.next:
            continue
        after = (
            f"where lesson {lesson.number + 1} starts"
            if lesson.number < last
            else "where the class goes from here"
        )
        yield Finding(
            lesson.file,
            ("look_and_talk",),
            f"lesson {lesson.number} looks and talks, but does not say {after}",
            "add `next` with two lines: `seen` and `not_yet`",
        )
