"""Groups of other sizes, marks and distances are drawn as the published units say them in words."""

from __future__ import annotations

import math
from itertools import combinations

import pytest

from build_tools.body.ages import tables
from build_tools.paths.for_pages import roles_in
from build_tools.paths.hall import Hall, metres
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.places import FITS
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.dance.room_to_dance import dances_as_drawn, unit_room
from tests.support.sound_bank import unit_named, whole_bank


def danced(slug: str, letter: str, pupils: int = 30) -> tuple[Paths, StretchPaths]:
    """A section of a published unit, as it is drawn for a class of so many."""
    unit = next(one for one in whole_bank().units if one.slug == slug)
    paths = in_a_hall(unit, pupils)
    found = next(s for s in paths.stretches if s.section and s.section.letter == letter)
    return paths, found


def test_in_a_six_of_two_pairs_each_half_has_three_side_by_side() -> None:
    """Leaving: "in a six, each half has three", the first pair on the left."""
    paths, at_once = danced("leaving", "C")
    roles, places = roles_in(at_once), paths.everybody(at_once.begins)
    (six,) = (group for group in at_once.together if len(group) == 6)
    from_the_left = sorted(six, key=lambda one: places[one].x)
    assert [roles[one] for one in from_the_left] == [0, 0, 0, 1, 1, 1]


@pytest.mark.parametrize("pupils", [24, 28, 30])
def test_curves_begin_as_far_from_the_gate_as_the_unit_asks(pupils: int) -> None:
    """Leaving: "its ends four big steps from that wall"; a big step as in ages.json."""
    paths, at_once = danced("leaving", "C", pupils)
    big = paths.body.step * float(tables()["steps"]["big"])
    first = min(one.y for one in paths.everybody(at_once.begins))
    assert first + paths.hall.depth / 2 >= 4 * big


@pytest.mark.parametrize("letter", ["A", "B", "C", "D", "A'"])
def test_no_pool_is_behind_a_six(letter: str) -> None:
    """Rock pool: "Put a six where no pool is behind it"."""
    paths, one = danced("rock-pool", letter)
    places = paths.everybody(one.begins)
    (six,) = (group for group in one.together if len(group) == 6)
    left, right = min(places[n].x for n in six), max(places[n].x for n in six)
    back = max(places[n].y for n in six)
    others = {n for group in one.together if group != six for n in group}
    assert not [n for n in others if left <= places[n].x <= right and places[n].y > back]


@pytest.mark.parametrize("letter", ["A", "B"])
def test_all_five_of_a_five_stand_clear_of_one_another(letter: str) -> None:
    """Magnets: "number 5 stands halfway between 1 and 3", and the five at the left of the front."""
    paths, one = danced("magnets", letter, 29)
    places = [(p.x, p.y) for p in paths.everybody(one.begins)]
    (five,) = (group for group in one.together if len(group) == 5)
    first, third, fifth = (places[five[n]] for n in (0, 2, 4))
    assert fifth == pytest.approx(((first[0] + third[0]) / 2, (first[1] + third[1]) / 2))
    assert min(metres(places[a], places[b]) for a, b in combinations(five, 2)) > 2 * paths.body.step
    assert first == pytest.approx(min(places))


def test_a_flight_passes_the_partner_at_an_arms_length() -> None:
    """Weaving shed: "past your partner's front … leave an arm's length"."""
    paths, shuttle = danced("weaving-shed", "B")
    four = next(group for group in shuttle.together if len(group) == 4)
    moments = [paths.everybody(shuttle.begins + n / 4) for n in range(int(shuttle.lasts) * 4)]
    for a, b in ((0, 1), (2, 3)):
        near = min(
            metres((at[four[a]].x, at[four[a]].y), (at[four[b]].x, at[four[b]].y)) for at in moments
        )
        assert 0.95 * paths.body.arm < near < 1.2 * paths.body.arm


def test_who_hauls_stops_at_their_own_mark() -> None:
    """Rope bridge: "nobody goes past the mark"."""
    paths, calling = danced("rope-bridge", "A")
    begun = paths.everybody(calling.begins)
    inward = {n: 1 if begun[n].x < begun[n ^ 1].x else -1 for n in range(len(begun))}
    for count in range(int(calling.lasts) + 1):
        for n, now in enumerate(paths.everybody(calling.begins + count)):
            assert (now.x - begun[n].x) * inward[n] > -1e-6, f"dancer {n} at count {count}"


@pytest.mark.parametrize("letter", ["B", "C"])
def test_the_ones_of_a_three_look_right_and_pairs_at_one_another(letter: str) -> None:
    """After home time: "when all turn, the ones are side by side"; in C each has a thing alone."""
    paths, one = danced("after-home-time", letter, 15)
    _, pairs = danced("after-home-time", "B", 15)
    before = paths.everybody(one.begins)
    for group in pairs.together:
        ways = [before[dancer].facing for dancer in group]
        assert ways == pytest.approx([90.0, 270.0, 90.0][: len(group)])


def test_the_shift_of_the_road_is_half_way_to_the_next_file() -> None:
    """Three tiny side-steps, a step in all, half way to the next file: they were 0.88 metres, three
    quarters of the way."""
    unit = unit_named("road-builders")
    assert "a step in all, half way to the next file" in unit.lessons[1].notes
    for pupils in (28, 30, 31):
        paths = in_a_hall(unit, pupils)
        sighting = next(s for s in paths.stretches if s.section and s.section.letter == "B")
        start = paths.everybody(sighting.begins)
        between = sorted({round(one.x, 3) for one in start})
        ways = {
            round(math.dist(leg[2:4], leg[4:6]), 3)
            for legs in paths.legs
            for leg in legs
            if sighting.begins <= leg.start < sighting.ends and leg[2:4] != leg[4:6]
        }
        half = (between[1] - between[0]) / 2
        assert list(ways) == [pytest.approx(half, abs=0.002)]


@pytest.mark.parametrize("pupils", [27, 29, 31, 33])
def test_a_three_of_kites_has_its_room_at_the_right_end_of_the_back_row(pupils: int) -> None:
    """Two on the spots, the third behind, three big steps free behind the spots; where the wall is
    nearer, fewer fly at a time. All were told to fly at once with the third at the wall."""
    unit = unit_named("kite-and-string")
    assert "three big steps free behind the spots" in unit.notes
    for hall in (Hall(18.0, 10.0), Hall(18.0, 12.0), Hall(16.0, 11.0)):
        paths = in_a_hall(unit, pupils, hall)
        first = next(one for one in paths.stretches if one.section)
        (three,) = (group for group in first.together if len(group) == 3)
        one, other, third = (paths.at_first[n] for n in three)
        assert one.y == pytest.approx(other.y)
        assert third.y > one.y
        assert one.x < third.x < other.x
        on_spots = [place for n, place in enumerate(paths.at_first) if n != three[2]]
        back_row = [place for place in on_spots if place.y == pytest.approx(one.y)]
        assert one.y == pytest.approx(max(place.y for place in on_spots))
        assert other.x == max(place.x for place in back_row)
        free = hall.depth / 2 - one.y
        if dances_as_drawn(unit, pupils, hall):
            assert free >= FITS * 3 * paths.body.step * float(tables()["steps"]["big"])
        else:
            assert unit_room(unit, pupils, hall).sharing.dancing[0] < pupils
    assert not dances_as_drawn(unit, 31, Hall(18.0, 10.0))
    assert dances_as_drawn(unit, 31, Hall(18.0, 12.0))
    assert dances_as_drawn(unit, 30, Hall(18.0, 10.0))
