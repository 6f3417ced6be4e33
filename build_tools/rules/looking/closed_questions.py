"""Every lesson asks at least one question that yes or no cannot answer.

To "did it work?" a class says yes, and the teacher has learnt nothing. To "what did you see?" it
has to look.

Bad:
    questions:
      - question: Were the freezes still?
Good:
    questions:
      - question: What was quite still, and what moved?
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.asking import is_closed
from build_tools.views.written.questions import asked

GRADE: Grade = "question"
READS = "en"
SOURCE = "Lerman and Borstel, 2003: questions that can be answered freely, with no opinion built in"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson all of whose questions can be answered with yes or no."""
    for lesson in unit.lessons:
        questions = list(asked(lesson))
        if not questions or not all(is_closed(one.text) for one in questions):
            continue
        number = len(questions)
        yield Finding(
            lesson.file,
            questions[-1].path,
            f"lesson {lesson.number} asks {number} "
            + (
                "question, and yes or no answers it"
                if number == 1
                else "questions, and yes or no answers every one"
            ),
            "start one with what, which or how, such as: what did you see the group do?",
        )
