"""Get ready: one way for each hall, and what its author says of half a hall."""

from __future__ import annotations

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.pages.get_ready.get_ready import ReadyView, ready_page
from build_tools.paths.hall import KNOWN_HALLS
from build_tools.views.dance.room_to_dance import unit_room
from tests.support.sound_bank import real_bank, unit_named, whole_bank

WITHOUT = "magnets"
"""A unit whose class finds no room in half a hall that is worked out."""


def test_the_authors_way_in_half_a_hall_is_told_once_whatever_is_worked_out() -> None:
    """An adviser: her sentence was on no page once the sum found room for all."""
    both = set()
    for unit in (*real_bank().units, unit_named(WITHOUT)):
        view = ready_page(whole_bank(), unit).context
        assert isinstance(view, ReadyView)
        (told,) = [one for one in view.spaces if unit.space.half_hall in one.words]
        worked_out = unit_room(unit, USUAL_CLASS, KNOWN_HALLS["half"]).found
        assert (told.label == "In half a hall, as the unit has it") == worked_out, unit.slug
        both.add(worked_out)
        assert "on the spot." not in told.words.split(unit.space.half_hall)[0]
    assert both == {True, False}
