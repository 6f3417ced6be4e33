"""All that lists and the finder say of one unit: small, and kept without the unit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.school_years import ages
from build_tools.model.unit import Neighbours, Unit
from build_tools.views.dance.coverage import devices_done, met
from build_tools.views.finding.choices import CHOICES, MOVEMENT, Value
from build_tools.views.finding.unit_words import Strength, unit_words
from build_tools.views.lesson.sessions import LessonNeeds, lesson_needs

NO_AGE = (99, 99)
"""For a unit whose school years are not known."""


@dataclass(frozen=True, slots=True)
class Findable:
    """One unit as it is found. It depends on the unit and on the bank's settings alone."""

    slug: str
    title: str
    issued: str
    ages: tuple[int, int]
    """The youngest and the oldest of its pupils."""
    topics: tuple[str, ...]
    words: Mapping[str, Strength]
    """Every word that leads to it."""
    values: Mapping[str, tuple[Value, ...]]
    """What it has of each of `CHOICES`, by the list's name."""
    needs: tuple[LessonNeeds, ...]
    taught: tuple[str, ...]
    """Words of `MOVEMENT` that it teaches."""
    builds_on: Neighbours
    leads_to: Neighbours


def findable(bank: Bank, unit: Unit) -> Findable:
    """What is kept of `unit` to find it by."""
    taught = met(unit) | set(devices_done(unit))
    return Findable(
        slug=unit.slug,
        title=unit.title,
        issued=unit.issued,
        ages=ages(unit.years) or NO_AGE,
        topics=unit.topics,
        words=dict(sorted(unit_words(bank, unit).items())),
        values={choices.name: tuple(choices.of(bank, unit)) for choices in CHOICES},
        needs=lesson_needs(unit),
        taught=tuple(word for word in MOVEMENT if word in taught),
        builds_on=unit.builds_on,
        leads_to=unit.leads_to,
    )
