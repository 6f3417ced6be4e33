"""How far an action goes, in words: how many steps of which kind, towards what, how far round."""

from __future__ import annotations

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.views.words.sides_named import NO_NAMES, towards_in_words

_COUNTED = frozenset({"side-step", "skip", "gallop", "hop", "stamp", "roll"})
"""Kinds of step that are counted by their own name: 3 skips; others are so many steps."""


def how_far_in_words(action: Action) -> str:
    """3 skips, towards a partner; walk 4 steps; a half turn. Empty where the unit says none."""
    if action.goes_round:
        all_the_way = "all the way " if action.turn_by == "whole" else ""
        steps = "" if all_the_way and action.steps is None else _steps(action)
        return ", ".join(part for part in (steps, f"{all_the_way}round the middle") if part)
    towards = towards_in_words(action.towards, NO_NAMES) if action.towards else ""
    return ", ".join(part for part in (_steps(action), towards, _round(action.turn_by)) if part)


def _steps(action: Action) -> str:
    if action.steps is None:
        return action.step or ""
    many = figures(action.steps)
    one = action.steps <= 1
    if action.step in _COUNTED:
        return f"{many} {action.step}{'' if one else 's'}"
    return f"{action.step or ''} {many} {'step' if one else 'steps'}".strip()


def _round(turn_by: str | None) -> str:
    if turn_by is None:
        return ""
    return (
        "round and back"
        if turn_by == "there and back"
        else f"a {turn_by.replace('three quarters', 'three-quarter')} turn"
    )
