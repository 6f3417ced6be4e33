"""A sheet of paper as the style sheet lesson.css sets it: its lengths, in points, and its words."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.views.paper.printed import Runs
from build_tools.views.paper.typeface import lines

MM = 72 / 25.4
HIGH = (297 - 15 - 18.5) * MM
WIDE = (210 - 20 - 17.5) * MM
_GAP, PICTURE_GAP, PICTURE = 6 * MM, 5 * MM, 85 * MM
HALF = (WIDE - _GAP) / 2
BESIDE_PICTURE = WIDE - PICTURE - PICTURE_GAP
HEADING = 1.2
"""The leading of headings."""
SAID_LEADING = 1.15


@dataclass(frozen=True, slots=True)
class Setting:
    """How words are set: their size, their leading, and what runs on to save room."""

    points: float
    leading: float
    tight: bool = False
    """Whether tasks and questions run on, and the kind of step is left out."""
    rows: bool = False
    """Whether where to start next time has lines of its own."""
    said_leading: float = SAID_LEADING

    @property
    def line(self) -> float:
        """From one line to the next."""
        return self.points * self.leading


def words_high(runs: Runs, wide: float, setting: Setting, indent: float = 0.0) -> float:
    """How high a paragraph of that width is, its first line shorter by `indent`."""
    return lines(runs, wide, setting.points, indent) * setting.line
