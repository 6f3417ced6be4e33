"""The moves that a step tries out by their words, before a later step of the lesson makes them."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.lesson import Step
from build_tools.views.lesson.moves_met import MoveMet, StepMoves

_FEWEST = 2
"""One word of a move may stand in a task by chance."""
_SHORTEST = 4
"""Letters: "go" and "in" are words of moves too."""


def named_in_trying(step: Step, moves: Sequence[StepMoves]) -> tuple[MoveMet, ...]:
    """Of the moves of a lesson, those that a step of trying out names; none in other steps.

    Whoever sits tries them in their own way as well: "as in step 1" told them of walking.
    """
    if step.phase != "explore":
        return ()
    text = " ".join(filter(None, (step.does, step.say, step.task, step.you))).casefold()
    first: dict[str, MoveMet] = {}
    for one in (met for each in moves for met in each.danced):
        first.setdefault(one.word.casefold(), one)
    named = tuple(one for word, one in first.items() if _says(text, word))
    return named if len(named) >= _FEWEST else ()


def _says(text: str, word: str) -> bool:
    if len(word) < _SHORTEST:
        return False
    return re.search(rf"\b{re.escape(word)}(?:e?s|ing|ed)?\b", text) is not None
