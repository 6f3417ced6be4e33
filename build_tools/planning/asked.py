"""What an adviser asks of a year plan."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

from build_tools.views.teaching.covers import YearOf


@dataclass(frozen=True, slots=True)
class Slot:
    """A run of lessons, one a week, that one unit can take."""

    term: str
    lessons: int
    starts: date | None = None
    """The day of its first lesson, where days are wanted."""


@dataclass(frozen=True, slots=True)
class Wish:
    """A topic that has to come, or a unit; in the slot numbered from 0, or anywhere (None)."""

    slot: int | None
    topic: str = ""
    unit: str = ""
    """A unit's folder."""

    def __str__(self) -> str:
        what = f"the topic “{self.topic}”" if self.topic else f"the unit “{self.unit}”"
        return what if self.slot is None else f"{what} in slot {self.slot + 1}"


@dataclass(frozen=True, slots=True)
class Asked:
    """A year group, its slots in their order, and what has to be so."""

    year: YearOf
    slots: tuple[Slot, ...]
    wishes: tuple[Wish, ...] = ()
    done: frozenset[str] = frozenset()
    """Units that the class has had already, by their folders: they are not planned again."""
    days_off: frozenset[date] = field(default_factory=frozenset)
    """Days without a lesson; the lesson then comes a week later."""
