"""What the halves are of a step that half the class dances, by the words that get it into them."""

from __future__ import annotations

import re
from typing import Literal

from build_tools.model.lesson import Step

Halves = Literal["teams", "in each group"]

_TEAMS = re.compile(r"\b(?:teams?|tîm|timau)\b", re.IGNORECASE)
_IN_EACH = re.compile(
    r"\b(?:ones|twos)\b|\b(?:front|back) pairs\b|\b(?!this |that |one |each )\w+ side,",
    re.IGNORECASE,
)
"""Those who are halves of every group: ones and twos, the door side of each pair."""


def halves_said(step: Step) -> Halves | None:
    """Teams, which are the same in every lesson, or halves of each group; None of neither."""
    if step.into is None:
        return None
    if _TEAMS.search(step.into):
        return "teams"
    if step.grouping == "half class" and _IN_EACH.search(step.into):
        return "in each group"
    return None
