"""Whether a step goes with music, by its own words."""

from __future__ import annotations

import re

from build_tools.model.lesson import Step

_NONE = re.compile(
    r"\b(?:with no|no|without(?: the| any)?) (?:music|tune|recording|sound)\b", re.IGNORECASE
)
_THEN_PLAYS = re.compile(r"\bplay (?:it|the|from|to)\b", re.IGNORECASE)
_TO_IT = re.compile(r"\b(?:music|tune|recording)\b", re.IGNORECASE)


def without_music(step: Step) -> bool:
    """Whether its words say that it goes without the music, and never that it is played."""
    said = _said(step)
    return bool(_NONE.search(said)) and not _THEN_PLAYS.search(said)


def speaks_of_music(step: Step) -> bool:
    """Whether its words have the class move to the music, or the teacher play it."""
    return bool(_TO_IT.search(_said(step))) and not without_music(step)


def _said(step: Step) -> str:
    return "\n".join(filter(None, (step.does, step.say, step.task, step.you)))
