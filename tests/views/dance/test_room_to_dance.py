"""How a class dances in a hall with nobody in a wall; the sum itself is held to the pages' script.

That nobody is in a wall is asked of the paths again, by their own function. The halls of the last
test are those that two teachers had.
"""

from __future__ import annotations

import pytest

from build_tools.model.unit import Unit
from build_tools.paths.hall import Hall
from build_tools.paths.leaving import leaving_the_hall
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import in_a_hall, middle_age
from build_tools.views.dance.room_to_dance import Room, room_in_words, unit_room
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.lesson.floor_recommended import recommended_least
from tests.support.sound_bank import every_unit

HALLS = (Hall(18.0, 10.0), Hall(15.0, 10.0), Hall(12.0, 9.0), Hall(9.0, 6.0))


def _in_a_wall(unit: Unit, room: Room) -> int:
    hall = Hall(room.hall.depth, room.hall.width) if room.turned else room.hall
    dancing = -(-room.pupils // room.turns)
    age, joined = middle_age(unit), joined_in_lessons(unit)
    paths = paths_of(unit.dance, dancing, hall, age, joined=joined, stride=room.stride)
    return len([one for one in leaving_the_hall(paths) if paths.stretches[one.stretch].section])


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_what_is_told_works_and_nothing_less_does(unit: Unit) -> None:
    for hall in HALLS:
        room = unit_room(unit, 30, hall)
        if not room.found:
            continue
        assert not _in_a_wall(unit, room)
        floor = hall.width * hall.depth
        assert floor / -(-room.pupils // room.turns) >= recommended_least(unit.years)
        if room.turns > 1 or room.stride != 1 or room.turned:
            everybody = leaving_the_hall(in_a_hall(unit, 30, hall))
            assert everybody or not room.enough, "why change anything"


def test_each_way_is_said_in_a_sentence() -> None:
    hall = Hall(15.0, 10.0)
    ways = {
        (1, False, 1.0): "All 30 can dance at once.",
        (1, True, 1.0): "All 30 can dance at once, with a short wall as the front. If all danced "
        "at once as it is drawn, 1 pupil in part A and 2 in part B would meet a wall.",
        (2, True, 0.5): "Let half dance while half watch, then swap, with a short wall as the "
        "front and with every travelling step half as long. If all danced at once as it is drawn, "
        "1 pupil in part A and 2 in part B would meet a wall.",
    }
    for (turns, turned, stride), words in ways.items():
        leaving = (("A", 1), ("B", 2)) if turned else ()
        room = Room(30, hall, True, turns, turned, stride, True, leaving)
        assert room_in_words(room) == words
    small = Room(30, hall, True, 3, False, 1.0, False, ())
    assert room_in_words(small) == (
        "Dance in three parts of the class, turn about. "
        "The floor is too small for all to dance at once."
    )
    none = Room(30, hall, False, 1, False, 1.0, True, (("A", 4),))
    assert room_in_words(none) == (
        "If all danced at once as it is drawn, 4 pupils in part A would meet a wall. Chalk a line "
        "one big step from each wall; who reaches it dances on the spot."
    )
