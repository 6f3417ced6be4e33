"""What a step tells teacher and pupils."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step


def told(step: Step) -> Iterator[str]:
    """Its texts in the order of the page, its questions among them; changes for some are none."""
    yield step.does
    yield from (text for text in (step.into, step.say) if text)
    yield step.task
    yield from (text for text in (step.you, step.look_for) if text)
    yield from (question.question for question in step.ask)
