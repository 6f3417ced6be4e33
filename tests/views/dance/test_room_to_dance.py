"""How a class dances in a hall with room for everybody; the sum is held to the pages' script.

That nobody is in a wall, and nobody stands closer than the dance asks, is asked of the paths again.
The halls are those that two teachers had, and those that the units' own words name.
"""

from __future__ import annotations

import os
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_tools.model.unit import Unit
from build_tools.paths.hall import BORDER, Hall, floor
from build_tools.paths.legs import Leg
from build_tools.paths.model import Paths
from build_tools.paths.reached import ASKED_OF, steps_reach
from build_tools.paths.scatter import nearest_two
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.room_to_dance import Room, as_drawn, dances_as_drawn, unit_room
from build_tools.views.dance.same_spots import Spots
from build_tools.views.dance.teams import Sharing, Whole, sharings, teams_of, whole_groups
from build_tools.views.dance.waiting import Waiting, waiting_in
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.words.room_said import at_once_in_short, room_in_words
from tests.support.banks import THOROUGH
from tests.support.sound_bank import every_unit, whole_bank

MOST = 1000 if os.environ.get(THOROUGH) else 12
"""Classes and halls: each is a dance several times over."""
HALLS = (Hall(18.0, 10.0), Hall(15.0, 10.0), Hall(12.0, 9.0), Hall(9.0, 6.0))


def _drawn(unit: Unit, room: Room) -> Paths:
    hall = Hall(room.hall.depth, room.hall.width) if room.turned else room.hall
    dancing = room.sharing.asked[0]
    age, joined = middle_age(unit), joined_in_lessons(unit)
    spots = room.sharing.spots
    return paths_of(unit.dance, dancing, hall, age, joined=joined, stride=room.stride, spots=spots)


@pytest.mark.parametrize(
    ("number", "unit"), [*enumerate(every_unit())], ids=[unit.slug for unit in every_unit()]
)
def test_what_is_told_works_and_nothing_less_does(number: int, unit: Unit, thorough: bool) -> None:
    """In every hall; in the usual run in two of the four, in turns."""
    for hall in HALLS if thorough else HALLS[number % 2 :: 2]:
        room = unit_room(unit, 30, hall)
        if not room.found:
            continue
        paths = _drawn(unit, room)
        wall, apart = floor(paths.hall), closest_at_starts(paths)
        for leg in (leg for legs in paths.legs for leg in legs):
            assert wall.holds((leg.x1, leg.y1), 0.05 - BORDER) or not _counted(paths, leg)
        for letter, (closest, roomy) in apart.items():
            assert closest >= 0.9 * min(roomy, paths.body.arm), letter
        metres = hall.width * hall.depth
        assert metres / room.sharing.dancing[0] >= recommended_least(unit.years)
        if room.sharing.dancing[0] < 30 or room.stride != 1 or room.turned:
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
    "magnets": ((18.0, 10.0), (15.0, 9.0)),
    "marble-run": ((15.0, 9.0), (12.0, 9.0)),
    "rope-bridge": ((18.0, 9.0), (15.0, 9.0)),
    "leaving": ((18.0, 9.0), (15.0, 9.0)),
}
"""Units whose own words say in which hall 30 dance at once, and a hall that is too small."""


@settings(max_examples=MOST)
@given(st.sampled_from(every_unit()), st.integers(24, 36), st.integers(8, 20), st.integers(7, 12))
def test_whether_all_dance_as_drawn_is_one_answer(
    unit: Unit, pupils: int, wide: int, deep: int
) -> None:
    hall = Hall(float(wide), float(deep))
    assert dances_as_drawn(unit, pupils, hall) == as_drawn(unit_room(unit, pupils, hall))


@pytest.mark.parametrize("slug", WORDS)
def test_gaps_that_a_small_hall_squeezes_count_as_no_room(slug: str) -> None:
    """A formation drawn closer until it fits is not the dance; the units' own words agree."""
    (unit,) = (one for one in whole_bank().units if one.slug == slug)
    large, small = (unit_room(unit, 30, Hall(*sides)) for sides in WORDS[slug])
    assert (large.turns, large.turned, large.stride, large.closer) == (1, False, 1.0, ())
    assert small.closer
    assert small.sharing.dancing[0] < 30
    assert small.tight
    assert "would stand closer than the dance asks" in room_in_words(small)


def test_seeds_go_in_a_hall_of_twelve_by_nine_as_its_notes_say() -> None:
    """Eight pairs, then seven: who goes a way of their own goes towards floor, not to a wall."""
    (unit,) = (one for one in whole_bank().units if one.slug == "seeds-on-the-move")
    room = unit_room(unit, 30, Hall(12.0, 9.0))
    assert "mark homes for eight pairs" in unit.notes
    assert [len(team) for team in room.sharing.teams] == [8, 7]


