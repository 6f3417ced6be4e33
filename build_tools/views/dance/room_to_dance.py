"""How a class dances in a hall clear of its walls and one another: at once, or what to change.

Asked of the places and paths that everybody has, not of the square metres alone: a small group
scattered over a small hall still meets its walls, and a formation drawn together until it fits
leaves gaps smaller than the dance asks. Who watches in turns needs floor to sit on. Steps are
halved only where they are no distance to somebody or to a place. Where not all can dance at once,
few groups sit, others each time, or the class is teams, the same in every lesson; and only what
does not take the whole class is danced so.
`site_overrides/sums/floor-room-to-dance.js` does the same on the pages, for the class and the hall
of the day, and generated dances hold the two together.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache, partial
from itertools import product
from typing import Literal

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.watchers import watchers
from build_tools.paths.column_by_column import by_column
from build_tools.paths.hall import LINED, Hall, fine
from build_tools.paths.leaving import too_near_a_wall
from build_tools.paths.model import Paths
from build_tools.paths.places import FITS
from build_tools.paths.reached import ASKED_OF, steps_reach
from build_tools.paths.squeezed import closer_than_asked, squeezed
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.dance.recommended_metres import has_room_for, recommended_least
from build_tools.views.dance.same_spots import Spots, same_spots
from build_tools.views.dance.teams import Sharing, Whole, sharings, whole_groups
from build_tools.views.dance.waiting import Waiting, waiting_in
from build_tools.views.lesson.class_groups import joined_in_lessons

SHORTER = 0.5
"""How long a travelling step is where children are told to halve it."""

Sat = Literal["along it", "at its ends"] | None
"""Where by a wall those sit who do not dance; None where nobody sits."""
Drawn = Callable[[int, Hall, float, int], Paths]
"""The dance by so many pupils in a hall, with steps that are so many times as long, on the spots of
so many pupils if that is not 0."""


@dataclass(frozen=True, slots=True)
class Room:
    """What is enough for a class in a hall."""

    pupils: int
    hall: Hall
    found: bool
    """False where not even the last way of all is enough."""
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
    groups: Whole
    """The groups that stay together."""
    sharing: Sharing
    """Who dances at once."""
    tight: tuple[str, ...]
    """The sections that do not take the whole class at once; the others do."""
    spots: Spots
    """Whether teams stand on the same spots."""
    lined: frozenset[str]
    """The sides of the hall along which watchers sit."""
    waiting: Waiting
    """What those do who sit, and where."""

    @property
    def turns(self) -> int:
        """In how many teams, turn about; 1 for all, or nearly all, at once."""
        return max(1, len(self.sharing.teams))

    def tight_in(self, letters: Sequence[str]) -> bool:
        """Whether one of those sections does not take the whole class at once."""
        return any(letter in self.tight for letter in letters)


def as_drawn(room: Room) -> bool:
    """Whether the whole class dances at once just as the dance is drawn."""
    whole = room.sharing.dancing == (room.pupils,)
    return room.found and whole and not room.turned and room.stride == 1


def unit_room(unit: Unit, pupils: int = USUAL_CLASS, hall: Hall | None = None) -> Room:
    """How the unit's dance is danced by so many pupils of its age in `hall`."""
    least = recommended_least(unit.years)
    return _room_of(_danced_in(unit), least, waiting_in(unit), pupils, hall or Hall())


def dances_as_drawn(unit: Unit, pupils: int, hall: Hall) -> bool:
    """Whether `as_drawn` says so of `unit_room`, asked of the first way alone."""
    drawn = partial(_drawn, _danced_in(unit))
    if pupils > has_room_for(hall.width * hall.depth, recommended_least(unit.years)):
        return False
    all_at_once = next(iter(sharings(whole_groups(pupils, drawn(pupils, hall, 1.0, 0).sizes))))
    return _has_room(drawn, all_at_once, hall, 1.0, None)


@dataclass(frozen=True, slots=True)
class _Danced:
    """What places and paths depend on of a unit: not its words, which change far more often.

    A dance equals only itself; two are alike here that say the same.
    """

    said: str
    joined: tuple[int, ...]
    age: float
    dance: Dance = field(compare=False)


def _danced_in(unit: Unit) -> _Danced:
    return _Danced(repr(unit.dance), joined_in_lessons(unit), middle_age(unit), unit.dance)


@lru_cache(maxsize=128)
def _room_of(danced: _Danced, least: int, waiting: Waiting, pupils: int, hall: Hall) -> Room:
    """Kept, since a page in the preview is made again for each word that changes."""
    return room_to_dance(partial(_drawn, danced), pupils, hall, least, waiting)


