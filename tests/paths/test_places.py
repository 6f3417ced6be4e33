"""Laws of places: inside the hall, as far apart as said, never nearer in a larger hall."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.body.ages import at_age
from build_tools.model.dance import Standing
from build_tools.paths.facings import FACES, facings, in_threes, partners
from build_tools.paths.hall import SIDES, Hall, Point, bearing, dancing_area, metres
from build_tools.paths.places import FITS, Slots, slots
from build_tools.paths.scatter import nearest_two
from build_tools.paths.shapes_in_class import USUAL_APART
from build_tools.paths.starting import centres_of
from tests.paths.strategies import ENDS, FORMATIONS, WITHIN, halls
from tests.paths.strategies import SIDES as SIDES_OF_A_HALL

BODY = at_age(8)
HALL = dancing_area(Hall(), "front in the middle")
maybe_steps = st.none() | st.integers(1, 8).map(Fraction)
standing = st.builds(
    Standing,
    formation=st.sampled_from(FORMATIONS),
    facing=st.sampled_from(("front", "left", "centre", "partner")),
    place=st.just("In the hall"),
    within=st.none() | st.sampled_from(WITHIN),
    apart=maybe_steps,
    groups_apart=maybe_steps,
    columns=st.none() | st.integers(1, 12),
)
groups = st.lists(st.integers(1, 6), min_size=1, max_size=12).map(
    lambda sizes: tuple(sorted(sizes, reverse=True))
)


of_a_class = st.builds(
    lambda size, over, even: (size + 1,) * over + (size,) * even,
    st.integers(1, 5),
    st.integers(0, 3),
    st.integers(1, 9),
)
"""Groups as a class makes them: all of a size, or some of one more."""


def everybody(found: Slots) -> tuple[Point, ...]:
    """Every place, group after group."""
    return tuple(point for group in found.groups for point in group)


@given(standing, groups, halls)
def test_everybody_has_a_place_of_their_own_in_the_hall(
    one: Standing, sizes: tuple[int, ...], hall: Hall
) -> None:
    area = dancing_area(hall, "at the front")
    found = slots(one, sizes, area, BODY)
    places = everybody(found)
    assert [len(group) for group in found.groups] == list(sizes)
    assert all(area.holds(place, 1e-6) for place in places)
    assert len(places) == 1 or nearest_two(places) > 0


@given(standing, of_a_class, halls, st.integers(0, 10), st.integers(0, 10))
def test_a_larger_hall_never_brings_the_nearest_two_nearer(
    one: Standing, sizes: tuple[int, ...], hall: Hall, wider: int, deeper: int
) -> None:
    """Whether all fit as the unit says or everybody has to stand closer.

    Where columns are said, groups may stand in fewer as long as those do not fit, and neighbours
    in another row come and go; there it is said that all stand closer no more than before.
    """
    larger = Hall(hall.width + wider, hall.depth + deeper)
    small, large = (
        slots(one, sizes, dancing_area(each, "at the front"), BODY) for each in (hall, larger)
    )
    if one.columns is not None:
        assert large.drawn_closer >= min(FITS, small.drawn_closer) - 1e-4
    else:
        assert nearest_two(everybody(large)) >= nearest_two(everybody(small)) - 1e-4


@given(standing, of_a_class, halls)
def test_groups_keep_clear_of_one_another(
    one: Standing, sizes: tuple[int, ...], hall: Hall
) -> None:
    """As far as neighbours in a group are, or as the unit says, so much closer as all stand."""
    assume(max(sizes) > 1 and (one.within or one.formation in ("small groups", "pairs", "rows")))
    found = slots(one, sizes, dancing_area(hall, "at the front"), BODY)
    apart = (float(one.apart) if one.apart is not None else USUAL_APART) * BODY.step
    said = one.groups_apart if one.formation != "scattered" else None
    clear = apart if said is None else float(said) * BODY.step
    for group, other in combinations(found.groups, 2):
        nearest = min(metres(a, b) for a in group for b in other)
        assert nearest >= found.drawn_closer * clear - 1e-5


@given(standing, of_a_class, halls)
def test_who_faces_another_side_stands_as_if_that_were_the_front(
    one: Standing, sizes: tuple[int, ...], hall: Hall
) -> None:
    areas = (
        dancing_area(hall, "all round"),
        dancing_area(Hall(hall.depth, hall.width), "all round"),
    )
    for facing, then in (("front", "right"), ("right", "back"), ("back", "left")):
        here, there = (
            everybody(slots(replace(one, facing=way), sizes, area, BODY))
            for way, area in zip((facing, then), areas, strict=True)
        )
        assert [(-y, x) for x, y in here] == [pytest.approx(place) for place in there]


@pytest.mark.parametrize(
    ("within", "size", "neighbours"),
    [
        ("face to face", 2, ((0, 1),)),
        ("side by side", 3, ((0, 1), (1, 2))),
        ("one behind another", 4, ((0, 1), (1, 2), (2, 3))),
        ("square", 4, ((0, 1), (1, 2), (2, 3), (3, 0))),
        ("circle", 6, ((0, 1), (2, 3), (5, 0))),
        ("line", 5, ((0, 1), (3, 4))),
        ("cluster", 7, ((0, 1), (0, 4), (1, 2))),
        ("diamond", 3, ((0, 1), (1, 2), (2, 0))),
        ("diamond", 4, ((0, 1), (1, 2), (2, 3), (3, 0))),
        ("diamond", 5, ((0, 4), (1, 4), (2, 4), (3, 4))),
        ("diamond", 6, ((0, 4), (4, 5), (5, 2), (1, 4), (3, 5))),
        ("diamond", 7, ((0, 4), (4, 5), (5, 6), (6, 2), (1, 5), (3, 5))),
        ("diamond", 8, ((0, 4), (4, 1), (1, 5), (7, 0))),
    ],
)
def test_neighbours_are_as_many_steps_apart_as_is_said(
    within: str, size: int, neighbours: tuple[tuple[int, int], ...]
) -> None:
    one = Standing("small groups", "front", "Here", within=within, apart=Fraction(3))
    (group,) = slots(one, (size,), HALL, BODY).groups
    for a, b in neighbours:
        assert metres(group[a], group[b]) == pytest.approx(3 * BODY.step)


@pytest.mark.parametrize("size", range(3, 9))
def test_a_diamond_of_any_size_has_one_in_front_and_nobody_nearer_than_said(size: int) -> None:
    """So that only one of them has nobody before them, whom the others follow; common practice."""
    one = Standing("small groups", "front", "Here", within="diamond", apart=Fraction(3))
    (group,) = slots(one, (size,), HALL, BODY).groups
    front, *others = sorted(group, key=lambda place: place[1])
    assert front == group[0]
    assert all(place[1] > front[1] + BODY.step for place in others)
    assert nearest_two(group) == pytest.approx(3 * BODY.step)
    assert sum(x for x, _ in group) == pytest.approx(size * front[0])


def test_rows_stand_in_columns_so_many_steps_apart() -> None:
    """Four rows of four in two columns, two steps between dancers, four between rows."""
    one = Standing("rows", "front", "Rows", apart=Fraction(2), groups_apart=Fraction(4), columns=2)
    found = slots(one, (4, 4, 4, 4), HALL, BODY)
    step = BODY.step
    assert found.drawn_closer == 1
    assert found.unsaid == ()
    first, beside, behind, _ = found.groups
    assert beside[0][0] - first[3][0] == pytest.approx(4 * step)
    assert beside[0][1] == pytest.approx(first[0][1])
    assert behind[0][1] - first[0][1] == pytest.approx(4 * step)
    assert behind[0][0] == pytest.approx(first[0][0])


def test_a_hall_too_small_draws_everybody_closer_and_says_so() -> None:
    one = Standing("line", "front", "A line", apart=Fraction(3))
    found = slots(one, (1,) * 30, HALL, BODY)
    assert found.drawn_closer == pytest.approx(HALL.width / (29 * 3 * BODY.step))
    assert slots(one, (1,) * 6, HALL, BODY).drawn_closer == 1


def test_a_file_goes_the_way_it_faces_with_the_first_in_front() -> None:
    for facing, along in (("front", (0, -1)), ("left", (-1, 0)), ("right", (1, 0))):
        one = Standing("file", facing, "A file", apart=Fraction(1))
        points = everybody(slots(one, (1,) * 5, HALL, BODY))
        ahead = [(a[0] - b[0]) * along[0] + (a[1] - b[1]) * along[1] for a, b in pairwise(points)]
        assert ahead == [pytest.approx(BODY.step)] * 4


def test_what_is_not_said_is_named() -> None:
    assert slots(Standing("small groups", "centre", "x"), (4, 4), HALL, BODY).unsaid == (
        "apart", "within", "groups_apart",
    )  # fmt: skip
    assert slots(Standing("scattered", "front", "x"), (1, 1), HALL, BODY).unsaid == ()


@given(groups)
def test_partners_face_one_another_and_nobody_faces_themselves(sizes: tuple[int, ...]) -> None:
    one = Standing("small groups", "partner", "x", within="face to face", apart=Fraction(2))
    found = slots(one, sizes, HALL, BODY)
    places = everybody(found)
    first = [sum(sizes[:n]) for n in range(len(sizes))]
    together = tuple(tuple(range(f, f + size)) for f, size in zip(first, sizes, strict=True))
    with_whom, threes = partners(together), in_threes(together)
    ways = facings("partner", places, together, centres_of(places, together, HALL), HALL)
    for dancer, other in with_whom.items():
        if other != dancer:
            three = threes.get(dancer)
            beside = three[0] if three is not None and dancer == three[2] else dancer
            assert ways[dancer] == pytest.approx(bearing(places[beside], places[other]))
        if with_whom[other] == dancer and other != dancer:
            turned = (ways[dancer] - ways[other]) % 360
            assert turned == pytest.approx(180)


def test_facing_different_ways_everybody_has_room_ahead() -> None:
    area = dancing_area(Hall(), "at the front")
    one = Standing("scattered", "mixed", "x")
    places = everybody(slots(one, (1,) * 30, area, BODY))
    together = tuple((n,) for n in range(30))
    for n, way in enumerate(facings("mixed", places, together, places, area)):
        for other in places:
            near = other != places[n] and metres(places[n], other) < 1.2
            ahead = abs((bearing(places[n], other) - way + 180) % 360 - 180) < 20
            assert not (near and ahead)


def test_one_larger_group_takes_no_more_floor_than_it_stands_on() -> None:
    """A six among fours, two and two deep: two rows are five and one clear way deep, not seven."""
    one = Standing(
        "small groups",
        "front",
        "Fours",
        within="face to face",
        apart=Fraction(3),
        groups_apart=Fraction(2),
        columns=4,
    )
    found = slots(one, (6, *(4,) * 6), dancing_area(Hall(30, 30), "at the front"), BODY)
    across, along = ([point[axis] for point in everybody(found)] for axis in (0, 1))
    assert max(along) - min(along) == pytest.approx((2 * 3 + 2 + 3) * BODY.step)
    assert max(across) - min(across) == pytest.approx((4 * 3 + 3 * 2) * BODY.step)


LEFT, RIGHT = "left end of the front row", "right end of the front row"


def fours(end: str | None) -> Standing:
    """Fours that stand in two pairs, one behind the other, in four columns."""
    return Standing(
        "small groups",
        "front",
        "Fours",
        within="face to face",
        apart=Fraction(3),
        groups_apart=Fraction(3),
        columns=4,
        larger_groups=end,
    )


@pytest.mark.parametrize(
    ("end", "outermost"), [(LEFT, min), (RIGHT, max), ("right end of the back row", max)]
)
def test_a_larger_group_stands_where_the_unit_says(end: str, outermost: Callable[..., Any]) -> None:
    """Advisers twice found the six of thirty at the back wall, against the unit's own words."""
    area = dancing_area(Hall(30, 30), "at the front")
    found = slots(fours(end), (6, *(4,) * 6), area, BODY).groups
    six, others = found[0], found[1:]
    first = min(y for group in found for _, y in group)
    is_front = end.endswith("front row")
    in_row = [one for one in found if (min(y for _, y in one) < first + 0.01) == is_front]
    assert six in in_row
    assert outermost(in_row, key=lambda group: group[0][0]) == six
    if is_front:
        # nobody stands behind its last pair, and so it has all the floor that is left
        mine = [x for x, _ in six]
        deep = max(y for _, y in six)
        between = 3 * BODY.step
        for group in others:
            behind = max(y for _, y in group) > min(y for _, y in six) + between
            beside = all(x < min(mine) - 0.1 or x > max(mine) + 0.1 for x, _ in group)
            assert beside or not behind
        assert deep < max(y for group in others for _, y in group) + 0.01


