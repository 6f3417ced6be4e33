"""The questions of a lesson, and what kind of answer each asks for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Question
from build_tools.problem import FieldPath
from build_tools.sentences import asking
from build_tools.sentences.asking import COMPARES


@dataclass(frozen=True, slots=True)
class AskedQuestion:
    """One question with its place in the lesson's file.

    `step` is the index of the step in which it is asked, from 0; None in `look_and_talk`.
    """

    path: FieldPath
    step: int | None
    question: Question

    @property
    def text(self) -> str:
        """The question as it is written."""
        return self.question.question


def asked(lesson: Lesson) -> Iterator[AskedQuestion]:
    """Every question of the lesson: those of its steps in order, then those of its talk."""
    for n, step in enumerate(lesson.steps):
        for k, question in enumerate(step.ask):
            yield AskedQuestion(("steps", n, "ask", k, "question"), n, question)
    if lesson.look_and_talk:
        for k, question in enumerate(lesson.look_and_talk.questions):
            yield AskedQuestion(("look_and_talk", "questions", k, "question"), None, question)


def judges(question: Question) -> bool:
    """Whether it asks what was good or bad, and not what was seen.

    One that compares with an earlier lesson does not judge: it asks what has changed.
    """
    return question.looks_back_to is None and asking.judges(question.question)


def looks_back(question: Question) -> bool:
    """Whether it compares with earlier work, by its field or in its words."""
    return question.looks_back_to is not None or bool(COMPARES.mentioned(question.question))
