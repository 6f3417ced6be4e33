"""What the halves are of a step that half the class dances, by the words that get it into them."""

from __future__ import annotations

import re
from typing import Literal

from build_tools.model.lesson import Step
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.groups_told import tells_who_sits

Halves = Literal["teams", "in each group", "as told"]

_TEAMS = re.compile(r"\b(?:teams?|tîm|timau)\b", re.IGNORECASE)
_IN_EACH = re.compile(
    r"\b(?:ones|twos)\b|\b(?:front|back) pairs\b|\b(?!this |that |one |each )\w+ side,",
    re.IGNORECASE,
)
"""Those who are halves of every group: ones and twos, the door side of each pair."""


def halves_said(step: Step) -> Halves | None:
    """Teams, which are the same in every lesson, or halves of each group, or of groups as told.

    None where the step's words say nothing of it.
    """
    if step.into is None:
        return None
    if _TEAMS.search(step.into):
        return "teams"
    if step.grouping == "half class" and _IN_EACH.search(step.into):
        return "in each group"
    if step.shows and step.grouping in GROUP_SIZES and tells_who_sits(step):
        return "as told"
    return None
