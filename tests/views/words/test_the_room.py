"""Which side is the front is said in every lesson, and each side's own name once."""

from __future__ import annotations

from dataclasses import replace

from build_tools.views.words.the_room import the_room
from tests.support.sound_bank import real_unit, whole_bank


def test_the_front_and_the_sides_by_their_names() -> None:
    dance = replace(
        real_unit().dance,
        front="One long wall, where watchers sit. The row of pegs is along the wall opposite",
        sides={"front": "gate", "back": "pegs"},
    )
    assert the_room(dance) == (
        "The front is one long wall, where watchers sit. The row of pegs is along the wall "
        "opposite. The front is called the gate."
    )
    named = replace(dance, front="One long wall", sides={"left": "sea", "right": "beach"})
    assert the_room(named) == (
        "The front is one long wall. The sea is on the left as you face the front and the beach "
        "is on the right as you face the front."
    )


def test_every_side_with_a_name_of_its_own_is_named() -> None:
    for unit in whole_bank().units:
        words = the_room(unit.dance).casefold()
        for name in unit.dance.sides.values():
            assert name.casefold() in words, unit.slug
