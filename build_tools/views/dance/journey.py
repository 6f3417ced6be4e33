"""Each motif's way through the unit: in which lesson it is made, changed, danced and shown."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.views.dance.progress import Progress, progress

DEEDS = ("made", "changed", "danced", "shown")


@dataclass(frozen=True, slots=True)
class Stop:
    """What is done with a motif in one lesson, in the order of `DEEDS`."""

    lesson: int
    deeds: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Journey:
    """One motif and its stops, in the order of the lessons."""

    motif: str
    stops: tuple[Stop, ...]


def journeys(unit: Unit) -> tuple[Journey, ...]:
    """The journey of every motif. What is made from a motif counts as the motif changed."""
    found = progress(unit)
    return tuple(
        Journey(
            motif,
            tuple(
                Stop(number, deeds)
                for number in dict.fromkeys(lesson.number for lesson in unit.lessons)
                if (deeds := _deeds(found[motif], number))
            ),
        )
        for motif in unit.dance.motifs
    )


def _deeds(way: Progress, lesson: int) -> tuple[str, ...]:
    places = (way.made, way.developed, way.danced, way.shown)
    return tuple(
        deed
        for deed, steps in zip(DEEDS, places, strict=True)
        if any(place.lesson == lesson for place in steps)
    )
