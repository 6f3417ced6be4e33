"""How far apart the marks of a hall are: only where a unit has places to mark.

Facts of the units: pairs of sheep stand anywhere on the hill, one behind the other, and nobody
tapes a hill; the pools of a rock pool have a spot each.
"""

from __future__ import annotations

import json
from typing import Any

import pytest

from build_tools.building.floor_file import floor_file
from build_tools.model.unit import Unit
from build_tools.paths.anywhere import leaves_places_open
from tests.support.page_script import ask
from tests.support.sound_bank import unit_named


def tape(unit: Unit) -> list[str]:
    (written,) = floor_file(unit).values()
    data: Any = json.loads(written.decode().partition("=")[2].rstrip(";\n"))
    room = ask("sums.floor.room", data, 30, [18.0, 10.0], data["least"])
    found: list[str] = ask("sums.floor.tape", data, room, list(unit.dance.sections))
    return found


@pytest.mark.parametrize("slug", ["through-the-gap", "starlings"])
def test_where_places_are_open_there_is_nothing_to_tape(slug: str) -> None:
    unit = unit_named(slug)
    assert leaves_places_open(unit.dance.sections["B"])
    assert not tape(unit), "nor along three walls, as far apart as they allow"


def test_where_groups_have_their_spots_it_says_how_far_apart() -> None:
    unit = unit_named("kite-and-string")
    (line,) = tape(unit)
    assert line.startswith(
        "Part A: 2.3 m between partners, 1.8 m between pairs and between rows, "
    ), "a pair is no group to a teacher who read it with a tape in hand"