@lru_cache(maxsize=16)
def _drawn(danced: _Danced, pupils: int, hall: Hall, stride: float, spots: int) -> Paths:
    """The unit's dance; for one hall after another the same is asked again and again."""
    dance, joined, age = danced.dance, danced.joined, danced.age
    return paths_of(dance, pupils, hall, age, joined=joined, stride=stride, spots=spots)


def room_to_dance(drawn: Drawn, pupils: int, hall: Hall, least: int, waiting: Waiting) -> Room:
    """The least change that leaves everybody their room; `least` is m² for each pupil."""
    holds = has_room_for(hall.width * hall.depth, least)
    turned, as_drawn = Hall(hall.depth, hall.width), drawn(pupils, hall, 1.0, 0)
    groups = replace(whole_groups(pupils, as_drawn.sizes), columns=by_column(as_drawn))
    strides = (1.0,) if steps_reach(drawn(*ASKED_OF, 1.0, 0)) else (1.0, SHORTER)
    ways = list(sharings(groups))
    sat = _sat(waiting)
    tried = (
        (way, stride, where)
        for way, stride in product(ways, strides)
        for where in ((hall,) if hall.width == hall.depth else (hall, turned))
        if way.dancing[0] <= holds
        and _has_room(drawn, way, where, stride, None if way == ways[0] else sat)
    )
    found = next(tried, None)
    sharing, stride, where = found or (ways[0], 1.0, hall)
    enough = pupils <= holds
    largest_first = sorted(map(sum, sharing.teams), reverse=True)
    teams = [drawn(many, where, stride, sharing.spots) for many in largest_first]
    return Room(
        pupils=pupils,
        hall=hall,
        found=found is not None,
        turned=where != hall,
        stride=stride,
        enough=enough,
        leaving=_leaving(as_drawn, None),
        closer=squeezed(as_drawn),
        groups=groups,
        sharing=sharing,
        tight=_tight([drawn(many, where, stride, 0) for many in _both(ways[0])], enough=enough),
        spots=same_spots(teams),
        lined=LINED[watchers(as_drawn.dance)],
        waiting=waiting,
    )


def _has_room(drawn: Drawn, way: Sharing, hall: Hall, stride: float, sat: Sat) -> bool:
    """Whether whole groups stand as the dance asks, and all as they are, clear of the walls.

    A three too stands as it asks where it says that the third is behind the pair: their room is
    known then, and where there is none, fewer dance at once.
    """
    whole = [drawn(many, hall, stride, way.spots) for many in way.asked]
    if any(squeezed(paths) or _leaving(paths, sat) for paths in whole):
        return False
    each = (drawn(many, hall, stride, way.spots) for many in way.dancing)
    return not any(
        _leaving(paths, sat) or (_third_behind(paths) and squeezed(paths)) for paths in each
    )


def _third_behind(paths: Paths) -> bool:
    return any(section.start.third == "behind" for section in paths.dance.sections.values())


def _both(way: Sharing) -> tuple[int, ...]:
    """How many would dance, as whole groups and as they are."""
    return tuple(dict.fromkeys((way.asked[0], way.dancing[0])))


def _sat(waiting: Waiting) -> Sat:
    return "at its ends" if waiting.at_ends else "along it"


def _leaving(paths: Paths, sat: Sat) -> tuple[tuple[str, int], ...]:
    """How many come too near a wall in each counted section, where it is fullest."""
    many: dict[int, int] = {}
    for beyond in too_near_a_wall(paths, watched=sat is not None, at_its_ends=sat == "at its ends"):
        many[beyond.stretch] = many.get(beyond.stretch, 0) + 1
    found: dict[str, int] = {}
    for n in sorted(many):
        section = paths.stretches[n].section
        if section is not None:
            found[section.letter] = max(many[n], found.get(section.letter, 0))
    return tuple(found.items())


def _tight(whole: Sequence[Paths], *, enough: bool) -> tuple[str, ...]:
    """The sections that do not take all at once; all of them where there are too few metres.

    A section that starts where dancers are, or in their first places, is danced by as many at once:
    the marks that they stand on are those of one team.
    """
    near = dict(one for paths in whole for one in _leaving(paths, None))
    paths = whole[0]
    found: list[str] = []
    first = before = None
    for one in paths.stretches:
        if one.section is None or one.start is None:
            continue
        stood = before
        if one.start.spot == "first place":
            stood = first
        elif one.start.spot == "new place":
            stood = fine(closer_than_asked(one.start, one.section.start, paths.body)) < FITS
        before = stood or one.section.letter in near or not enough
        first = before if first is None else first
        if before:
            found.append(one.section.letter)
    return tuple(dict.fromkeys(found))
