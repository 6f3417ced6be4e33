"""Where a section starts: in the places where dancers are, their first ones, or new ones."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations

from build_tools.body.ages import AtAge
from build_tools.model.dance import Section, Standing
from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import Area, Point, fine, metres
from build_tools.paths.nearest_places import nearest_places
from build_tools.paths.places import FITS, Slots, slots

_ANYWHERE = 2
"""As many odd groups are tried in every two places of a formation."""


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
    return by_dancer(found.groups, together, range(len(together)))


def shortest(
    standing: Standing, together: Together, here: Sequence[Point], area: Area, body: AtAge
) -> tuple[tuple[Point, ...], Slots]:
    """Each dancer's place so that the ways are short, groups of a size changing over whole.

    Groups of another size than most are tried in each place of the formation, since one that had
    to stand first might cross the whole hall for it. What is drawn together least is taken, of
    those the shortest way of all together, of those the first.
    """
    best: tuple[tuple[Point, ...], Slots] | None = None
    least = (0.0, 0.0)
    for sizes in orders(tuple(len(group) for group in together)):
        found = slots(standing, sizes, area, body)
        places = by_dancer(found.groups, together, takes_of(found, together, here))
        ways = (metres(one, place) for one, place in zip(here, places, strict=True))
        cost = (-fine(min(found.drawn_closer, FITS)), fine(sum(ways)))
        if best is None or cost < least:
            best, least = (places, found), cost
    assert best is not None
    return best


def orders(sizes: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """The sizes with those that are not the commonest in other places, the given order first.

    One or two odd groups may stand anywhere, more of them beside one another.
    """
    usual = max(sizes, key=lambda one: (sizes.count(one), one))
    odd = [one for one in sizes if one != usual]
    yield sizes
    many = len(sizes)
    if len(odd) <= _ANYWHERE:
        tried: Iterable[tuple[int, ...]] = combinations(range(many), len(odd))
    else:
        tried = (tuple(range(n, n + len(odd))) for n in range(many - len(odd) + 1))
    for places in tried:
        found = [usual] * many
        for place, size in zip(places, odd, strict=True):
            found[place] = size
        if tuple(found) != sizes:
            yield tuple(found)


def takes_of(found: Slots, together: Together, here: Sequence[Point]) -> list[int]:
    """The slot of each group, those of a size in the slots of that size that are nearest.

    In order where nobody is `here` yet.
    """
    takes = [0] * len(together)
    for size in sorted({len(group) for group in together}):
        ours = [n for n, group in enumerate(together) if len(group) == size]
        free = [n for n, group in enumerate(found.groups) if len(group) == size]
        nearest: Sequence[int] = range(len(ours))
        if here:
            middles = [_middle([here[one] for one in together[n]]) for n in ours]
            nearest = nearest_places(middles, [_middle(found.groups[n]) for n in free])
        for n, place in zip(ours, nearest, strict=True):
            takes[n] = free[place]
    return takes


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


def by_dancer(
    groups: Sequence[Sequence[Point]], together: Together, takes: Sequence[int]
) -> tuple[Point, ...]:
    """Each dancer's place, where each group takes the slot of the number that `takes` tells."""
    found: dict[int, Point] = {}
    for group, slot in zip(together, takes, strict=True):
        found.update(zip(group, groups[slot], strict=True))
    return tuple(found[one] for one in range(len(found)))


def _middle(points: Sequence[Point]) -> Point:
    return (
        sum(x for x, _ in points) / len(points),
        sum(y for _, y in points) / len(points),
    )
