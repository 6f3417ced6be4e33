"""A question as pages show it."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Question


@dataclass(frozen=True, slots=True)
class QuestionView:
    """One question."""

    question: str
    """The question, as you ask it."""
    answers: str | None
    """Answers pupils may give, with a full stop at their end."""
    looks_back: str | None
    """The lesson it looks back to, in words."""


def question_view(question: Question) -> QuestionView:
    """A question as the page shows it."""
    back = question.looks_back_to
    return QuestionView(
        question.question,
        _stopped("; ".join(question.answers)) or None,
        f"looks back to lesson {back}" if back else None,
    )


def _stopped(words: str) -> str:
    return words if not words or words.endswith((".", "?", "!")) else f"{words}."
