"""How a class dances in a hall with room for everybody; the sum is held to the pages' script.

That nobody is in a wall, and nobody stands closer than the dance asks, is asked of the paths again.
The halls are those that two teachers had, and those that the units' own words name.
"""

from __future__ import annotations

import pytest

from build_tools.model.unit import Unit
from build_tools.paths.hall import BORDER, WATCHERS_DEEP, Hall, floor
from build_tools.paths.legs import Leg
from build_tools.paths.model import Paths
from build_tools.paths.reached import ASKED_OF, steps_reach
from build_tools.paths.scatter import nearest_two
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.room_to_dance import Room, room_in_words, unit_room
from build_tools.views.lesson.class_groups import joined_in_lessons
from tests.support.sound_bank import every_unit, whole_bank

HALLS = (Hall(18.0, 10.0), Hall(15.0, 10.0), Hall(12.0, 9.0), Hall(9.0, 6.0))


def _drawn(unit: Unit, room: Room) -> Paths:
    hall = Hall(room.hall.depth, room.hall.width) if room.turned else room.hall
    dancing = -(-room.pupils // room.turns)
    age, joined = middle_age(unit), joined_in_lessons(unit)
    return paths_of(unit.dance, dancing, hall, age, joined=joined, stride=room.stride)


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_what_is_told_works_and_nothing_less_does(unit: Unit) -> None:
    for hall in HALLS:
        room = unit_room(unit, 30, hall)
        if not room.found:
            continue
        paths = _drawn(unit, room)
        wall, apart = floor(paths.hall), closest_at_starts(paths)
        for leg in (leg for legs in paths.legs for leg in legs):
            assert wall.holds((leg.x1, leg.y1), 0.05 - BORDER / 2) or not _counted(paths, leg)
        for letter, (closest, roomy) in apart.items():
            assert closest >= 0.9 * min(roomy, paths.body.arm), letter
        assert hall.width * hall.depth / -(-30 // room.turns) >= recommended_least(unit.years)
        if room.turns > 1 or room.stride != 1 or room.turned:
            assert room.leaving or room.closer or not room.enough, "why change anything"


def _counted(paths: Paths, leg: Leg) -> bool:
    """Whether a leg is danced to counts, so that its way is known, and in no join."""
    return any(
        one.counted and one.section is not None and one.begins <= leg.start < one.ends
        for one in paths.stretches
    )


def closest_at_starts(paths: Paths) -> dict[str, tuple[float, float]]:
    """How near the nearest two stand at the start of each formation, here and in a large hall."""
    age = paths.body.age
    roomy = paths_of(paths.dance, paths.dancers, Hall(40.0, 40.0), age, joined=paths.sizes)
    return {
        here.section.letter: (nearest_two(here.start.wanted), nearest_two(there.start.wanted))
        for here, there in zip(paths.stretches, roomy.stretches, strict=True)
        if here.section is not None
        and here.start
        and here.start.spot == "new place"
        and there.start
    }


WORDS = {
    "magnets": ((17.0, 9.0), (15.0, 9.0)),
    "marble-run": ((15.0, 9.0), (12.0, 9.0)),
    "rope-bridge": ((18.0, 9.0), (15.0, 9.0)),
    "leaving": ((18.0, 9.0), (15.0, 9.0)),
}
"""Units whose own words say in which hall 30 dance at once, and a hall that is too small."""


@pytest.mark.parametrize("slug", WORDS)
def test_gaps_that_a_small_hall_squeezes_count_as_no_room(slug: str) -> None:
    """A formation drawn closer until it fits is not the dance; the units' own words agree."""
    (unit,) = (one for one in whole_bank().units if one.slug == slug)
    large, small = (unit_room(unit, 30, Hall(*sides)) for sides in WORDS[slug])
    assert (large.turns, large.turned, large.stride, large.closer) == (1, False, 1.0, ())
    assert small.closer
    assert small.turns > 1
    assert "would stand closer than the dance asks" in room_in_words(small)


def test_steps_that_are_a_distance_to_somebody_are_not_halved() -> None:
    """Partners who meet across the gap, and threads that go round one another, would not arrive.

    A wave that all dance the same way is the same wave with shorter steps.
    """
    for slug, reach in (("rope-bridge", True), ("weaving-shed", True), ("rock-pool", False)):
        (unit,) = (one for one in whole_bank().units if one.slug == slug)
        age, joined = middle_age(unit), joined_in_lessons(unit)
        assert steps_reach(paths_of(unit.dance, *ASKED_OF, age, joined=joined)) == reach
        if reach:
            halls = (Hall(14.0, 10.0), Hall(12.0, 9.0), Hall(9.0, 6.0))
            assert {unit_room(unit, 30, hall).stride for hall in halls} == {1.0}


def test_part_of_a_class_keeps_clear_of_who_watches_in_one_row() -> None:
    (unit,) = (one for one in whole_bank().units if one.slug == "weaving-shed")
    room = unit_room(unit, 30, Hall(12.0, 9.0))
    paths = _drawn(unit, room)
    assert room.turns == 2
    front = floor(paths.hall).front + WATCHERS_DEEP / 2
    ways = (leg for legs in paths.legs for leg in legs if _counted(paths, leg))
    assert min(leg.y1 for leg in ways) >= front - 0.05


def test_each_way_is_said_in_a_sentence() -> None:
    hall = Hall(15.0, 10.0)
    ways = {
        (1, False, 1.0): "All 30 can dance at once.",
        (1, True, 1.0): "All 30 can dance at once, with a short wall as the front. If all danced "
        "at once as it is drawn, 1 pupil in part A and 2 in part B would come too near a wall.",
        (2, True, 0.5): "Let half dance while half watch, then swap, with a short wall as the "
        "front and with every travelling step half as long. If all danced at once as it is drawn, "
        "1 pupil in part A and 2 in part B would come too near a wall.",
    }
    for (turns, turned, stride), words in ways.items():
        leaving = (("A", 1), ("B", 2)) if turned else ()
        room = Room(30, hall, True, turns, turned, stride, True, leaving, ())
        assert room_in_words(room) == words
    small = Room(30, hall, True, 3, False, 1.0, False, (), ())
    assert room_in_words(small) == (
        "Dance in three parts of the class, turn about. "
        "The floor is too small for all to dance at once."
    )
    close = Room(30, hall, True, 2, False, 1.0, True, (), ("A", "C"))
    assert room_in_words(close) == (
        "Let half dance while half watch, then swap. If all danced at once as it is drawn, pupils "
        "in parts A and C would stand closer than the dance asks."
    )
    both = Room(30, hall, False, 1, False, 1.0, True, (("B", 1),), ("B",))
    assert room_in_words(both) == (
        "If all danced at once as it is drawn, 1 pupil in part B would come too near a wall and "
        "pupils in part B would stand closer than the dance asks. Not even a quarter of the class "
        "has the room it needs: dance it on the spot."
    )
    none = Room(30, hall, False, 1, False, 1.0, True, (("A", 4),), ())
    assert room_in_words(none) == (
        "If all danced at once as it is drawn, 4 pupils in part A would come too near a wall. "
        "Chalk a line one big step from each wall; who reaches it dances on the spot."
    )
