"""The ways of a step's moves on a chair and in a wheelchair, as the bodies do them.

Every move that travels, turns, jumps or shifts the weight has them, and every step in which
partners come near each other. Worded from the same poses as the pictures (`body/`).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.body.poses import moved
from build_tools.model.lesson import Step
from build_tools.views.diagrams.body_words import deed_in_words
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.moves_in_steps import MoveMet, StepMoves
from build_tools.views.words.punctuation import capital

IN_GENERAL = (
    "On a chair, the arms, back and head dance; lift the feet by turns for steps, and the "
    "shoulders for a jump. On wheels, one gentle push does for two steps, and both hands on the "
    "wheels make a turn."
)
WITH_OTHERS = (
    "With others: leave one step more on each side of a chair or wheelchair. Agree where you meet, "
    "and which of you moves there."
)
_BEYOND_GESTURE = frozenset({"travel", "turn", "jump", "transfer"})
_GETTING_ABOUT = re.compile(
    r"\b(?:walk|step|side-step|skip|run|jump|bounce|turn|spin|travel|go|sway|rush|roll|hop|"
    r"float|push)(?:s|ing)?\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class SeatedMove:
    """One move: its word, and how it goes on a chair and on wheels."""

    word: str
    chair: str
    wheels: str


@dataclass(frozen=True, slots=True)
class SeatedWays:
    """What a step says to who sits or uses a wheelchair; all empty where nothing has to change."""

    moves: tuple[SeatedMove, ...] = ()
    lines: tuple[str, ...] = ()

    @property
    def any(self) -> bool:
        """Whether there is anything to say."""
        return bool(self.moves or self.lines)


def seated_ways(step: Step, moves: StepMoves, told_in: int | None) -> SeatedWays:
    """The seated and wheeled ways of a step.

    `told_in` is the number of an earlier step that told the moves that this one dances again.
    """
    ways = tuple(_seated(one) for one in (*moves.made, *moves.again) if _changes(one))
    lines = []
    danced = step.makes or step.develops or step.joins or step.dances or step.shows
    if not ways and danced and told_in is not None:
        lines.append(f"As in step {told_in}.")
    elif not ways and _GETTING_ABOUT.search(f"{step.does} {step.task}"):
        lines.append(IN_GENERAL)
    if GROUP_SIZES.get(step.grouping, 1) > 1 and danced and not (lines and told_in is not None):
        lines.append(WITH_OTHERS)
    return SeatedWays(ways, tuple(lines))


def all_seated_ways(steps: Sequence[Step], moves: Sequence[StepMoves]) -> tuple[SeatedWays, ...]:
    """The same of every step of a lesson."""
    found: list[SeatedWays] = []
    told_in: int | None = None
    for number, (step, told) in enumerate(zip(steps, moves, strict=True), start=1):
        ways = seated_ways(step, told, told_in)
        if ways.moves:
            told_in = number
        found.append(ways)
    return tuple(found)


def _changes(one: MoveMet) -> bool:
    return one.action is not None and bool(_BEYOND_GESTURE & set(one.action.kinds))


def _seated(one: MoveMet) -> SeatedMove:
    assert one.action is not None
    chair, wheels = (_said(one, body) for body in ("chair", "wheels"))
    return SeatedMove(one.word, chair, wheels)


def _said(one: MoveMet, body: str) -> str:
    assert one.action is not None
    return capital(deed_in_words(moved(one.action, one.before, body)))
