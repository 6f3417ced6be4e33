"""Whether two texts or steps say the same, letter for letter, whatever stands round the words."""

from __future__ import annotations

from build_tools.model.lesson import Step


def same_words(text: str | None) -> str:
    """A text without capitals, spare spaces and its full stop, for comparing it with another."""
    return " ".join((text or "").casefold().split()).rstrip(".")


def same_step(step: Step) -> tuple[str, str]:
    """What a step does and asks of pupils, for comparing it with another."""
    return same_words(step.does), same_words(step.task)
