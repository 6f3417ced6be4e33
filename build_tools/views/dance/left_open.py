"""What pupils decide, so that it is drawn as a blank and never as if it were decided.

A choice leaves the counts as they are and says nothing of the moves: a new order, a level, what is
left out. Devices that change how a move is done, and not which, keep the moves and name the
manner instead ("another part of the body"); those are no blanks.
"""

from __future__ import annotations

from functools import lru_cache

from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.development import actions_of, develop, is_left_to_pupils

OPEN = "open"
"""The kind of an action that pupils decide: it has counts and nothing else."""
_MANNER = frozenset(
    {
        "change of dynamics",
        "change of body part",
        "change of size",
        "change of facing",
        "change of formation",
        "change of number of dancers",
        "change of relationship",
    }
)


@lru_cache(maxsize=256)
def drawn_actions(dance: Dance, name: str) -> tuple[Action, ...]:
    """The actions of a motif or development as they may be drawn: blank where pupils decide."""
    development = dance.developments.get(name)
    if development is None:
        return actions_of(dance, name)
    before = drawn_actions(dance, development.of)
    if is_left_to_pupils(development) and development.device not in _MANNER:
        return tuple(
            _blank(action) if not development.only or n in development.only else action
            for n, action in enumerate(before, start=1)
        )
    if not any(action.kind == OPEN for action in before) and not development.joined_to:
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
    except ValueError:
        return tuple(map(_blank, actions_of(dance, development.name)))
    return tuple(_blank(action) if action.kind == OPEN else action for action in made)


def _blank(action: Action) -> Action:
    return Action(OPEN, action.counts)
