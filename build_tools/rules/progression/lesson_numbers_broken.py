"""Lessons are numbered 1, 2, 3 and so on, each by its file's name and by `lesson` alike.

A teacher who finds lesson 2 and then lesson 4 cannot know whether one is lost. Lessons build on
each other, so their order is the unit.

Bad:
    lesson-3.md: lesson: 4
Good:
    lesson-3.md: lesson: 3
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = "common practice, no source"

_NUMBER = re.compile(r"lesson-([0-9]+)\.md\Z")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where a file's two numbers differ, and after each gap between files."""
    by_number = {}
    for lesson in unit.lessons:
        found = _NUMBER.search(lesson.file)
        named = int(found.group(1)) if found else lesson.number
        by_number[named] = lesson
        if lesson.number != named:
            yield Finding(
                lesson.file,
                ("lesson",),
                f"`lesson` is {lesson.number}, but the file is lesson-{named}.md",
                f"write `lesson: {named}`, or rename the file",
            )
    last = 0
    for named in sorted(by_number):
        missing = [str(n) for n in range(last + 1, named)]
        if missing:
            there = listed([str(n) for n in sorted(by_number)])
            yield Finding(
                by_number[named].file,
                ("lesson",),
                f"lesson {listed(missing)} is missing before lesson {named}: the unit has "
                f"lessons {there}",
                f"put lesson {missing[0]} back, or number this lesson {last + 1}",
            )
        last = named
