"""Travelling backwards, or close to others, comes with how to do it without a bump.

Nobody sees behind. Backwards is slow and short, with a look over the shoulder; close work has room
between dancers and a pace at which they can stop.

Bad:
    task: Run backwards to your place.
Good:
    task: Walk backwards to your place, slowly, looking over your shoulder.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action, Dance
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_safety import (
    BACKWARDS,
    CLOSE,
    KEEP_APART,
    LOOK_BACK,
    ROOM_BETWEEN,
)
from build_tools.views.written.hazards import (
    Hazard,
    beside,
    first_hazard,
    names_with,
    says,
    written_actions,
)

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first backwards travel and the first close work left unguarded."""
    danced = _names_going_back(unit.dance)
    hazard = first_hazard(unit, BACKWARDS, danced)
    if hazard and not says(LOOK_BACK, unit, hazard.lesson, hazard.step):
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has the first travelling backwards ({hazard.said}), but "
            "nothing up to there says how to look and how far to go",
            "add: two small steps back, slowly, looking over your shoulder",
        )
    hazard = first_hazard(unit, CLOSE)
    if hazard and not _room_said(unit, hazard):
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has pupils close to each other ({hazard.said}), but nothing "
            "there says how much room they keep",
            "add: at a walk, a hand's width apart, nobody touches",
        )


def _room_said(unit: Unit, hazard: Hazard) -> bool:
    if ROOM_BETWEEN.in_any(beside(unit, hazard)):
        return True
    return says(KEEP_APART, unit, hazard.lesson, hazard.step)


def _names_going_back(dance: Dance) -> frozenset[str]:
    written = any(action.direction == "backwards" for action in written_actions(dance))
    if written or any(d.direction == "backwards" for d in dance.developments.values()):
        return names_with(dance, _goes_back)
    return frozenset()


def _goes_back(action: Action) -> bool:
    return action.direction == "backwards" and "travel" in action.kinds
