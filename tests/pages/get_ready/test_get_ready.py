"""Get ready: one way for each hall, and never two that contradict each other."""

from __future__ import annotations

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.pages.get_ready.get_ready import ReadyView, ready_page
from build_tools.paths.hall import KNOWN_HALLS
from build_tools.views.dance.room_to_dance import unit_room
from tests.support.sound_bank import real_bank, unit_named, whole_bank

WITHOUT = "magnets"
"""A unit whose class finds no room in half a hall that is worked out."""


def test_the_authors_way_in_half_a_hall_is_told_only_where_none_is_worked_out() -> None:
    both = set()
    for unit in (*real_bank().units, unit_named(WITHOUT)):
        view = ready_page(whole_bank(), unit).context
        assert isinstance(view, ReadyView)
        told = [one.words for one in view.spaces if unit.space.half_hall in one.words]
        worked_out = unit_room(unit, USUAL_CLASS, KNOWN_HALLS["half"]).found
        assert bool(told) != worked_out, unit.slug
        both.add(worked_out)
        assert not any("on the spot." in words.split(unit.space.half_hall)[0] for words in told)
    assert both == {True, False}
