"""How a step goes on a chair and on wheels that has no move with a way of its own.

Where nobody leaves their spot, wheels have the brakes on and are not told to push.
"""

from __future__ import annotations

import re
from functools import lru_cache

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.sentences.over_the_floor import over_the_floor, turns_round
from build_tools.views.dance.leaving_the_spot import parts_with_ways_open, somebody_travels
from build_tools.views.written.jumps import jump_in

_STEPS = re.compile(r"\b(?:walk|step|march|tread|trot|stamp)", re.IGNORECASE)


def in_general(unit: Unit, step: Step) -> str:
    """What the arms, back, feet and wheels do; of jumps only where there are any."""
    travels = over_the_floor(
        step.does, step.task, step.place or "", dance_travels=_dance_travels(unit)
    )
    return f"{_on_a_chair(unit, step, travels=travels)} {_on_wheels(step, travels=travels)}"


def _on_a_chair(unit: Unit, step: Step, *, travels: bool) -> str:
    if _jumps(unit) if travels else jump_in(unit.dance, step):
        return _(
            "On a chair, the arms, back and head dance; lift the feet by turns for steps, and the "
            "shoulders for a jump."
        )
    if travels or _STEPS.search(_asked(step)):
        return _("On a chair, the arms, back and head dance; lift the feet by turns for steps.")
    return _("On a chair, the arms, back and head dance.")


def _on_wheels(step: Step, *, travels: bool) -> str:
    if travels:
        return _(
            "On wheels, one gentle push does for two steps, and both hands on the wheels make a "
            "turn."
        )
    if turns_round(_asked(step)):
        return _("On wheels the same, on the spot; both hands on the wheels make a turn.")
    return _("On wheels the same, brakes on.")


def _asked(step: Step) -> str:
    return f"{step.does}. {step.task}"


@lru_cache(maxsize=16)
def _dance_travels(unit: Unit) -> bool:
    return bool(parts_with_ways_open(unit.dance)) or somebody_travels(unit.dance)


@lru_cache(maxsize=16)
def _jumps(unit: Unit) -> bool:
    """Whether anybody jumps in the unit: two advisers asked which jump was meant."""
    steps = (step for lesson in unit.lessons for step in lesson.steps)
    return any(jump_in(unit.dance, step) for step in steps)
