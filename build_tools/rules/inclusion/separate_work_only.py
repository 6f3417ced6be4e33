"""Where a lesson offers changes, at least one keeps pupils in the dance with everyone else.

Work apart from the class is sometimes right, and it should not be most of what there is. A sign
that can be seen, somebody else to dance with or a task done seated lets more pupils dance the same
dance.

Bad:
    change: {task: Works separately with an adult in the corner.}
Good:
    change: {task: Dance it seated; let hands or head open., partners: Two share one number.}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.about_pupils import APART, TOGETHER
from build_tools.views.lesson.changes import changes

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Black and Stevenson, The Inclusion Spectrum, 2011: alternate or separate activity should not "
    "be most of the time"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson all of whose changes take pupils apart from the class."""
    for lesson in unit.lessons:
        lines = [(path, text) for path, text in changes(lesson) if path[-1] != "harder"]
        if not lines or not all(_apart(text) for _, text in lines):
            continue
        number = len(lines)
        yield Finding(
            lesson.file,
            lines[0][0],
            f"lesson {lesson.number} offers {number} {'change' if number == 1 else 'changes'}, and "
            f"{'it takes' if number == 1 else 'all of them take'} pupils apart from the class",
            "add one change that keeps everyone in the dance, such as dancing it seated",
        )


def _apart(text: str) -> bool:
    return APART.said(text) is not None and TOGETHER.said(text) is None
