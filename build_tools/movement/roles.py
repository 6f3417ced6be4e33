"""Which places of a group dance which part of a passage.

A group has places 1 to its size. The unit names roles and the places that dance them; a passage
says which role dances each of its parts.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.dance import Groups, Passage, Section
from build_tools.movement.canon_and_unison import parts_in
from build_tools.page_words.words import _

Places = tuple[int, ...]


def places_of(groups: Groups, role: str) -> Places:
    """The places that dance `role`, from 1; none for a role that the unit does not name."""
    return groups.roles.get(role, ())


def part_places(groups: Groups, passage: Passage) -> tuple[Places, ...] | None:
    """The places that dance each part of `passage`, part by part.

    Where it names no roles, one part is everybody, as many parts as places are the places in
    order, and fewer parts take every second, third … place. None where the parts are more than
    the places, so that a part is a whole group, or more than one.
    """
    everybody = tuple(range(1, groups.size + 1))
    if passage.roles:
        return tuple(places_of(groups, role) for role in passage.roles)
    parts = parts_in(passage)
    if parts == 1:
        return (everybody,)
    if parts > groups.size:
        return None
    return tuple(everybody[n::parts] for n in range(parts))


def places_danced(groups: Groups, dancers: int) -> Places:
    """The place that each dancer of a group of `dancers` dances, in the order in which they stand.

    As the unit says it of groups of that size. Else where one is missing, its place stays empty,
    so nobody dances two; and whoever is over goes with the role that has fewest, and with the
    lowest place of it that nobody else goes with: of two over two pairs, one joins each pair.
    """
    told = next((one for one in groups.odd if len(one) == dancers), None)
    if told is not None:
        return told
    found = list(range(1, min(groups.size, dancers) + 1))
    while len(found) < dancers:
        found.append(_joined_by(groups, found))
    return tuple(found)


def _joined_by(groups: Groups, danced: Sequence[int]) -> int:
    """The place that one more dances where the others dance these."""

    def full(place: int) -> tuple[int, int, int]:
        roles = [places for places in groups.roles.values() if place in places]
        beside = sum(sum(one in places for one in danced) - len(places) for places in roles)
        return danced.count(place), beside, place

    return min(range(1, groups.size + 1), key=full)


def place_danced(place: int, groups: Groups, dancers: int) -> Places:
    """The places that the dancer at `place` dances in a group of `dancers`; none past its end."""
    return places_danced(groups, dancers)[place - 1 : place] if place >= 1 else ()


def rows_of(section: Section) -> tuple[tuple[str, Places], ...]:
    """The rows in which the section is written, each with its name and its places.

    One row a role where no two roles share a place, one row a place where they do; none where the
    unit does not say who dances. Roles stand as the groups name them and not as they come in, so
    that a changed return, in which the others begin, draws everybody as before.
    """
    groups = section.groups
    if groups is None:
        return ()
    used = {role for passage in section.danced for role in passage.roles}
    return _rows(groups, used) if used else ()


def rows_marked(section: Section) -> tuple[tuple[str, Places], ...]:
    """The same on a plan, where everybody has a role though all do one thing, or make it up.

    So who has changed over is seen: the wests on the east bank, and who is track first.
    """
    found = rows_of(section)
    if found or section.groups is None or not section.groups.roles:
        return found
    return _rows(section.groups, set(section.groups.roles))


def _rows(groups: Groups, used: set[str]) -> tuple[tuple[str, Places], ...]:
    known = tuple((role, places) for role, places in groups.roles.items() if role in used)
    taken = [place for _name, places in known for place in places]
    if len(taken) == len(set(taken)) == groups.size:
        return known
    alone = {places: role for role, places in groups.roles.items() if len(places) == 1}
    return tuple(
        (alone.get((place,)) or _("dancer {number}", number=place), (place,))
        for place in range(1, groups.size + 1)
    )
