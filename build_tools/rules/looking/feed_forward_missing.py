"""Somewhere in the unit pupils are asked what to keep, change or make clearer next.

Looking back tells pupils how it went; the question that makes a dance better is the one about next
time. It comes least often of all the questions teachers ask.

Bad:
    every lesson: questions: [{question: "What did you see first?", …}]
Good:
    every lesson: questions: [{question: "What could make the slow wave clearer next time?", …}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.asking import asks_where_to_next
from build_tools.views.written.questions import asked

GRADE: Grade = "note"
READS = "en"
SOURCE = (
    "Hattie and Timperley, The Power of Feedback, 2007; Brooks and others, Australian Journal of "
    "Teacher Education 44(4), 2019: feeding forward occurs least"
)
NEEDS = ("no-look-and-talk",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one note if no question of the unit asks where to go from here."""
    questions = [one.text for lesson in unit.lessons for one in asked(lesson)]
    if not questions or any(asks_where_to_next(question) for question in questions):
        return
    last = unit.lessons[-1]
    yield Finding(
        last.file,
        ("look_and_talk", "questions"),
        f"none of the unit's {len(questions)} questions asks what to keep or change next",
        "add one such as: next time, what would make it clearer?",
    )
