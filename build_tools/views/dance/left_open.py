"""What pupils decide, so that it is drawn as a blank and never as if it were decided.

A choice leaves the counts as they are and says nothing of the moves: a new order, a level, what is
left out. Devices that change how a move is done, and not which, keep the moves and say what
of them pupils choose (`Action.chosen`); those are no blanks. A variation of pupils' own is a
blank that knows the move it varies (`Action.theme`), so that it can be drawn faint.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Any

from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.development import actions_of, develop, is_left_to_pupils
from build_tools.movement.devices import OWN

_WAY = re.compile(r"\b(?:up|down|forwards|backwards|sideways)\b")
"""A way that an option names."""
OPEN = "open"
"""The kind of an action that pupils decide: it has counts and nothing else."""
_MANNER: Mapping[str, Mapping[str, Any]] = {
    "change of dynamics": {"dynamics": (), "chosen": frozenset({"dynamics"})},
    "change of body part": {"body_part": None, "chosen": frozenset({"body_part"})},
    "change of size": {"size": None, "chosen": frozenset({"size"})},
    "change of facing": {"facing": None},
    "change of formation": {},
    "change of number of dancers": {},
    "change of relationship": {},
}
"""Devices that change how a move is done, and what of it is no longer said: an anemone that opens
another part of the body is not told to open its hands."""


@lru_cache(maxsize=256)
def drawn_actions(dance: Dance, name: str) -> tuple[Action, ...]:
    """The actions of a motif or development as they may be drawn: blank where pupils decide."""
    development = dance.developments.get(name)
    if development is None:
        return actions_of(dance, name)
    before = drawn_actions(dance, development.of)
    if is_left_to_pupils(development):
        return tuple(
            _left(
                action,
                development.device,
                _if_not(dance, development),
                options_of(dance, development.name),
            )
            if not development.only or n in development.only
            else action
            for n, action in enumerate(before, start=1)
        )
    if before == actions_of(dance, development.of) and not development.joined_to:
        return actions_of(dance, name)
    return _developed(dance, development, before)


def is_left_open(dance: Dance, name: str) -> bool:
    """Whether every move of it is left to pupils."""
    return all(action.kind == OPEN for action in drawn_actions(dance, name))


def _developed(
    dance: Dance, development: Development, before: tuple[Action, ...]
) -> tuple[Action, ...]:
    """What comes of moves some of which are blank; blanks all through where it cannot be told."""
    other = drawn_actions(dance, development.joined_to) if development.joined_to else ()
    try:
        made = develop(before, development, other)
        themes = develop(_themes(before), development, _themes(other))
    except ValueError:
        return tuple(map(_blank, actions_of(dance, development.name)))
    return tuple(
        _blank(action, theme) if action.kind == OPEN else action
        for action, theme in zip(made, themes, strict=True)
    )


def _themes(actions: tuple[Action, ...]) -> tuple[Action, ...]:
    """The same with the moves that blanks vary in their place, where they are known."""
    return tuple(action.theme or action for action in actions)


def options_of(dance: Dance, name: str) -> tuple[str, ...]:
    """What a development that is left to pupils may be changed to, in the author's words."""
    development = dance.developments.get(name)
    choice = dance.choices.get(development.choice or "") if development else None
    return choice.options if choice else ()


def _if_not(dance: Dance, development: Development) -> str:
    """What is danced where nothing is chosen, as the unit says it."""
    choice = dance.choices.get(development.choice or "")
    return choice.if_not.strip().rstrip(".").lower() if choice else ""


def _left(action: Action, device: str, if_not: str, options: Sequence[str]) -> Action:
    """An action as far as it is still known where pupils decide what `device` changes.

    A picture needs some part of the body, and shows the one that the unit has if none is chosen.
    """
    if device == OWN:
        return _blank(action, action.theme or action)
    if device not in _MANNER or action.kind == OPEN:
        return _blank(action)
    manner = dict(_MANNER[device])
    if "body_part" in manner:
        manner["body_part"] = if_not or None
        if any(_WAY.search(option) for option in options):
            # shoulders go up where hands go down: the way is the part's own
            manner["direction"] = None
    manner["chosen"] = action.chosen | manner.get("chosen", frozenset())
    return replace(action, **manner)


def _blank(action: Action, theme: Action | None = None) -> Action:
    known = theme is not None and theme.kind != OPEN
    return Action(OPEN, action.counts, theme=theme if known else None)
