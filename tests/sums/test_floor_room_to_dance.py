"""What a lesson and the dance from above say of a hall is what the printed pages say of it."""

from __future__ import annotations

import json
import os
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.paths.class_in_groups import Together, class_in_groups
from build_tools.paths.for_pages import paths_for_page
from build_tools.paths.hall import BORDER, Hall, metres
from build_tools.paths.legs import Moment
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from build_tools.views.dance.floor_data import floor_data
from build_tools.views.dance.on_the_floor import in_a_hall, middle_age
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.room_to_dance import SHORTER, Room, room_to_dance, unit_room
from build_tools.views.dance.teams import MOST_TURNS
from build_tools.views.dance.waiting import Waiting
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.words.room_said import room_in_words
from tests.paths.dances import dance_of, section, standing
from tests.paths.strategies import dances, halls
from tests.support.banks import THOROUGH
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit

MOST = 1000 if os.environ.get(THOROUGH) else 12
"""Classes and halls: each is a dance several times over, in two languages."""
WAITING = Waiting(counts=False)
"""Of dances that no unit has."""


def assert_same(written: str, room: Room, least: int) -> None:
    hall = [room.hall.width, room.hall.depth]
    data = json.loads(written)
    data.setdefault("waiting", {"counts": WAITING.counts})
    found: dict[str, Any] = ask("sums.floor.room", data, room.pupils, hall, least)
    assert [(one["letter"], one["dancers"]) for one in found["leaving"]] == list(room.leaving)
    assert tuple(found["closer"]) == room.closer
    for name in ("found", "turned", "stride", "enough"):
        assert found[name] == getattr(room, name), name
    assert found["groups"] == {
        "usual": room.groups.usual,
        "sizes": list(room.groups.sizes),
        "columns": [list(one) for one in room.groups.columns],
    }
    for name in ("waiting", "dancing", "asked"):
        told = getattr(room.sharing, name)
        assert found["sharing"][name] == (list(told) if isinstance(told, tuple) else told), name
    assert found["sharing"]["teams"] == [list(team) for team in room.sharing.teams]
    assert tuple(found["tight"]) == room.tight
    assert set(found["lined"]) == room.lined
    assert found["spots"] == room.spots
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
        lambda pupils, where, stride, spots: paths_of(
            dance, pupils, where, stride=stride, spots=spots
        ),
        many,
        hall,
        least,
        WAITING,
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
    room = room_to_dance(
        lambda n, at, long, spots: paths_of(dance, n, at, stride=long, spots=spots),
        34,
        hall,
        3,
        WAITING,
    )
    assert [letter for letter, _ in room.leaving] == ["C"]
    assert_same(paths_for_page(paths_of(dance)), room, 3)


_STAND = [{"what": ["three"], "as": "unison"}]
_GO = [{"what": ["two", "three"], "as": "unison"}]


CLASSES = ((30, Hall(15.0, 10.0)), (24, Hall(9.0, 6.0)), (32, Hall(10.0, 14.0)))


@pytest.mark.parametrize(
    ("number", "unit"), [*enumerate(every_unit())], ids=[unit.slug for unit in every_unit()]
)
def test_of_units(number: int, unit: Unit, thorough: bool) -> None:
    """Of every class and hall; in the usual run of one of three, in turns."""
    written = json.dumps(floor_data(unit, in_a_hall(unit)))
    for many, hall in CLASSES if thorough else CLASSES[number % 3 :: 3]:
        assert_whole_groups(unit_room(unit, many, hall))
        assert_same(written, unit_room(unit, many, hall), recommended_least(unit.years))


small_halls = st.builds(Hall, st.integers(8, 20).map(float), st.integers(8, 12).map(float))
classes = st.integers(24, 36)


@settings(max_examples=MOST)
@given(st.sampled_from(every_unit()), classes, small_halls)
def test_one_answer_in_every_hall(unit: Unit, pupils: int, hall: Hall) -> None:
    """What is said of who dances at once is so where they are drawn, in either language."""
    written = floor_data(unit, in_a_hall(unit))
    room = unit_room(unit, pupils, hall)
    assert_same(json.dumps(written), room, recommended_least(unit.years))
    if not room.found:
        return
    where = Hall(hall.depth, hall.width) if room.turned else hall
    teams = [(team, sum(team)) for team in room.sharing.teams]
    drawn = [_drawn(unit, room, where, many) for many in room.sharing.dancing]
    found = ask("sums.floor.room", written, pupils, [hall.width, hall.depth], written["least"])
    for paths in drawn:
        assert_clear(paths)
        told = ask("sums.floor.drawnIn", written, found, paths.dancers)
        for one, other in zip(paths.at_first, told["first"], strict=True):
            assert (one.x, one.y) == pytest.approx(other[:2], abs=0.001)
    for team, many in teams:
        sizes = class_in_groups(many, room.groups.usual, drawn[0].sizes)
        assert sorted(map(len, sizes)) == sorted(team), "as it is drawn it is another team"
    if room.spots == "same":
        marks = drawn[0].at_first
        for paths in drawn[1:]:
            over = sum(max(0, len(group) - room.groups.usual) for group in _first(paths))
            off = [one for one in paths.at_first if not any(_near(one, mark) for mark in marks)]
            assert len(off) <= over


def _drawn(unit: Unit, room: Room, hall: Hall, many: int) -> Paths:
    spots = room.sharing.spots
    age, joined = middle_age(unit), joined_in_lessons(unit)
    return paths_of(unit.dance, many, hall, age, joined=joined, stride=room.stride, spots=spots)


def assert_clear(paths: Paths) -> None:
    """Nobody starts nearer to a wall than arms held wide reach, and none dances into its border."""
    floor = (paths.hall.width / 2, paths.hall.depth / 2)
    for one in paths.stretches:
        if one.section is None or not one.counted:
            continue
        within = (leg for legs in paths.legs for leg in legs if one.begins <= leg.start < one.ends)
        ends = [(leg.x1, leg.y1) for leg in within]
        for x, y in ends:
            assert min(floor[0] - abs(x), floor[1] - abs(y)) >= BORDER - 0.051, one.section.letter
    for mark in paths.at_first:
        assert min(floor[0] - abs(mark.x), floor[1] - abs(mark.y)) >= 0.9 * paths.body.reach


def _first(paths: Paths) -> Together:
    return next(one.together for one in paths.stretches if one.section is not None)


def _near(one: Moment, other: Moment) -> bool:
    return metres((one.x, one.y), (other.x, other.y)) <= 0.1
