"""For each move of a motif, the one that left the body in the shape in which it starts."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.body.holding import carried
from build_tools.model.dance import Action
from build_tools.views.dance.left_open import OPEN


def moves_before(actions: Sequence[Action]) -> tuple[Action | None, ...]:
    """The move before each, or before what only holds it; None at the start and after a blank.

    Blanks that vary a theme follow one another as the moves of the theme do.
    """
    found: list[Action | None] = []
    before: Action | None = None
    after_theme = False
    for action in actions:
        is_open = action.kind == OPEN
        found.append(before if is_open or not after_theme else None)
        known = action.theme if is_open else action
        before = carried(known, found[-1]) if known is not None else None
        after_theme = is_open
    return tuple(found)


def shown(action: Action) -> Action | None:
    """The move that a picture shows: itself, or the theme that pupils vary; None of a blank."""
    return action if action.kind != OPEN else action.theme
