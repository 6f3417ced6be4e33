"""What a lesson and the dance from above say of a hall is what the printed pages say of it."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.paths.for_pages import paths_for_page
from build_tools.paths.hall import Hall
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.room_to_dance import (
    MOST_TURNS,
    SHORTER,
    Room,
    room_in_words,
    room_to_dance,
    unit_room,
)
from tests.paths.strategies import dances, halls
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit


def assert_same(written: str, room: Room, least: int) -> None:
    hall = [room.hall.width, room.hall.depth]
    found: dict[str, Any] = ask("sums.floor.room", json.loads(written), room.pupils, hall, least)
    assert [(one["letter"], one["dancers"]) for one in found["leaving"]] == list(room.leaving)
    assert tuple(found["closer"]) == room.closer
    for name in ("found", "turns", "turned", "stride", "enough"):
        assert found[name] == getattr(room, name), name
    assert ask("sums.floor.roomInWords", found) == room_in_words(room)


@given(dances(), st.integers(2, 36), halls, st.sampled_from((3, 5)))
def test_of_made_dances(dance: Dance, many: int, hall: Hall, least: int) -> None:
    room = room_to_dance(
        lambda pupils, where, stride: paths_of(dance, pupils, where, stride=stride),
        many,
        hall,
        least,
    )
    assert_same(paths_for_page(paths_of(dance)), room, least)
    assert room.turns <= MOST_TURNS
    assert room.stride in (1.0, SHORTER)


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_of_units(unit: Unit) -> None:
    written = paths_for_page(in_a_hall(unit))
    for many, hall in ((30, Hall(15.0, 10.0)), (24, Hall(9.0, 6.0)), (32, Hall(10.0, 14.0))):
        assert_same(written, unit_room(unit, many, hall), recommended_least(unit.years))
