"""Laws of a class in a hall, over dances of every kind."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given

from build_tools.model.dance import Dance
from build_tools.paths.hall import Hall, floor, metres
from build_tools.paths.legs import Leg, during
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from tests.paths.dances import dance_of, loom, pool, section, standing
from tests.paths.strategies import ages, dances, halls, pupils
from tests.support.sound_bank import every_unit

FINE = 1e-6


def moments(paths: Paths) -> list[float]:
    """Every half count of the dance."""
    return [n / 2 for n in range(int(2 * paths.lasts) + 1)]


def seconds_of(paths: Paths, leg: Leg) -> float:
    """How long a leg lasts."""
    during_it = [one.seconds for one in paths.stretches if one.begins <= leg.start < one.ends]
    return (leg.end - leg.start) * max((one or 0.0 for one in during_it), default=0.0)


@given(dances(), pupils, halls, ages)
def test_everybody_is_somewhere_at_every_count_and_nobody_jumps(
    dance: Dance, many: int, hall: Hall, age: float
) -> None:
    """Between two moments nobody goes faster than a running child; a bend adds a little."""
    paths = paths_of(dance, many, hall, age)
    assert paths.dancers == many
    for dancer, legs in enumerate(paths.legs):
        here = paths.at_first[dancer]
        for leg in legs:
            assert metres((here.x, here.y), (leg.x0, leg.y0)) < FINE, "a leg starts where one is"
            assert here.level == leg.level0
            assert math.cos(math.radians(here.facing - leg.face0)) > 1 - FINE
            here = during(leg, leg.end)
            far = metres((leg.x0, leg.y0), (leg.x1, leg.y1))
            assert far <= paths.body.running * seconds_of(paths, leg) + FINE
        known = [(leg.start, leg.end) for leg in legs]
        assert known == sorted(known), "nobody is in two places"
        assert all(one[1] <= two[0] + FINE for one, two in pairwise(known))


@given(dances(), pupils, halls)
def test_everybody_starts_on_the_floor_apart_and_new_places_are_on_it(
    dance: Dance, many: int, hall: Hall
) -> None:
    paths = paths_of(dance, many, hall)
    first = {(round(one.x, 4), round(one.y, 4)) for one in paths.at_first}
    assert len(first) == many, "nobody stands where another does"
    for one in paths.stretches:
        if one.start is not None and one.start.spot == "new place":
            assert all(paths.area.holds(place, FINE) for place in one.start.wanted)


@given(dances(), pupils, halls)
def test_the_same_dance_class_and_hall_give_the_same_paths(
    dance: Dance, many: int, hall: Hall
) -> None:
    one = paths_of(dance, many, hall)
    paths_of.cache_clear()
    other = paths_of(dance, many, hall)
    assert (one.legs, one.at_first, one.stretches) == (other.legs, other.at_first, other.stretches)


@given(dances())
def test_stretches_follow_one_another(dance: Dance) -> None:
    paths = paths_of(dance, 6)
    letters = [one.section.letter for one in paths.stretches if one.section]
    assert tuple(letters) == dance.form
    for one, two in pairwise(paths.stretches):
        overlaps = two.transition is not None and two.transition.kind == "overlap"
        assert two.begins <= one.ends if overlaps else two.begins == one.ends


def test_every_unit_has_paths_in_the_hall_or_says_who_leaves_it() -> None:
    for unit in every_unit():
        paths = paths_of(unit.dance)
        for moment in moments(paths):
            for one in paths.everybody(moment):
                assert all(math.isfinite(value) for value in one)


def test_a_side_is_named_by_the_dance_or_by_the_hall() -> None:
    paths = paths_of(pool(), 8, age=8)
    side = paths.body.side_step
    for dancer in range(8):
        first, rushed = paths.at_first[dancer], paths.at(dancer, 6)
        assert rushed.x - first.x == pytest.approx(4 * side)
        assert rushed.y == pytest.approx(first.y)
        assert rushed.facing == 0
        home = paths.at(dancer, 14)
        assert (home.x, home.y) == pytest.approx((first.x, first.y))


def test_a_mirror_keeps_partners_opposite_and_a_swap_brings_both_home() -> None:
    paths = paths_of(pool(), 8)
    (crabs,) = (one for one in paths.stretches if one.section and one.section.letter == "C")
    for ones, twos in crabs.together:
        before = [paths.at(one, crabs.begins) for one in (ones, twos)]
        asked = [paths.at(one, crabs.begins + 16) for one in (ones, twos)]
        after = [paths.at(one, crabs.ends) for one in (ones, twos)]
        assert asked[0].y == pytest.approx(asked[1].y), "opposite one another after the answer"
        assert asked[0].y != pytest.approx(before[0].y)
        assert [(one.x, one.y) for one in after] == [
            pytest.approx((one.x, one.y)) for one in before
        ]


def test_a_canon_moves_its_parts_one_after_another() -> None:
    paths = paths_of(loom(), 8)
    (canon,) = (one for one in paths.stretches if one.section and one.section.letter == "B")
    still = [paths.at(n, canon.begins).y for n in range(4)]
    for part in range(4):
        moment = canon.begins + 2 * part
        assert paths.at(part, moment).y == pytest.approx(still[part])
        assert paths.at(part, moment + 2).y == pytest.approx(still[part] - 2 * paths.body.step)


def test_partners_who_go_towards_one_another_meet_and_do_not_pass() -> None:
    facing = standing("pairs", "partner", within="face to face", apart=6)
    dance = dance_of(
        "A",
        {"A": section(4, facing, [{"what": ["go"], "as": "unison"}])},
        {"go": [{"travel": 4, "steps": 3, "towards": "partner"}]},
    )
    paths = paths_of(dance, 2)
    one, two = paths.everybody(4)
    assert metres((one.x, one.y), (two.x, two.y)) == pytest.approx(0, abs=FINE)
    assert floor(paths.hall).holds((one.x, one.y))


def test_what_has_no_part_left_is_danced_by_nobody() -> None:
    """Such a passage is a fault that another rule names; the paths go on without it."""
    motifs = {name: [{"travel": 8}] for name in ("glide", "creep", "dash")}
    passage = {"what": ["glide", "creep", "dash"], "as": "side by side", "parts": 2}
    paths = paths_of(dance_of("A", {"A": section(8, standing("scattered"), [passage])}, motifs), 4)
    assert [len(legs) for legs in paths.legs] == [1, 1, 1, 1]
