"""The lesson that a question names is the lesson that it looks back to.

The number stands twice: in the words that pupils hear and in `looks_back_to`. If the words say
lesson 1 and the field says 2, one of them was left behind when lessons moved.

Bad:
    {question: "What is clearer than in lesson 1?", looks_back_to: 2, …}
Good:
    {question: "What is clearer than in lesson 1?", looks_back_to: 1, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.numbered import lessons_said
from build_tools.views.words.plain_words import listed
from build_tools.views.written.questions import asked

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each question whose words name other lessons than its field."""
    for lesson in unit.lessons:
        for one in asked(lesson):
            said = lessons_said(one.text)
            back = one.question.looks_back_to
            if back is None or not said or back in said:
                continue
            named = listed([f"lesson {number}" for number in said])
            yield Finding(
                lesson.file,
                (*one.path[:-1], "looks_back_to"),
                f"the question names {named}, but `looks_back_to` is {back}",
                f"write `looks_back_to: {said[0]}`, or mend the question",
            )
