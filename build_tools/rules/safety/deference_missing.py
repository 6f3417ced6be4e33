"""The unit says once that the school's own risk assessment comes first.

A unit is written for halls and pupils its author has never seen. The teacher in the room, the
school's risk assessment and the employer's policy decide. Said once it is read; said in every
lesson it is passed over.

Bad:
    no line in any lesson names the school's own
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
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Central Bedfordshire Council, 2013: where guidance differs, the local authority's guidance "
    "takes priority"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding for a unit of which neither the notes nor a lesson defers to anybody."""
    texts = (unit.notes, *(t for one in unit.lessons for t in (*one.safety, one.notes)))
    if not unit.lessons or DEFERENCE.in_any(texts):
        return
    first = unit.lessons[0]
    many = sum(len(lesson.safety) for lesson in unit.lessons)
    yield Finding(
        first.file,
        ("safety",) if len(first.safety) > first.standing else (),
        f"none of the {many} safety lines in {how_many(len(unit.lessons), 'lesson')} names the "
        "school's own risk assessment"
        if many
        else "no line under `safety` of the unit or of a lesson, and nothing in the notes, names "
        "the school's own risk assessment",
        "write under `safety` of the unit: your school's risk assessment comes first"
        if not many
        else "add a line under `safety` of lesson 1: your school's risk assessment comes first",
    )
