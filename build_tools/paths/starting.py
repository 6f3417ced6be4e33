"""Where a section starts: in the places where dancers are, their first ones, or new ones."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.body.ages import AtAge
from build_tools.model.dance import Section, Standing
from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import Area, Point
from build_tools.paths.nearest_places import nearest_places
from build_tools.paths.places import Slots, slots


def spot_of(before: Section | None, section: Section) -> str:
    """where they are, first place or new place, as the section says.

    Where it does not: in a formation like the one before they stay where they are.
    """
    if before is None:
        return "new place"
    if section.start.spot is not None:
        return section.start.spot
    same = before.end.formation == section.start.formation
    return "where they are" if same else "new place"


def slots_for(standing: Standing, together: Together, area: Area, body: AtAge) -> Slots:
    """Places in the hall for these groups."""
    return slots(standing, tuple(len(group) for group in together), area, body)


def in_order(found: Slots, together: Together) -> tuple[Point, ...]:
    """Each dancer's place, the first group in the first places."""
    return _by_dancer(found.groups, together, range(len(together)))


def shortest(found: Slots, together: Together, here: Sequence[Point]) -> tuple[Point, ...]:
    """Each dancer's place so that the ways are short, groups of a size changing over whole."""
    takes = list(range(len(together)))
    for size in sorted({len(group) for group in together}):
        ours = [n for n, group in enumerate(together) if len(group) == size]
        middles = [_middle([here[one] for one in together[n]]) for n in ours]
        places = [_middle(found.groups[n]) for n in ours]
        for n, place in zip(ours, nearest_places(middles, places), strict=True):
            takes[n] = ours[place]
    return _by_dancer(found.groups, together, takes)


def centres_of(places: Sequence[Point], together: Together, area: Area) -> list[Point]:
    """The centre that each dancer has: of the group, or of all where they dance alone."""
    found = [area.middle] * len(places)
    if max((len(group) for group in together), default=1) == 1:
        return [_middle(places)] * len(places)
    for group in together:
        middle = _middle([places[one] for one in group])
        for one in group:
            found[one] = middle if len(group) > 1 else area.middle
    return found


def _by_dancer(
    groups: Sequence[Sequence[Point]], together: Together, takes: Sequence[int]
) -> tuple[Point, ...]:
    found: dict[int, Point] = {}
    for group, slot in zip(together, takes, strict=True):
        found.update(zip(group, groups[slot], strict=True))
    return tuple(found[one] for one in range(len(found)))


def _middle(points: Sequence[Point]) -> Point:
    return (
        sum(x for x, _ in points) / len(points),
        sum(y for _, y in points) / len(points),
    )
