"""How a class dances in a hall clear of its walls and one another: at once, or what to change.

Asked of the places and paths that everybody has, not of the square metres alone: a small group
scattered over a small hall still meets its walls, and a formation drawn together until it fits
leaves gaps smaller than the dance asks. Who watches in turns needs floor to sit on. Steps are
halved only where they are no distance to somebody or to a place.
`site_overrides/sums/floor-room-to-dance.js` does the same on the pages, for the class and the hall
of the day, and generated dances hold the two together.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache, partial
from itertools import product

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.words import N_, _, ngettext
from build_tools.paths.hall import Hall
from build_tools.paths.leaving import too_near_a_wall
from build_tools.paths.model import Paths
from build_tools.paths.reached import ASKED_OF, steps_reach
from build_tools.paths.squeezed import squeezed
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.dance.recommended_metres import has_room_for, recommended_least
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.words.plain_words import listed

SHORTER = 0.5
"""How long a travelling step is where children are told to halve it."""
MOST_TURNS = 4
"""Parts of a class that dance turn about; in more, most would sit. Common practice, no source."""
_MARK = N_("Chalk a line one big step from each wall; who reaches it dances on the spot.")
_CLOSE = N_("Not even a quarter of the class has the room it needs: dance it on the spot.")
_SMALL = N_("The floor is too small for all to dance at once.")
_PARTS = {
    2: N_("Let half dance while half watch, then swap"),
    3: N_("Dance in three parts of the class, turn about"),
    4: N_("Dance in four parts of the class, turn about"),
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
    """Who would come too near a wall if all danced at once: how many, in which section."""
    closer: tuple[str, ...]
    """The sections in which all would stand closer than the dance asks."""


def unit_room(unit: Unit, pupils: int = USUAL_CLASS, hall: Hall | None = None) -> Room:
    """How the unit's dance is danced by so many pupils of its age in `hall`."""
    return room_to_dance(
        partial(_drawn, unit), pupils, hall or Hall(), recommended_least(unit.years)
    )


@lru_cache(maxsize=16)
def _drawn(unit: Unit, pupils: int, hall: Hall, stride: float) -> Paths:
    """The unit's dance; for one hall after another the same is asked again and again."""
    joined = joined_in_lessons(unit)
    return paths_of(unit.dance, pupils, hall, middle_age(unit), joined=joined, stride=stride)


def room_to_dance(drawn: Drawn, pupils: int, hall: Hall, least: int) -> Room:
    """The least change that leaves everybody their room; `least` is m² for each pupil."""
    holds = has_room_for(hall.width * hall.depth, least)
    first = math.ceil(pupils / holds) if holds else MOST_TURNS + 1
    as_drawn = drawn(pupils, hall, 1.0)
    leaving, closer = _leaving(as_drawn, watched=False), squeezed(as_drawn)
    strides = (1.0,) if steps_reach(drawn(*ASKED_OF, 1.0)) else (1.0, SHORTER)
    for turns in range(first, MOST_TURNS + 1):
        dancing = math.ceil(pupils / turns)
        for stride, turned in product(strides, (False, True)):
            if turned and hall.width == hall.depth:
                continue
            where = Hall(hall.depth, hall.width) if turned else hall
            paths = drawn(dancing, where, stride)
            if not squeezed(paths) and not _leaving(paths, watched=turns > 1):
                return Room(pupils, hall, True, turns, turned, stride, first == 1, leaving, closer)
    return Room(pupils, hall, False, 1, False, 1.0, first == 1, leaving, closer)


def _leaving(paths: Paths, *, watched: bool) -> tuple[tuple[str, int], ...]:
    """How many come too near a wall in each counted section, where it is fullest."""
    many: dict[int, int] = {}
    for beyond in too_near_a_wall(paths, watched=watched):
        many[beyond.stretch] = many.get(beyond.stretch, 0) + 1
    found: dict[str, int] = {}
    for n in sorted(many):
        section = paths.stretches[n].section
        if section is not None:
            found[section.letter] = max(many[n], found.get(section.letter, 0))
    return tuple(found.items())


def room_in_words(room: Room) -> str:
    """The same as one or two sentences."""
    walls, small = _why(room), "" if room.enough else _(_SMALL)
    if not room.found:
        return " ".join(filter(None, (small or walls, _(_CLOSE if room.closer else _MARK))))
    how = []
    if room.turned:
        short = room.hall.depth < room.hall.width
        how.append(
            _("with a short wall as the front") if short else _("with a long wall as the front")
        )
    if room.stride != 1:
        how.append(_("with every travelling step half as long"))
    known = _PARTS.get(room.turns)
    who = _(known) if known else _("All {pupils} can dance at once", pupils=room.pupils)
    opening = f"{', '.join(filter(None, (who, listed(how))))}."
    why = small if room.turns > 1 and small else walls if how or room.turns > 1 else ""
    return " ".join(filter(None, (opening, why)))


def _why(room: Room) -> str:
    """What would be wrong if all danced at once as it is drawn; nothing where all is well."""
    near = [
        _("{number} in part {part}", number=many, part=part)
        if n
        else ngettext(
            "{number} pupil in part {part}", "{number} pupils in part {part}", many, part=part
        )
        for n, (part, many) in enumerate(room.leaving)
    ]
    found = [_("{pupils} would come too near a wall", pupils=listed(near))] if near else []
    if room.closer:
        found.append(
            ngettext(
                "pupils in part {parts} would stand closer than the dance asks",
                "pupils in parts {parts} would stand closer than the dance asks",
                len(room.closer),
                parts=listed(room.closer),
            )
        )
    if not found:
        return ""
    return _("If all danced at once as it is drawn, {what}.", what=listed(found))
