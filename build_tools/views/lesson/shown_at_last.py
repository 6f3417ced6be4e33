"""Who shows whom in the last minute of a step in which something was made.

Common practice, no source.
"""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.page_words.words import N_, _
from build_tools.views.lesson.where_it_stands import on_spots

_AT_LAST = {
    "alone": N_("In the last minute, each pupil shows a neighbour."),
    "pairs": N_("In the last minute, each pair shows another; a pair left joins two."),
    "threes": N_("In the last minute, each three shows another; a three left joins two."),
    "fours": N_("In the last minute, each four shows another; a four left joins two."),
    "fives": N_("In the last minute, each five shows another; a five left joins two."),
    "sixes": N_("In the last minute, each six shows another; a six left joins two."),
    "half class": N_("In the last minute, each half shows the other."),
    "whole class": N_("In the last minute, half the class shows the other half."),
}
_ON_SPOTS = {
    "pairs": N_(
        "In the last minute, every second pair stops and looks at one near it; then change."
    ),
    **{
        name: N_(
            "In the last minute, every second group stops and looks at one near it; then change."
        )
        for name in ("threes", "fours", "fives", "sixes")
    },
}
"""On the spots of the dance they stand in its rows and lines, and nobody has to find anybody."""


def shown_at_last(lesson: Lesson, index: int) -> str:
    """What is said of the last minute of a step, the `index` of which counts from 0."""
    grouping = lesson.steps[index].grouping
    if grouping in _ON_SPOTS and on_spots(lesson, index):
        return _(_ON_SPOTS[grouping])
    return _(_AT_LAST[grouping])
