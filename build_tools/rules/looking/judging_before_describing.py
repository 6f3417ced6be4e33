"""Pupils say what they saw before they say what was good.

Who has said "their elbows opened one after another" can say why it was good. Who starts with the
best group has stopped looking, and the dancers have heard nothing they can use.

Bad:
    question: Which group was best?
Good:
    question: What did you see first, second, third?
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.questions import asked, judges

GRADE: Grade = "question"
SOURCE = "Lerman and Borstel, 2003: what was seen and what it meant comes first, opinions come last"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose talk starts with a question of good or bad."""
    for lesson in unit.lessons:
        talk = lesson.look_and_talk
        if talk is None or not judges(talk.questions[0]):
            continue
        if any(
            one.step is not None
            and lesson.steps[one.step].phase in ("show", "look and talk")
            and not judges(one.question)
            for one in asked(lesson)
        ):
            continue
        yield Finding(
            lesson.file,
            ("look_and_talk", "questions", 0, "question"),
            f"the first of the {len(talk.questions)} questions asks what was good, before anyone "
            "has said what they saw"
            if len(talk.questions) > 1
            else "the only question (1 of 1) asks what was good, and nobody is asked what they saw",
            "ask first what pupils saw, such as: what did you see move, and what stayed still?",
        )
