"""A unit's dance on the floor, as its own years dance it, and which of it the unit really says.

What a unit leaves open is drawn in the usual way; nobody is to be told of a fault in a guess. So
a rule asks only of sections that are told: where they stand, how far apart, which way they go.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from build_tools.model.dance import Dance, Section
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import passage_counts
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.development import roots
from build_tools.movement.whole import lengths
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import Hall
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.places import FITS
from build_tools.paths.starting import spot_of
from build_tools.paths.whole import USUAL_AGE, USUAL_HALL, paths_of
from build_tools.views.lesson.class_groups import joined_in_lessons

CLASSES = range(24, 37)
"""Pupils in classes that words and plans are made for; common practice, no source."""


@lru_cache(maxsize=16)
def on_the_floor(unit: Unit) -> Paths | None:
    """A class of the unit's age in the hall that it is drawn for; None where no section is told.

    Of 24 to 36 pupils as many as make whole groups, the nearest to the usual class: what an odd
    group does differs from class to class, and is no fault of the dance. Where a unit is drawn for
    another class, of six fewer to six more.
    """
    dance = unit.dance
    if not any(section.start.apart is not None for section in dance.sections.values()):
        return None
    return in_a_hall(unit, _in_whole_groups(dance, class_drawn(unit)))


def in_a_hall(unit: Unit, pupils: int | None = None, hall: Hall | None = None) -> Paths:
    """The unit's dance by so many pupils of its age, in the groups of its lessons, in a hall.

    The class and the hall are those that the unit is drawn for where nothing else is asked.
    """
    return paths_of(
        unit.dance,
        class_drawn(unit) if pupils is None else pupils,
        hall or hall_drawn(unit),
        middle_age(unit),
        joined=joined_in_lessons(unit),
    )


def class_drawn(unit: Unit) -> int:
    """For how many pupils its plans are drawn: the usual class, or as the unit says."""
    own = unit.space.drawn_for
    return own.pupils if own else USUAL_CLASS


def hall_drawn(unit: Unit) -> Hall:
    """In which hall: the usual one, or the floor that the unit says."""
    own = unit.space.drawn_for
    return Hall(float(own.width), float(own.depth)) if own else USUAL_HALL


def middle_age(unit: Unit) -> float:
    """The age, in years, half way through the unit's school years; else the usual one."""
    known = ages(unit.years)
    return (known[0] + known[1]) / 2 if known else USUAL_AGE


def _in_whole_groups(dance: Dance, pupils: int) -> int:
    sizes = {groups_of(section).size for section in dance.sections.values()}
    about = (pupils - USUAL_CLASS + many for many in CLASSES)
    whole = [many for many in about if many > 0 and all(many % size == 0 for size in sizes)]
    return min(whole or [pupils], key=lambda many: abs(many - pupils))


@lru_cache(maxsize=16)
def placed(paths: Paths) -> frozenset[int]:
    """The sections, by number, that are come to from told places and start in told places.

    After a section that is made up, or whose ways are not told, nobody knows who comes from where.
    """
    known = {number for number, _, _ in told(paths)}
    found: set[int] = set()
    before: int | None = None
    for n, stretch in enumerate(paths.stretches):
        if stretch.section is None:
            continue
        starts = stretch.start is not None and (
            stretch.start.spot != "new place" or stretch.section.start.apart is not None
        )
        if before in known and starts:
            found.add(n)
        before = n
    return frozenset(found)


@lru_cache(maxsize=16)
def told(paths: Paths) -> tuple[tuple[int, StretchPaths, Section], ...]:
    """The counted sections whose places and ways are the unit's own words, by number."""
    return tuple(_told(paths))


def _told(paths: Paths) -> Iterator[tuple[int, StretchPaths, Section]]:
    unsaid = {one.path for one in paths.unsaid}
    before: Section | None = None
    placed = first = False
    for n, stretch in enumerate(paths.stretches):
        section = stretch.section
        if section is None:
            continue
        spot = spot_of(before, section)
        if spot == "new place":
            within = ("sections", section.letter, "start", "within")
            placed = section.start.apart is not None and within not in unsaid
            placed = placed and stretch.start is not None and stretch.start.drawn_closer > FITS
        if before is None:
            first = placed
        elif spot == "first place":
            placed = first
        before = section
        if placed and stretch.counted and not _ways_unsaid(paths.dance, section, unsaid):
            yield n, stretch, section
        else:
            placed = False


def _ways_unsaid(dance: Dance, section: Section, unsaid: set[tuple[str | int, ...]]) -> bool:
    """Whether a move of the section goes some way that the unit does not say."""
    names = {root for p in section.danced for what in p.what for root in roots(dance, what)}
    return any(path[0] == "motifs" and path[1] in names for path in unsaid)


def passage_at(dance: Dance, section: Section, count: float) -> int:
    """The number of the passage that is danced at a count of the section, from 0."""
    known, start, found = lengths(dance), 0.0, 0
    for n, passage in enumerate(section.danced):
        if start < count:
            found = n
        start += float(passage_counts(passage, known))
    return found


def called(section: Section, together: tuple[int, ...], dancer: int) -> str:
    """A dancer by their role in the section, or by their number in the group."""
    place = together.index(dancer) + 1
    groups = section.groups
    alone = [role for role, places in groups.roles.items() if places == (place,)] if groups else []
    return alone[0] if alone else f"number {place}"


def class_in_a_hall(paths: Paths) -> str:
    """The class and the hall: 30 pupils in a hall of 18 by 10 metres."""
    hall = paths.hall
    return f"{paths.dancers} pupils in a hall of {hall.width:g} by {hall.depth:g} metres"
