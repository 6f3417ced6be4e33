"""How the dance grows: what is made before, what is new, what is joined."""

from __future__ import annotations

from itertools import pairwise

from build_tools.views.dance.growth import growth
from tests.support.sound_bank import every_unit, real_unit


def test_the_rock_pool_by_hand() -> None:
    first, *_, fourth, fifth, last = growth(real_unit())
    assert (first.before, first.today, first.joined) == ((), ("A",), ())
    assert fourth.today == ("D",)
    assert set(fourth.joined) == {("A", "B"), ("C", "D")}
    assert fifth.today == ("A'",)
    assert last.before == ("A", "B", "C", "D", "A'")


def test_nothing_is_ever_lost_and_nothing_is_new_twice() -> None:
    for unit in every_unit():
        grown = growth(unit)
        assert len(grown) == len(unit.lessons)
        for earlier, later in pairwise(grown):
            assert set(earlier.before) | set(earlier.today) == set(later.before)
            assert set(earlier.joined) <= set(later.joined)
            assert not set(later.today) & set(later.before)
