"""A class put down in a hall and moved through a whole dance, count by count.

The same dance, class, hall and age give the same paths. A dance whose developments cannot be
carried out, or that names what it has not, raises ValueError or KeyError, as movement does.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import lru_cache

from build_tools.body.ages import AtAge, at_age
from build_tools.model.dance import Dance, Section, Standing
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.counts import seconds
from build_tools.movement.watchers import watchers
from build_tools.movement.whole import transition_between
from build_tools.paths.class_in_groups import Together, class_in_groups
from build_tools.paths.column_by_column import (
    Cell,
    Columns,
    columns_of,
    dealt_anew,
    dealt_places,
    keeps_columns,
    ways_cross,
)
from build_tools.paths.dancing import dance_section, room_of
from build_tools.paths.facings import facings_of
from build_tools.paths.going_in_turn import times_in_columns
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import BORDER, Area, Hall, Point, dancing_area
from build_tools.paths.improvising import improvise
from build_tools.paths.legs import BEND, Moment
from build_tools.paths.model import Paths, Start, StretchPaths
from build_tools.paths.on_spots import has_spots, on_spots
from build_tools.paths.places import Slots
from build_tools.paths.starting import centres_of, in_order, shortest, slots_for, spot_of
from build_tools.paths.unsaid import Unsaid, unsaid_of_moves, unsaid_of_start
from build_tools.paths.walking import Dancer, go_to

USUAL_HALL = Hall()
USUAL_AGE = 8.0
"""Years; the middle of the years that most units are for."""


@lru_cache(maxsize=32)
def paths_of(
    dance: Dance,
    pupils: int = USUAL_CLASS,
    hall: Hall = USUAL_HALL,
    age: float = USUAL_AGE,
    order: tuple[str, ...] | None = None,
    joined: tuple[int, ...] = (),
    stride: float = 1.0,
    spots: int = 0,
) -> Paths:
    """Where `pupils` of `age` years are at every moment of `dance` in a hall of such metres.

    `order` is that of the sections where pupils chose one; else the form's. `joined` are sizes of
    groups that lessons join to make those of the dance (`views/lesson/class_groups.py`). `stride`
    is how long a danced step is beside its own length: a small hall may ask for shorter ones.
    `spots` is for how many pupils the places are laid where a team stands on those of a larger one.
    """
    body = at_age(age)
    walk = _Walk(
        dance=dance,
        pupils=max(1, pupils),
        area=dancing_area(hall, watchers(dance), border_of(body)),
        body=body,
        sizes=tuple(
            sorted({*joined, *(groups_of(section).size for section in dance.sections.values())})
        ),
        second=float(seconds(1, dance.tempo)) if dance.tempo else None,
        stride=stride,
        hall=hall,
        spots=spots,
    )
    before: Section | None = None
    for letter in dance.form if order is None else order:
        section = dance.sections[letter]
        together = class_in_groups(walk.pupils, groups_of(section).size, walk.sizes)
        start = _put_down(walk, section, together) if before is None else None
        _through(walk, section, together, start or _come(walk, before, section, together))
        before = section
    return Paths(
        dance=dance,
        hall=hall,
        area=walk.area,
        body=walk.body,
        sizes=walk.sizes,
        stretches=tuple(walk.stretches),
        at_first=tuple(walk.at_first),
        legs=tuple(tuple(dancer.legs) for dancer in walk.dancers),
        unsaid=tuple(dict.fromkeys((*walk.unsaid, *unsaid_of_moves(dance)))),
    )


@dataclass(slots=True)
class _Walk:
    """The class on its way through the dance."""

    dance: Dance
    pupils: int
    area: Area
    body: AtAge
    sizes: tuple[int, ...]
    second: float | None
    """How many seconds a count lasts; None where there is no tempo."""
    hall: Hall
    stride: float = 1.0
    """How long a danced step is beside its own length."""
    spots: int = 0
    """For how many pupils the places are laid; 0 for those who dance."""
    moment: float = 0.0
    first: tuple[Point, ...] = ()
    """Where each dancer is put down at the start."""
    first_columns: Columns | None = None
    columns: Columns | None = None
    """The columns in which all are put down at the start, and stand now."""
    crossing: tuple[Cell, ...] = ()
    """Where each group stands whose ways may go through one another in the join that is next."""
    at_first: list[Moment] = field(default_factory=list)
    dancers: list[Dancer] = field(default_factory=list)
    stretches: list[StretchPaths] = field(default_factory=list)
    unsaid: list[Unsaid] = field(default_factory=list)

    def here(self) -> tuple[Point, ...]:
        """Where everybody is now."""
        return tuple((dancer.x, dancer.y) for dancer in self.dancers)


def _put_down(walk: _Walk, section: Section, together: Together) -> Start:
    """Everybody in their place at the very start."""
    places, found = _new_places(walk, section, together, ())
    facing = _facing(walk, section, places, together)
    walk.first, walk.first_columns = places, walk.columns
    walk.dancers = [Dancer(*place, degrees) for place, degrees in zip(places, facing, strict=True)]
    walk.at_first = [dancer.now() for dancer in walk.dancers]
    walk.unsaid += unsaid_of_start(section, found)
    return Start("new place", places, places, None, None, found.drawn_closer)


def border_of(body: AtAge) -> float:
    """Metres along a wall where nobody starts."""
    return max(BORDER, body.reach)


def _new_places(
    walk: _Walk, section: Section, together: Together, here: Sequence[Point]
) -> tuple[tuple[Point, ...], Slots]:
    """Each dancer's place as the section says; `here` is where all are, empty at the very start."""
    standing, size = section.start, groups_of(section).size
    free = {side: float(steps) * walk.body.step for side, steps in standing.free}
    area = walk.area
    if free:
        area = dancing_area(walk.hall, watchers(walk.dance), border_of(walk.body), free)
    many = len(class_in_groups(walk.spots, size, walk.sizes)) if walk.spots else 0
    if here and (dealt := dealt_anew(walk.columns, standing, together)):
        walk.crossing, walk.columns = ways_cross(walk.columns, dealt), dealt
        return dealt_places(standing, dealt, size, many, area, walk.body)
    laid = _laid_out(walk, standing, together, size, many, here, area)
    walk.columns = columns_of(standing, together, laid[0])
    return laid