@given(standing, of_a_class, halls, st.sampled_from(ENDS))
def test_where_larger_groups_stand_moves_nobody_nearer(
    one: Standing, sizes: tuple[int, ...], hall: Hall, end: str
) -> None:
    assume(max(sizes) > 1 and one.formation != "scattered")
    assume(one.within or one.formation in ("small groups", "pairs", "rows"))
    found = slots(replace(one, larger_groups=end), sizes, dancing_area(hall, "at the front"), BODY)
    assert [len(group) for group in found.groups] == list(sizes)
    apart = (float(one.apart) if one.apart is not None else USUAL_APART) * BODY.step
    clear = apart if one.groups_apart is None else float(one.groups_apart) * BODY.step
    for group, other in combinations(found.groups, 2):
        nearest = min(metres(a, b) for a in group for b in other)
        assert nearest >= found.drawn_closer * clear - 1e-5


@given(halls, st.integers(1, 36), st.sampled_from(SIDES_OF_A_HALL))
def test_where_all_face_different_ways_nobody_faces_the_side_left_out(
    hall: Hall, many: int, side: str
) -> None:
    """ "Any way but the front": the first row went to a metre and a half of the watchers' wall."""
    area = dancing_area(hall, "at the front")
    places = everybody(slots(Standing("scattered", "mixed", "x"), (1,) * many, area, BODY))
    together = tuple((n,) for n in range(many))
    ways = facings("mixed", places, together, places, area, side)
    away = [abs((way - SIDES[side] + 180) % 360 - 180) for way in ways]
    assert min(away) >= FACES - 0.001
    # and they still face different ways
    assert many < 4 or len({round(way) for way in ways}) > 1


