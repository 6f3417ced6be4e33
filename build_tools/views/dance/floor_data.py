"""A unit's dance as the data from which a page tells who dances at once, for any class and hall."""

from __future__ import annotations

from typing import Any

from build_tools.model.unit import Unit
from build_tools.movement.watchers import watchers
from build_tools.paths.for_pages import page_data
from build_tools.paths.model import Paths
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.dance.waiting import waiting_in
from build_tools.views.words.punctuation import sentence


def floor_data(unit: Unit, paths: Paths) -> dict[str, Any]:
    """`page_data`, and least: the square metres for each pupil; waiting: who sits does what, where,
    and whether that is at one of two walls, the other the door's; own: how the unit is danced in
    half a hall and in a classroom, in its author's words.

    `sums/floor-room-to-dance.js` asks for the first, `sums/floor-room-said.js` for the second and
    `lesson/fit/space.js` for the third.
    """
    waiting = waiting_in(unit)
    told: dict[str, Any] = {"counts": waiting.counts}
    if waiting.does:
        told["does"] = waiting.does
    if waiting.where:
        told["where"] = waiting.where
    if waiting.at_ends:
        told["ends"] = 1
    if watchers(unit.dance) == "at one short wall":
        told["door"] = 1
    space = unit.space
    own = {"half": sentence(space.half_hall), "classroom": sentence(space.classroom)}
    least = recommended_least(unit.years)
    return page_data(paths) | {"least": least, "waiting": told, "own": own}
