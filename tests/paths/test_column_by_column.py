"""Groups of a column come to stand side by side and open out again, and nobody walks into another.

What is asked here is what the unit says in words: What the magnet did, "The front four and the back
four of each column make two files side by side, the front four on the left; of each two files the
front four's goes north and the back four's south; where two meet, the back four waits."
"""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest

from build_tools.model.dance import Standing
from build_tools.paths.class_in_groups import class_in_groups
from build_tools.paths.column_by_column import columns_of, dealt_anew
from build_tools.paths.going_in_turn import times_to_go
from build_tools.paths.hall import Point, metres
from build_tools.paths.model import Paths
from build_tools.views.dance.on_the_floor import in_a_hall
from tests.support.sound_bank import unit_named

TWO = Fraction(2)
CLASSES = (28, 29, 30, 31, 32)


def magnets(pupils: int) -> Paths:
    return in_a_hall(unit_named("magnets"), pupils)


def middles(paths: Paths, letter: str) -> list[Point]:
    """The middle of each group as a section begins."""
    one = next(s for s in paths.stretches if s.section and s.section.letter == letter)
    places = paths.everybody(one.begins)
    spans = [[places[dancer] for dancer in group] for group in one.together]
    return [
        (
            (min(p.x for p in span) + max(p.x for p in span)) / 2,
            (min(p.y for p in span) + max(p.y for p in span)) / 2,
        )
        for span in spans
    ]


def columns(paths: Paths) -> list[tuple[int, int]]:
    """The groups one behind the other in the first part, the front one first."""
    at = middles(paths, "A")
    return [
        (front, back)
        for front, back in combinations(range(len(at)), 2)
        if abs(at[front][0] - at[back][0]) < 0.5
        for front, back in [sorted((front, back), key=lambda n: at[n][1])]
    ]


@pytest.mark.parametrize("pupils", CLASSES)
def test_in_every_column_the_front_four_is_on_the_left_and_then_in_the_north(pupils: int) -> None:
    paths = magnets(pupils)
    pairs = columns(paths)
    assert len(pairs) == (3 if pupils < 30 else 4)
    files, rings = middles(paths, "C"), middles(paths, "D")
    for front, back in pairs:
        apart = (files[back][0] - files[front][0]) / paths.body.step
        assert apart == pytest.approx(3)
        assert rings[front][1] < rings[back][1] - 1
        assert rings[front][0] == pytest.approx(rings[back][0])


@pytest.mark.parametrize("pupils", CLASSES)
def test_nobody_walks_into_another_between_the_parts_and_the_back_four_waits(pupils: int) -> None:
    """Shoulders are some 0.3 metres wide at that age; from middle to middle there is more."""
    paths = magnets(pupils)
    for join in (s for s in paths.stretches if s.transition and s.transition.end in "CD"):
        for n in range(int(join.lasts * 4) + 1):
            places = [(p.x, p.y) for p in paths.everybody(join.begins + n / 4)]
            assert min(metres(a, b) for a, b in combinations(places, 2)) > 0.39
    walk = next(s for s in paths.stretches if s.transition and s.transition.end == "C")
    groups = class_in_groups(pupils, 4, paths.sizes)
    for front, back in columns(paths):
        first, last = (
            [leg.start for one in groups[n] for leg in paths.legs[one] if leg.start >= walk.begins]
            for n in (front, back)
        )
        assert min(first) == walk.begins
        assert any(walk.begins < start < walk.ends for start in last)


def test_rows_that_are_no_columns_of_before_are_not_dealt_anew() -> None:
    four = Standing("small groups", "front", "x", groups_apart=TWO, columns=4)
    together = ((0, 1), (2, 3), (4, 5), (6, 7))
    places = [(float(n // 2 % 2) * 4 + n % 2, float(n // 4) * 4) for n in range(8)]
    before = columns_of(four, together, places)
    assert before is not None
    assert before.cells == ((0, 0), (1, 0), (0, 1), (1, 1))
    eight = Standing("small groups", "front", "x", groups_apart=TWO, columns=8)
    after = dealt_anew(before, eight, together)
    assert after is not None
    assert after.cells == ((0, 0), (2, 0), (1, 0), (3, 0))
    again = dealt_anew(after, four, together)
    assert again is not None
    assert again.cells == before.cells
    six = Standing("small groups", "front", "x", groups_apart=TWO, columns=6)
    assert dealt_anew(before, six, together) is None
    assert dealt_anew(before, eight, together[:2]) is None
    assert columns_of(four, ((0, 1), (2, 3)), [(0, 0), (1, 1), (1, 0), (0, 1)]) is None


def test_who_would_meet_goes_one_after_the_other_the_front_first() -> None:
    over, back = ((0.0, 0.0), (0.0, 2.0)), ((0.1, 2.0), (0.1, 0.0))
    assert times_to_go([over, ((3.0, 0.0), (3.0, 2.0))], [0, 1]) == ()
    assert times_to_go([over, back], [0, 1]) == ()  # whoever waits stands in the way
    aside = ((-1.0, 1.0), (1.0, 1.0))
    assert times_to_go([over, aside], [0, 1]) == ((0.0, 0.5), (0.5, 1.0))
