"""A question as pages show it."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Question
from build_tools.views.lesson.lesson_wording import (
    answers_in_words,
    looks_back_in_words,
    question_said,
)


@dataclass(frozen=True, slots=True)
class QuestionView:
    """One question."""

    question: str
    """The question, as you ask it."""
    answers: str | None
    """Answers pupils may give, with a full stop at their end."""
    looks_back: str | None
    """The lesson it looks back to, in words."""


def question_view(question: Question, lesson: Lesson) -> QuestionView:
    """A question as the page shows it."""
    return QuestionView(
        question_said(question, lesson),
        answers_in_words(question),
        looks_back_in_words(question),
    )