@pytest.mark.parametrize(
    ("hall", "words"),
    [
        (Hall(25.0, 15.0), "All 30 can dance at once."),
        (Hall(15.0, 10.0), "24 of 30 pupils dance at once."),
        (Hall(12.0, 9.0), "30 pupils dance in two teams, in turns."),
    ],
)
def test_who_chooses_a_unit_is_told_in_short(hall: Hall, words: str) -> None:
    (unit,) = (one for one in whole_bank().units if one.slug == "seeds-on-the-move")
    assert at_once_in_short(unit_room(unit, 30, hall)) == words


_REACH = (
    ("rope-bridge", True),
    ("weaving-shed", True),
    ("rock-pool", False),
    ("leaving", False),
)


def test_steps_that_are_a_distance_to_somebody_are_not_halved() -> None:
    """Partners who meet across the gap, and threads that go round one another, would not arrive.

    A wave that all dance the same way is the same wave with shorter steps, and so are two lines
    that walk one behind the other.
    """
    for slug, reach in _REACH:
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
    front = floor(paths.hall).front + 1.0
    ways = (leg for legs in paths.legs for leg in legs if _counted(paths, leg))
    assert min(leg.y1 for leg in ways) >= front - 0.05


def test_each_way_is_said_in_a_sentence() -> None:
    hall = Hall(15.0, 10.0)
    near = "1 pupil in part A and 2 in part B would come too near a wall."
    front, steps = "Take a short wall as the front.", "Make every travelling step half as long."
    ways = {
        (False, 1.0): "",
        (True, 1.0): f" {front} With a long wall as the front, {near}",
        (False, 0.5): f" {steps} With whole steps, {near}",
        (True, 0.5): f" {front} {steps} Danced as it is drawn, {near}",
    }
    for (turned, stride), words in ways.items():
        room = _room(turned=turned, stride=stride, leaving=(("A", 1), ("B", 2)) if words else ())
        assert room_in_words(room) == f"All 30 can dance at once.{words}"
    deep = replace(_room(turned=True, closer=("B",)), hall=Hall(10.0, 15.0))
    assert room_in_words(deep) == (
        "All 30 can dance at once. Take a long wall as the front. With a short wall as the front, "
        "pupils in part B would stand closer than the dance asks."
    )
    two = Sharing(((4, 4, 4, 3), (4, 4, 4, 3)), 0, (15,), (16,))
    named = (
        "The class is two teams, the same in every lesson. Team 1: three fours and one three, 15. "
        "Team 2: three fours and one three, 15. One team at a time dances in the middle of the hall"
    )
    assert room_in_words(_room(two, closer=("A", "C"), spots="same")) == (
        f"{named}, always on the same spots. The other sits along the front. Those who sit count "
        "aloud. If all danced at once as it is drawn, pupils in parts A and C would stand closer "
        "than the dance asks."
    )
    watching = Waiting(counts=False)
    assert room_in_words(_room(two, waiting=watching)) == (
        f"{named}. The other sits along the front. Each of them watches one four."
    )
    own = Waiting(counts=True, does="they hum", where="along the wall that is not the door's")
    assert room_in_words(_room(two, spots="but odd groups", waiting=own)) == (
        f"{named}, always on the same spots. A group of another size needs marks of its own. The "
        "other sits along the wall that is not the door's. They hum."
    )
    few = _room(Sharing((), 1, (27, 26), (28,)), enough=False, lined=frozenset(("left", "right")))
    assert room_in_words(replace(few, turned=True)) == (
        "26 or 27 can dance at once: one four sits at both ends. Those who sit count aloud. Change "
        "who sits each time it is danced. Take a short wall as the front. The floor is too small "
        "for all to dance at once."
    )
    both = _room(found=False, leaving=(("B", 1),), closer=("B",))
    assert room_in_words(both) == (
        "If all danced at once as it is drawn, 1 pupil in part B would come too near a wall, and "
        "pupils in part B would stand closer than the dance asks. Not even a quarter of the class "
        "has the room it needs: dance it on the spot."
    )
    assert room_in_words(both, own_way=True) == (
        "Danced as it is drawn, not even a quarter of the class has the room it needs here."
    )
    none = _room(found=False, leaving=(("A", 4),))
    assert room_in_words(none) == (
        "If all danced at once as it is drawn, 4 pupils in part A would come too near a wall. "
        "Chalk a line one big step from each wall; who reaches it dances on the spot."
    )
    assert "All 30" in room_in_words(_room())
    assert hall == _room().hall


