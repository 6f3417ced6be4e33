"""The subjects a unit links to are subjects that schools teach.

A teacher looks for a dance that goes with this half term's science or history. Under a name that is
no subject, or one with a slip in it, nobody finds the unit.

Bad:
    subjects: [Goegraphy]
Good:
    subjects: [Geography]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest
from build_tools.views.words.open_places import MARK

GRADE: Grade = "question"
SOURCE = (
    "the subjects of the national curricula for England (2013), Northern Ireland (2007), Wales "
    "(2022) and Scotland (2010), from memory"
)

_SUBJECTS = (
    *("Art", "Art and design", "Citizenship", "Computing", "Dance", "Design and technology"),
    *("Drama", "English", "Expressive arts", "Gaelic", "Geography", "Health and wellbeing"),
    *("History", "Humanities", "Information and communication technology", "Irish"),
    *("Languages", "Language and literacy", "Literacy", "Literature", "Mathematics", "Maths"),
    *("Media", "Modern languages", "Music", "Numeracy", "Outdoor learning"),
    *("Personal development", "Personal and social education"),
    *("Personal, social, health and economic education", "PSHE"),
    *("Physical education", "Religion, values and ethics", "Religious education"),
    *("Religious and moral education", "Relationships and sexuality education", "Science"),
    *("Science and technology", "Social studies", "Technologies", "The arts"),
    *("The world around us", "Understanding the world", "Communication and language"),
    *("Welsh", "World languages", "French", "German", "Spanish", "Italian", "Latin", "Mandarin"),
    *("Celf", "Cymraeg", "Daearyddiaeth", "Gwyddoniaeth", "Hanes", "Mathemateg", "Cerddoriaeth"),
)
_KNOWN = {subject.casefold() for subject in _SUBJECTS}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each subject that is none of those taught in the four nations."""
    for number, subject in enumerate(unit.subjects):
        if subject.casefold() in _KNOWN or MARK in subject:
            continue
        near = nearest(subject, _SUBJECTS)
        yield Finding(
            unit.file,
            ("subjects", number),
            f"`{subject}` is no school subject that is known here",
            f"did you mean {near}?" if near else "name the subject as your timetable does",
        )
