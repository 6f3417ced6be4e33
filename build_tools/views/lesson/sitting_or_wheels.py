"""The ways of a step's moves on a chair and in a wheelchair, as the bodies do them.

Every move that travels, turns, jumps or shifts the weight has them, and every step in which
partners come near each other. Worded from the same poses as the pictures (`body/`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from build_tools.body.poses import moved
from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.counts import seconds as seconds_of
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


def all_seated_ways(
    dance: Dance, steps: Sequence[Step], moves: Sequence[StepMoves]
) -> tuple[SeatedWays, ...]:
    """The ways of every step of a lesson. What an earlier step told is not told again."""
    found: list[SeatedWays] = []
    known: set[SeatedMove] = set()
    told_in: dict[str, int] = {}
    for number, (step, told) in enumerate(zip(steps, moves, strict=True), start=1):
        met = dict.fromkeys(_seated(dance, one) for one in told.danced if _changes(one))
        ways = _each_word_once([one for one in met if one not in known])
        holds = tuple(_lines(step, ways, met=bool(met)))
        lines = [line for line in holds if line not in told_in]
        if met and not ways:
            lines.insert(0, f"As in step {told_in[_MOVES]}.")
        elif IN_GENERAL in holds and IN_GENERAL in told_in:
            lines.insert(0, f"As in step {told_in[IN_GENERAL]}.")
        found.append(SeatedWays(ways, tuple(lines)))
        known |= set(met)
        told_in |= {line: number for line in lines if line in (IN_GENERAL, WITH_OTHERS)}
        told_in |= {_MOVES: number} if ways else {}
    return tuple(found)


_MOVES = "moves"


def _lines(step: Step, ways: Sequence[SeatedMove], *, met: bool) -> Iterator[str]:
    """What holds for a whole step: in general where no move is told, and with others near."""
    if not ways and not met and _GETTING_ABOUT.search(f"{step.does} {step.task}"):
        yield IN_GENERAL
    danced = step.makes or step.develops or step.joins or step.dances or step.shows
    if GROUP_SIZES.get(step.grouping, 1) > 1 and danced:
        yield WITH_OTHERS


def _each_word_once(ways: Sequence[SeatedMove]) -> tuple[SeatedMove, ...]:
    """The first way of each word, as a step meets it."""
    first: dict[str, SeatedMove] = {}
    for one in ways:
        first.setdefault(one.word.casefold(), one)
    return tuple(first.values())


def _changes(one: MoveMet) -> bool:
    """Whether who sits or uses a wheelchair does it another way, or the author says how."""
    if one.action is None:
        return False
    return one.seated is not None or bool(_BEYOND_GESTURE & set(one.action.kinds))


def _seated(dance: Dance, one: MoveMet) -> SeatedMove:
    assert one.action is not None
    seconds = float(seconds_of(one.action.counts, dance.tempo)) if dance.tempo else None
    chair, wheels = (_said(one, body, seconds) for body in ("chair", "wheels"))
    return SeatedMove(
        one.word, *(_closed(way) for way in (one.seated or chair, one.wheels or wheels))
    )


def _closed(way: str) -> str:
    """A way as the page puts a full stop behind it: the author's own stop goes."""
    return capital(way.removesuffix("."))


def _said(one: MoveMet, body: str, seconds: float | None) -> str:
    assert one.action is not None
    return deed_in_words(moved(one.action, one.before, body), seconds)
