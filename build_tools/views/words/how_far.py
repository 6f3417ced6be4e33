"""How far an action goes, in words: how many steps of which kind, towards what, how far round."""

from __future__ import annotations

from build_tools.model.dance import Action
from build_tools.movement.counts import figures
from build_tools.page_words.words import N_, NN_, _, ngettext, of_schema
from build_tools.views.words.sides_named import NO_NAMES, towards_in_words

_COUNTED = {
    "side-step": NN_("{number} side-step", "{number} side-steps"),
    "skip": NN_("{number} skip", "{number} skips"),
    "gallop": NN_("{number} gallop", "{number} gallops"),
    "hop": NN_("{number} hop", "{number} hops"),
    "stamp": NN_("{number} stamp", "{number} stamps"),
    "roll": NN_("{number} roll", "{number} rolls"),
}
"""Kinds of step that are counted by their own name: 3 skips; others are so many steps."""
_TURNS = {
    "there and back": N_("round and back"),
    "quarter": N_("a quarter turn"),
    "half": N_("a half turn"),
    "three quarters": N_("a three-quarter turn"),
    "whole": N_("a whole turn"),
}


def how_far_in_words(action: Action) -> str:
    """3 skips, towards a partner; walk 4 steps; a half turn. Empty where the unit says none."""
    if action.goes_round:
        whole = action.turn_by == "whole"
        steps = "" if whole and action.steps is None else _steps(action)
        way = _("all the way round the middle") if whole else _("round the middle")
        return ", ".join(part for part in (steps, way) if part)
    towards = towards_in_words(action.towards, NO_NAMES) if action.towards else ""
    again = _("{times} times", times=action.times) if action.times > 1 else ""
    parts = (again, _steps(action), towards, _round(action.turn_by))
    return ", ".join(part for part in parts if part)


def _steps(action: Action) -> str:
    if action.steps is None:
        return of_schema(action.step) if action.step else ""
    form, many = 1 if action.steps <= 1 else 2, figures(action.steps)
    if action.step in _COUNTED:
        return ngettext(*_COUNTED[action.step], form, number=many) + _in_all(action)
    if action.step is None:
        return ngettext("{number} step", "{number} steps", form, number=many) + _in_all(action)
    said = ngettext(
        "{kind} {number} step",
        "{kind} {number} steps",
        form,
        kind=of_schema(action.step),
        number=many,
    )
    return said + _in_all(action)


def _in_all(action: Action) -> str:
    """How far they go together, where each is not as long as its size says."""
    if action.in_all is None:
        return ""
    form, many = 1 if action.in_all <= 1 else 2, figures(action.in_all)
    return ", " + ngettext("{number} step in all", "{number} steps in all", form, number=many)


def _round(turn_by: str | None) -> str:
    if turn_by is None:
        return ""
    return _(_TURNS[turn_by])
