"""Which sections may follow one another, and what lies between them."""

from __future__ import annotations

from dataclasses import replace

from build_tools.movement.whole import transition_between
from build_tools.views.dance.joins import crossings, may_follow
from tests.support.sound_bank import every_unit, real_unit


def test_a_set_order_is_followed_each_two_once_and_repeats_too() -> None:
    dance = replace(real_unit().dance, form=("A", "B", "A", "B", "B"), order_choice=None)
    assert may_follow(dance) == (("A", "B"), ("B", "A"), ("B", "B"))


def test_where_pupils_order_the_sections_any_may_follow_any() -> None:
    dance = replace(real_unit().dance, form=("A", "B", "C"), order_choice="order")
    letters = list(dance.sections)
    found = may_follow(dance)
    assert len(found) == len(set(found)) == len(letters) * (len(letters) - 1)


def test_a_crossing_tells_where_they_stand_and_how_they_get_there() -> None:
    for unit in every_unit():
        ways = list(crossings(unit.dance))
        assert [(way.first, way.second) for way in ways] == list(may_follow(unit.dance))
        for way in ways:
            assert way.end == unit.dance.sections[way.first].end
            assert way.start == unit.dance.sections[way.second].start
            assert way.by is transition_between(unit.dance, way.first, way.second)
