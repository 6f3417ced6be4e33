"""What an author says before a draft is written, and what the bank says."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.school_years import ages
from build_tools.model.unit import SchoolYears

PATTERNS: Mapping[str, str] = {
    "section-a-lesson": "make one section in each lesson, then join them",
    "one-theme": "make one motif, and a variation of it in each lesson",
    "pupils-order": "make sections, and pupils decide their order",
    "existing-dance": "learn a dance that is there already, then add your own version",
    "within-rules": "make one motif, then improvise with it within rules",
}
"""The patterns of the trade, by name. Common practice, no source; none is required."""
LESSONS = range(1, 9)
MINUTES = range(20, 91)
KINDS = ("see", "hear", "touch", "do", "think about")
_SEVEN = 7


@dataclass(frozen=True, slots=True)
class Asked:
    """What the author says. `minutes` is the length of each lesson."""

    title: str
    stimulus: str
    kinds: tuple[str, ...]
    years: tuple[SchoolYears, ...]
    lessons: int
    minutes: int
    pattern: str

    @property
    def young(self) -> bool:
        """Whether the youngest pupils start the year under seven."""
        span = ages(self.years)
        return span is not None and span[0] < _SEVEN

    @property
    def making_lessons(self) -> int:
        """How many lessons make something: the last, and from five on the one before, do not."""
        return max(1, self.lessons - (2 if self.lessons >= 5 else 1))


@dataclass(frozen=True, slots=True)
class BankFacts:
    """What a draft takes from its bank. `as_of` is a day, year-month-day."""

    name: str
    as_of: str
    topics: tuple[str, ...]
    """The topics the draft starts with."""
