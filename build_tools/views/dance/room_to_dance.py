"""How a class dances in a hall with nobody in a wall: all at once, or what to change for it.

Asked of the paths that everybody goes, not of the square metres alone: a small group scattered over
a small hall still meets its walls. `site_overrides/sums/floor-room.js` does the same on the pages,
for the class and the hall of the day, and generated dances hold the two together.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.paths.hall import Hall
from build_tools.paths.leaving import leaving_the_hall
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.lesson.floor_recommended import has_room_for, recommended_least
from build_tools.views.words.plain_words import listed

SHORTER = 0.5
"""How long a travelling step is where children are told to halve it."""
MOST_TURNS = 4
"""Parts of a class that dance turn about; in more, most would sit. Common practice, no source."""
_MARK = "Chalk a line one big step from each wall; who reaches it dances on the spot."
_SMALL = "The floor is too small for all to dance at once."
_PARTS = {
    2: "Let half dance while half watch, then swap",
    3: "Dance in three parts of the class, turn about",
    4: "Dance in four parts of the class, turn about",
}

Drawn = Callable[[int, Hall, float], Paths]
"""The dance by so many pupils in a hall, with steps that are so many times as long."""


@dataclass(frozen=True, slots=True)
class Room:
    """What is enough for a class in a hall."""

    pupils: int
    hall: Hall
    found: bool
    """False where not even the last way of all is enough."""
    turns: int
    """In how many parts of the class, turn about; 1 for all at once."""
    turned: bool
    """Whether the front is along the other walls."""
    stride: float
    """How long a travelling step is, beside its own length."""
    enough: bool
    """Whether all have the recommended square metres at once."""
    leaving: tuple[tuple[str, int], ...]
    """Who would meet a wall if all danced at once, as it is drawn: how many, in which section."""


def unit_room(unit: Unit, pupils: int = USUAL_CLASS, hall: Hall | None = None) -> Room:
    """How the unit's dance is danced by so many pupils of its age in `hall`."""
    age, joined = middle_age(unit), joined_in_lessons(unit)

    def drawn(many: int, where: Hall, stride: float) -> Paths:
        return paths_of(unit.dance, many, where, age, joined=joined, stride=stride)

    return room_to_dance(drawn, pupils, hall or Hall(), recommended_least(unit.years))


def room_to_dance(drawn: Drawn, pupils: int, hall: Hall, least: int) -> Room:
    """The least change that lets all dance with nobody in a wall; `least` is m² for each pupil."""
    holds = has_room_for(hall.width * hall.depth, least)
    first = math.ceil(pupils / holds) if holds else MOST_TURNS + 1
    leaving = _leaving(drawn(pupils, hall, 1.0))
    for turns in range(first, MOST_TURNS + 1):
        dancing = math.ceil(pupils / turns)
        for turned, stride in ((False, 1.0), (True, 1.0), (False, SHORTER), (True, SHORTER)):
            if turned and hall.width == hall.depth:
                continue
            where = Hall(hall.depth, hall.width) if turned else hall
            if not _leaving(drawn(dancing, where, stride)):
                return Room(pupils, hall, True, turns, turned, stride, first == 1, leaving)
    return Room(pupils, hall, False, 1, False, 1.0, first == 1, leaving)


def _leaving(paths: Paths) -> tuple[tuple[str, int], ...]:
    """How many go through a wall in each counted section, where it is fullest."""
    many: dict[int, int] = {}
    for beyond in leaving_the_hall(paths):
        many[beyond.stretch] = many.get(beyond.stretch, 0) + 1
    found: dict[str, int] = {}
    for n in sorted(many):
        section = paths.stretches[n].section
        if section is not None:
            found[section.letter] = max(many[n], found.get(section.letter, 0))
    return tuple(found.items())


def room_in_words(room: Room) -> str:
    """The same as one or two sentences."""
    parts = [
        f"{many}{_pupils(n, many)} in part {part}" for n, (part, many) in enumerate(room.leaving)
    ]
    told = listed(parts)
    walls = f"If all danced at once as it is drawn, {told} would meet a wall." if told else ""
    small = "" if room.enough else _SMALL
    if not room.found:
        return " ".join(filter(None, (small or walls, _MARK)))
    how = []
    if room.turned:
        short = room.hall.depth < room.hall.width
        how.append(f"with {'a short' if short else 'a long'} wall as the front")
    if room.stride != 1:
        how.append("with every travelling step half as long")
    who = _PARTS.get(room.turns, f"All {room.pupils} can dance at once")
    opening = f"{who}{', ' if how else ''}{' and '.join(how)}."
    why = small if room.turns > 1 and small else walls if how or room.turns > 1 else ""
    return " ".join(filter(None, (opening, why)))


def _pupils(n: int, many: int) -> str:
    return "" if n else " pupil" if many == 1 else " pupils"