_ALL = Sharing((), 0, (30,), (32,))
_COUNTED = Waiting(counts=True)


def _room(
    sharing: Sharing = _ALL,
    *,
    found: bool = True,
    turned: bool = False,
    stride: float = 1.0,
    enough: bool = True,
    leaving: tuple[tuple[str, int], ...] = (),
    closer: tuple[str, ...] = (),
    lined: frozenset[str] = frozenset(("front",)),
    spots: Spots = "none",
    waiting: Waiting = _COUNTED,
) -> Room:
    """Thirty in fours in a hall of 15 by 10 metres, all at once as it is drawn."""
    groups, hall = Whole(4, (4, 4, 4, 4, 4, 4, 3, 3)), Hall(15.0, 10.0)
    return Room(
        *(30, hall, found, turned, stride, enough, leaving, closer, groups, sharing, (), spots),
        lined,
        waiting,
    )


@given(st.integers(1, 60), st.sampled_from(((1,), (1, 2), (2, 4), (4,), (1, 6), (2, 6), (3, 8))))
def test_teams_are_whole_groups_and_as_even_as_they_go(pupils: int, sizes: tuple[int, ...]) -> None:
    whole = whole_groups(pupils, sizes)
    assert sum(whole.sizes) == pupils
    for way in sharings(whole):
        assert way.dancing[0] <= pupils
        assert list(way.dancing) == sorted(way.dancing, reverse=True)
        if way.waiting:
            assert (pupils - way.dancing[-1]) * 4 <= pupils
        if way.teams:
            assert sorted(size for team in way.teams for size in team) == sorted(whole.sizes)
            many = [sum(team) for team in way.teams]
            assert max(many) - min(many) <= max(whole.sizes), "a group moved over would be evener"


def test_the_teams_of_two_classes() -> None:
    """As teachers of these classes, in halls of 12 by 10 and 14 by 10 metres, set them."""
    rooms = {
        slug: unit_room(next(one for one in whole_bank().units if one.slug == slug), many, hall)
        for slug, many, hall in (
            ("magnets", 29, Hall(12.0, 10.0)),
            ("seeds-on-the-move", 30, Hall(14.0, 10.0)),
        )
    }
    assert rooms["magnets"].sharing.teams == ((5, 4, 4), (4, 4, 4, 4))
    # an empty place in a file keeps its floor, so part C has eight files in every class
    assert rooms["magnets"].tight == ("A", "B", "C", "D")
    assert rooms["seeds-on-the-move"].sharing.dancing == (16, 14)
    assert teams_of((5, 4, 4, 4, 4, 4, 4), 3) == ((4, 4, 4), (5, 4), (4, 4))


@pytest.mark.parametrize(
    ("pupils", "teams"),
    [
        (28, ((4, 4, 4), (4, 4, 4, 4))),
        (30, ((3, 4, 3, 4), (4, 4, 4, 4))),
        (32, ((4, 4, 4, 4), (4, 4, 4, 4))),
    ],
)
def test_where_columns_stay_together_teams_are_the_left_and_the_right_half(
    pupils: int, teams: tuple[tuple[int, ...], ...]
) -> None:
    """Magnets: "team 1 is the left half of the rows, team 2 the right half", and an adviser: who
    sits is at the two ends of the north wall, where two columns leave four metres."""
    (unit,) = (one for one in whole_bank().units if one.slug == "magnets")
    room = unit_room(unit, pupils, Hall(15.0, 10.0))
    assert room.sharing.teams == teams
    assert room.spots == "same"
    paths = _drawn(unit, room)
    wide = max(abs(place[0]) for one in paths.stretches if one.start for place in one.start.wanted)
    assert wide < 15 / 2 - 3.5


def test_nobody_lands_within_a_metre_of_a_wall_where_pupils_sit() -> None:
    """An adviser: a dancer landed 0.8 m from a wall that fifteen pupils sat against."""
    (unit,) = (one for one in whole_bank().units if one.slug == "magnets")
    along = replace(unit, space=replace(unit.space, who_sits_where="close against the north wall"))
    assert waiting_in(unit).at_ends
    assert not waiting_in(along).at_ends
    room = unit_room(along, 30, Hall(15.0, 10.0))
    assert room.turns > 1
    wall = floor(room.hall if not room.turned else Hall(10.0, 15.0)).front
    paths = _drawn(along, room)
    ways = (leg for legs in paths.legs for leg in legs if _counted(paths, leg))
    assert min(leg.y1 for leg in ways) >= wall + 0.95
