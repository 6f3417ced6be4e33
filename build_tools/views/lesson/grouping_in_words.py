"""How pupils are grouped, in a teacher's words."""

from __future__ import annotations

from build_tools.page_words.words import N_, _, of_schema

GROUPINGS = {
    "alone": N_("each pupil alone"),
    "half class": N_("half the class at a time"),
    "whole class": N_("the whole class together"),
}


def grouping_in_words(grouping: str) -> str:
    """A step's grouping: in pairs, each pupil alone, half the class at a time."""
    known = GROUPINGS.get(grouping)
    return _(known) if known else _("in {groups}", groups=of_schema(grouping))
