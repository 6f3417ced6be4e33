"""Who goes to which place of a new formation: odd groups too go the short way, always the same."""

from __future__ import annotations

from collections.abc import Sequence

from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.ages import at_age
from build_tools.model.dance import Standing
from build_tools.paths.class_in_groups import class_in_groups
from build_tools.paths.hall import Hall, Point, dancing_area, metres
from build_tools.paths.places import slots
from build_tools.paths.starting import in_order, orders, shortest
from build_tools.views.dance.on_the_floor import in_a_hall
from tests.paths.strategies import halls
from tests.support.sound_bank import whole_bank

BODY = at_age(8)
FOURS = Standing("small groups", "front", "Fours", within="square")
points = st.tuples(st.integers(-90, 90), st.integers(-50, 50)).map(
    lambda one: (one[0] / 10, one[1] / 10)
)


def all_ways(here: Sequence[Point], places: Sequence[Point]) -> float:
    return sum(metres(*both) for both in zip(here, places, strict=True))


@given(st.integers(5, 36), st.sampled_from(((4,), (2, 4))), halls, st.data())
def test_no_way_is_longer_than_where_the_odd_groups_stand_first(
    pupils: int, sizes: tuple[int, ...], hall: Hall, data: st.DataObject
) -> None:
    together = class_in_groups(pupils, 4, sizes)
    here = data.draw(st.lists(points, min_size=pupils, max_size=pupils))
    area = dancing_area(hall, "at the front")
    places, found = shortest(FOURS, together, here, area, BODY)
    given_order = slots(FOURS, tuple(map(len, together)), area, BODY)
    assert sorted(map(len, found.groups)) == sorted(map(len, together))
    assert sorted(places) == sorted(point for group in found.groups for point in group)
    if given_order.drawn_closer == found.drawn_closer:
        assert all_ways(here, places) <= all_ways(here, in_order(given_order, together)) + 0.1
    assert shortest(FOURS, together, here, area, BODY)[0] == places


def test_one_or_two_odd_groups_are_tried_everywhere_and_more_beside_one_another() -> None:
    assert set(orders((6, 4, 4))) == {(6, 4, 4), (4, 6, 4), (4, 4, 6)}
    assert len(set(orders((3, 3, 4, 4, 4)))) == 10
    assert len(list(orders((3, 3, 3, *(4,) * 6)))) == 7
    assert list(orders((2, 2))) == [(2, 2)]
    assert next(orders((3, 4, 4))) == (3, 4, 4)


def test_the_six_of_a_class_of_thirty_does_not_cross_the_hall() -> None:
    """From two long lines to fours in eight counts: once it was sixteen metres for a six."""
    (leaving,) = (unit for unit in whole_bank().units if unit.slug == "leaving")
    paths = in_a_hall(leaving)
    starts = [one.start for one in paths.stretches if one.section and one.section.letter == "B"]
    assert {len(group) for one in paths.stretches for group in one.together} == {2, 4, 6}
    (start,) = (one for one in starts if one is not None)
    assert max(map(metres, start.come_from, start.wanted)) < paths.hall.width / 2