def test_fewer_groups_may_stand_in_fewer_columns_but_no_deeper_than_a_usual_class() -> None:
    """Fifteen pairs in three columns are five rows; eight pairs may be four rows of two."""
    one = Standing(
        "pairs",
        "front",
        "Two banks",
        within="face to face",
        apart=Fraction(7),
        groups_apart=Fraction(2),
        columns=3,
    )
    area = dancing_area(Hall(12, 9), "at the front")
    pairs = slots(one, (2,) * 8, area, BODY).groups
    assert len({round(x, 6) for (x, _), _ in pairs}) == 2
    assert slots(one, (2,) * 8, area, BODY).drawn_closer == 1
    assert slots(one, (2,) * 15, area, BODY).drawn_closer < FITS


def test_a_scattered_class_nearer_than_its_distance_is_said_to_be_closer() -> None:
    one = Standing("scattered", "front", "Anywhere", apart=Fraction(4))
    found = slots(one, (1,) * 30, dancing_area(Hall(7, 7), "at the front"), BODY)
    assert found.drawn_closer == pytest.approx(nearest_two(everybody(found)) / (4 * BODY.step))
    assert found.drawn_closer < 1


@pytest.mark.parametrize("facing", ["front", "right", "back", "left", "centre"])
def test_a_horseshoe_is_along_three_walls_and_open_to_the_side_it_faces(facing: str) -> None:
    """Starlings begin along three walls; they were drawn in a half circle in the middle."""
    (found,) = (slots(Standing("horseshoe", facing, "Walls"), (1,) * 30, HALL, at_age(8)),)
    places = [group[0] for group in found.groups]
    open_to = "front" if facing == "centre" else facing
    at = {
        "front": sum(y == pytest.approx(HALL.front) for _, y in places),
        "back": sum(y == pytest.approx(HALL.back) for _, y in places),
        "left": sum(x == pytest.approx(HALL.left) for x, _ in places),
        "right": sum(x == pytest.approx(HALL.right) for x, _ in places),
    }
    assert at.pop(open_to) == 0
    assert all(many > 3 for many in at.values())
    assert sum(at.values()) >= 30
    assert found.drawn_closer == 1
    gap = min(metres(one, other) for n, one in enumerate(places) for other in places[:n])
    near = slots(
        Standing("horseshoe", facing, "Walls", apart=Fraction(1)), (1,) * 30, HALL, at_age(8)
    )
    assert near.drawn_closer == 1
    close = [group[0] for group in near.groups]
    assert min(metres(a, b) for n, a in enumerate(close) for b in close[:n]) < gap
    far = slots(
        Standing("horseshoe", facing, "Walls", apart=Fraction(4)), (1,) * 30, HALL, at_age(8)
    )
    assert far.drawn_closer < 0.6
