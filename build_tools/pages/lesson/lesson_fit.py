"""What the lesson page needs so that a teacher can fit the lesson to today."""

from __future__ import annotations

import json
from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.watchers import Watchers, watchers
from build_tools.page_words.words import N_, _
from build_tools.views.dance.recommended_metres import recommended_least
from build_tools.views.lesson.odd_groups_said import odd_groups_said
from build_tools.views.words.punctuation import sentence

_SIT: dict[Watchers, str] = {
    "all round": N_(
        "Watchers sit close together round the edge, with their feet in, and the dancers "
        "have the middle."
    ),
    "on two sides": N_(
        "Watchers sit close together along both sides, with their feet in, and the "
        "dancers have the floor between them."
    ),
    "at the short walls": N_(
        "Watchers sit close together along both short walls, with their feet in, "
        "and the dancers have the floor between them."
    ),
    "at one short wall": N_(
        "Watchers sit close together along one short wall, with their feet in, "
        "and the dancers have the rest of the floor."
    ),
    "at the tables": N_(
        "Watchers sit at the tables, along the walls, and the dancers have the cleared floor."
    ),
    "front in the middle": N_(
        "Watchers sit close together in the middle, facing out, with their feet "
        "in, and the dancers have the floor round them."
    ),
}
_FACING = {"partner": "partner", "another pair": "pair", "another group": "group"}


@dataclass(frozen=True, slots=True)
class FitView:
    """Fit my lesson."""

    pupils: str
    """For how many the lesson is planned."""
    least: str
    """The square metres recommended for each pupil."""
    odd: str
    """What a group of another size does, by grouping and size, for scripts."""
    room: str | None
    """The lesson's line on using the room in another way."""
    front: str
    """Where the front of the dance is."""
    sits: str | None
    """Where watchers sit, where it is not along the front."""
    facing: str | None
    """Whom each looks at for looking and talking, where that is one partner, pair or group."""


def _data(value: object) -> str:
    """A value for a script, as short as it can be written."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def fit_view(unit: Unit, lesson: Lesson) -> FitView:
    """What the page says of this lesson, to be fitted by its scripts."""
    looked_at = _FACING.get(lesson.look_and_talk.who) if lesson.look_and_talk else None
    sits = _SIT.get(watchers(unit.dance))
    return FitView(
        pupils=str(USUAL_CLASS),
        least=str(recommended_least(unit.years)),
        odd=_data(odd_groups_said(unit, lesson)),
        room=lesson.change.get("room"),
        front=sentence(unit.dance.front),
        sits=_(sits) if sits else None,
        facing=looked_at,
    )
