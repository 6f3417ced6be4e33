"""Travelling backwards, or close to others, comes with how to do it without a bump.

Nobody sees behind. Backwards is slow and short, with a look over the shoulder; close work has room
between dancers and a pace at which they can stop. Each step that asks for it says so; what is said
of going backwards in an earlier step, or under `safety`, holds for later steps too.

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
from build_tools.sentences.travel import (
    BACKWARDS,
    CLOSE,
    CLOSE_BUT_APART,
    KEEP_APART,
    LOOK_BACK,
    ROOM_TO_OTHERS,
    SAID_OF_BACKWARDS,
)
from build_tools.views.written.hazards import (
    Hazard,
    first_hazard,
    hazards,
    names_with,
    of_step,
    told_before,
    written_actions,
)

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first backwards travel and the first close work left unguarded."""
    hazard = first_hazard(unit, BACKWARDS, _names_going_back(unit.dance))
    if hazard and not _looks_back(unit, hazard):
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has the first travelling backwards ({hazard.said}), but "
            "nothing up to there says how to look and how far to go",
            "add: two small steps back, slowly, looking over your shoulder",
        )
    hazard = next((h for h in hazards(unit, CLOSE) if not _room_said(unit, h)), None)
    if hazard:
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has pupils close to each other ({hazard.said}), but nothing "
            "there says how much room they keep",
            "add, in any line of the step: a hand's width apart, nobody touches",
        )


def _looks_back(unit: Unit, hazard: Hazard) -> bool:
    if LOOK_BACK.in_any(of_step(unit, hazard)):
        return True
    return any(SAID_OF_BACKWARDS.mentioned(text) for text in told_before(unit, hazard))


def _room_said(unit: Unit, hazard: Hazard) -> bool:
    if any(_apart(text) for text in of_step(unit, hazard)):
        return True
    before = tuple(told_before(unit, hazard))
    return any(KEEP_APART.denied(text) or ROOM_TO_OTHERS.said(text) for text in before)


def _apart(text: str) -> bool:
    return bool(CLOSE_BUT_APART.said(text) or KEEP_APART.denied(text))


def _names_going_back(dance: Dance) -> frozenset[str]:
    written = any(action.direction == "backwards" for action in written_actions(dance))
    if written or any(d.direction == "backwards" for d in dance.developments.values()):
        return names_with(dance, _goes_back)
    return frozenset()


def _goes_back(action: Action) -> bool:
    return action.direction == "backwards" and "travel" in action.kinds