def _laid_out(
    walk: _Walk,
    standing: Standing,
    together: Together,
    size: int,
    many: int,
    here: Sequence[Point],
    area: Area,
) -> tuple[tuple[Point, ...], Slots]:
    """The same where no columns are dealt anew; `many` is for how many groups a team has spots."""
    if many and has_spots(standing, [len(group) for group in together]):
        kept = keeps_columns(walk.dance)
        return on_spots(standing, together, size, many, here, area, walk.body, as_a_class=kept)
    if here:
        return shortest(standing, together, here, area, walk.body)
    found = slots_for(standing, together, area, walk.body)
    return in_order(found, together), found


def _come(walk: _Walk, before: Section | None, section: Section, together: Together) -> Start:
    """Everybody to the start of a section, as far as the transition lets them."""
    between = transition_between(walk.dance, before.letter if before else "", section.letter)
    spot, here = spot_of(before, section), walk.here()
    wanted, closer = here, 1.0
    if spot == "first place":
        wanted, walk.columns = walk.first, walk.first_columns
    elif spot == "new place":
        wanted, found = _new_places(walk, section, together, here)
        closer = found.drawn_closer
        walk.unsaid += unsaid_of_start(section, found)
    kind = between.kind if between else "straight on"
    counts = float(between.counts) if between and between.counts else 0.0
    if kind == "overlap":
        last = walk.stretches[-1]
        walk.moment = max(last.begins, walk.moment - counts) if last.counted else walk.moment
    lasts = counts if kind in ("move", "hold") else 0.0
    seconds = 0.0 if kind != "move" else None if walk.second is None else counts * walk.second
    _join(walk, section, together, wanted if kind == "move" else here, lasts, seconds)
    if between is not None:
        walk.stretches.append(
            StretchPaths(None, between, walk.moment, lasts, True, walk.second, (), None)
        )
    walk.moment += lasts
    return Start(spot, here, wanted, kind, seconds, closer)


def _join(
    walk: _Walk,
    section: Section,
    together: Together,
    places: Sequence[Point],
    lasts: float,
    seconds: float | None,
) -> None:
    """Everybody to these places in so many counts, and round to the section's facing."""
    facing = _facing(walk, section, places, together)
    most = math.inf if seconds is None else walk.body.running * seconds
    times = times_in_columns(walk.crossing, together, walk.here(), places)
    walk.crossing = ()
    for n, (dancer, place) in enumerate(zip(walk.dancers, places, strict=True)):
        if dancer.busy_until > walk.moment:
            continue
        first, last = times.get(n, (0.0, 1.0))
        start, end = walk.moment + lasts * first, walk.moment + lasts * last
        bend = 0.0 if n in times else BEND / 2
        go_to(dancer, place, facing[n], start, end, most * (last - first), bend)


def _facing(
    walk: _Walk, section: Section, places: Sequence[Point], together: Together
) -> list[float]:
    centres = centres_of(places, together, walk.area)
    return facings_of(section.start, places, _with_whom(walk, together), centres, walk.area)


def _with_whom(walk: _Walk, together: Together) -> Together:
    """Who has a partner in whom: where all dance alone, those of the pairs that the dance has."""
    alone = 2 in walk.sizes and max(map(len, together)) == 1
    return class_in_groups(walk.pupils, 2, walk.sizes) if alone else together


def _through(walk: _Walk, section: Section, together: Together, start: Start) -> None:
    """Everybody through a section."""
    lasts, most = _length(section)
    counted = section.counts is not None
    pairs = _with_whom(walk, together)
    room = room_of(together, pairs, walk.area.middle, walk.here())
    if counted:
        body = walk.body
        if walk.stride != 1:
            shorter = {"step": body.step * walk.stride, "running": body.running * walk.stride}
            body = replace(body, **shorter)
        dance_section(
            walk.dancers, walk.dance, section, together, walk.moment, room, body, walk.second
        )
    else:
        walk.columns = None
        improvise(
            walk.dancers,
            section,
            (together, pairs),
            walk.moment,
            lasts,
            walk.area,
            walk.body,
            walk.first,
        )
    walk.stretches.append(
        StretchPaths(
            section=section,
            transition=None,
            begins=walk.moment,
            lasts=lasts,
            counted=counted,
            seconds=walk.second if counted else 1.0,
            together=together,
            start=start,
            most_seconds=most,
        )
    )
    walk.moment += lasts


def _length(section: Section) -> tuple[float, Fraction | None]:
    """Counts of a counted section; else the middle of its seconds, whole, and the most."""
    if section.counts is not None:
        return float(section.counts), None
    if section.seconds is None:
        return 0.0, Fraction(0)
    middle = (section.seconds.least + section.seconds.most) / 2
    return float(math.floor(middle + Fraction(1, 2))), section.seconds.most
