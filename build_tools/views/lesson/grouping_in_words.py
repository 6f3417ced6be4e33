"""How pupils are grouped, in a teacher's words."""

from __future__ import annotations

GROUPINGS = {
    "alone": "each pupil alone",
    "half class": "half the class at a time",
    "whole class": "the whole class together",
}


def grouping_in_words(grouping: str) -> str:
    """A step's grouping: in pairs, each pupil alone, half the class at a time."""
    return GROUPINGS.get(grouping, f"in {grouping}")
