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
from build_tools.views.dance.room_to_dance import SHORTER, Room, room_to_dance, unit_room
from build_tools.views.dance.teams import MOST_TURNS
from build_tools.views.words.room_said import room_in_words
from tests.paths.dances import dance_of, section, standing
from tests.paths.strategies import dances, halls
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit


def assert_same(written: str, room: Room, least: int) -> None:
    hall = [room.hall.width, room.hall.depth]
    found: dict[str, Any] = ask("sums.floor.room", json.loads(written), room.pupils, hall, least)
    assert [(one["letter"], one["dancers"]) for one in found["leaving"]] == list(room.leaving)
    assert tuple(found["closer"]) == room.closer
    for name in ("found", "turned", "stride", "enough"):
        assert found[name] == getattr(room, name), name
    assert found["groups"] == {"usual": room.groups.usual, "sizes": list(room.groups.sizes)}
    for name in ("waiting", "dancing", "asked"):
        told = getattr(room.sharing, name)
        assert found["sharing"][name] == (list(told) if isinstance(told, tuple) else told), name
    assert found["sharing"]["teams"] == [list(team) for team in room.sharing.teams]
    assert tuple(found["tight"]) == room.tight
    assert set(found["lined"]) == room.lined
    assert ask("sums.floor.roomInWords", found) == room_in_words(room)


def assert_whole_groups(room: Room) -> None:
    """Everybody is in one team, no group is cut, and the rest of a team has the metres it needs."""
    teams, sizes = room.sharing.teams, room.groups.sizes
    assert sum(sizes) == room.pupils
    assert not teams or sorted(size for team in teams for size in team) == sorted(sizes)
    assert not (teams and room.sharing.waiting)
    most = room.sharing.dancing[0]
    assert most <= room.pupils
    if room.found and most == room.pupils:
        assert not room.tight or not room.enough
    if room.found and most < room.pupils:
        assert room.tight, "why let anybody sit"


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
    assert_whole_groups(room)
    assert room.stride in (1.0, SHORTER)


def test_a_way_where_two_parts_overlap_is_of_the_one_that_began_first() -> None:
    """Found by made dances: 34 pupils in 8 by 23 metres, the last part begun before C was over."""
    travel = {"travel": 8, "step": "run", "steps": 8, "towards": "sea"}
    still = {"stillness": "1/2", "facing": "outwards"}
    dance = dance_of(
        "C B",
        {
            "C": section(39, standing("two lines", "right", groups_apart=4, columns=6), _STAND),
            "B": section(29, standing("pairs", "partner", apart=7, groups_apart=1), _GO)
            | {"groups": {"size": 3}},
        },
        {"two": [travel], "three": [still]},
        transitions=[{"from": "C", "to": "B", "as": "overlap", "counts": 15}],
        sides={"left": "sea"},
    )
    hall = Hall(8.0, 23.0)
    room = room_to_dance(lambda n, at, long: paths_of(dance, n, at, stride=long), 34, hall, 3)
    assert [letter for letter, _ in room.leaving] == ["C"]
    assert_same(paths_for_page(paths_of(dance)), room, 3)


_STAND = [{"what": ["three"], "as": "unison"}]
_GO = [{"what": ["two", "three"], "as": "unison"}]


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_of_units(unit: Unit) -> None:
    written = paths_for_page(in_a_hall(unit))
    for many, hall in ((30, Hall(15.0, 10.0)), (24, Hall(9.0, 6.0)), (32, Hall(10.0, 14.0))):
        assert_whole_groups(unit_room(unit, many, hall))
        assert_same(written, unit_room(unit, many, hall), recommended_least(unit.years))
