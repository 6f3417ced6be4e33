"""Who looks changes in the course of the unit: a partner, another group, half the class, yourself.

Each way of looking shows something else: a partner sees a foot, half the class sees a formation.
Where everyone always looks in the same way, the same few speak. Units of up to three lessons, and
units for pupils under five, are left alone.

Bad:
    every lesson: look_and_talk: {who: half the class, …}
Good:
    lesson 1: look_and_talk: {who: partner, …}
    lesson 2: look_and_talk: {who: another group, …}
    lesson 6: look_and_talk: {who: half the class, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
FEWEST_LESSONS = 4
YOUNGEST = 5
"""Years of age: under this, a class looks together."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if all of four or more lessons have the same pupils looking."""
    looking = [lesson for lesson in unit.lessons if lesson.look_and_talk]
    who = {lesson.look_and_talk.who for lesson in looking if lesson.look_and_talk}
    if len(looking) < FEWEST_LESSONS or len(who) > 1:
        return
    known = ages(unit.years)
    if known and known[1] <= YOUNGEST:
        return
    yield Finding(
        looking[1].file,
        ("look_and_talk", "who"),
        f"in all {len(looking)} lessons that look and talk, those who look are the same: "
        f"`{who.pop()}`",
        "let pupils look in another way in one lesson, such as a partner or another group",
    )
