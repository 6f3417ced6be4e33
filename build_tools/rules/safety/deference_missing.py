"""Each lesson, or the unit, says that the school's own risk assessment comes first.

A unit is written for halls and pupils its author has never seen. The teacher in the room, the
school's risk assessment and the employer's policy decide.

Bad:
    safety: [Check the floor is dry and clear.]
Good:
    safety: [Your school's risk assessment comes first., Check the floor is dry and clear.]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.care import DEFERENCE

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Central Bedfordshire Council, 2013: where guidance differs, the local authority's guidance "
    "takes priority"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that defers to nobody, unless the unit's notes do."""
    if DEFERENCE.mentioned(unit.notes):
        return
    for lesson in unit.lessons:
        if any(DEFERENCE.mentioned(text) for text in (*lesson.safety, lesson.notes)):
            continue
        many = len(lesson.safety)
        yield Finding(
            lesson.file,
            ("safety",),
            f"none of the {many} safety lines of lesson {lesson.number} names the school's own "
            "risk assessment"
            if many > 1
            else f"the safety line of lesson {lesson.number} does not name the school's own risk "
            "assessment",
            "add a line under `safety`: your school's risk assessment comes first",
        )
