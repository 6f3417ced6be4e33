"""Dances that nobody counts: how long a move lasts is said by the moves beside it."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.dance import Action, Dance
from build_tools.movement.counts import figures
from build_tools.page_words.words import _


def is_counted(dance: Dance) -> bool:
    """Whether anything in the dance goes by counts: a section, a transition or a tempo."""
    return (
        dance.tempo is not None
        or any(section.counts is not None for section in dance.sections.values())
        or any(transition.counts for transition in dance.transitions)
    )


def lengths_in_words(actions: Sequence[Action]) -> tuple[str, ...]:
    """How long each action lasts beside the shortest; "" for each where all last the same."""
    shortest = min((action.counts for action in actions), default=None)
    if shortest is None or all(action.counts == shortest for action in actions):
        return ("",) * len(actions)
    found = []
    for action in actions:
        times = action.counts / shortest
        if times == 1:
            found.append(_("short"))
        elif times == 2:
            found.append(_("twice as long as a short one"))
        else:
            found.append(_("{times} times as long as a short one", times=figures(times)))
    return tuple(found)
