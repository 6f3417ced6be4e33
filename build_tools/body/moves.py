"""What an action says of the body, made ready for drawing: nothing is guessed but by its words."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from build_tools.model.dance import Action
from build_tools.movement.effort import qualities

LEVELS = ("low", "middle", "high")


@dataclass(frozen=True, slots=True)
class Move:
    """An action as a body does it."""

    kind: str
    also: tuple[str, ...]
    manner: str | None
    """The shape that the pupils' word names, by `manners.json`."""
    start: str
    """low, middle or high."""
    end: str
    size: str | None
    """small or big; of a size that changes, what it comes to."""
    grows: bool
    """Whether it starts small and becomes big."""
    part: str | None
    """The part that leads, by `manners.json`."""
    one_side: bool
    """Whether one hand, foot, elbow … leads and not both."""
    direction: str | None
    pathway: str | None
    left: bool
    sideless: bool
    """Whether neither left nor right is said."""
    towards: str | None
    """partner, centre or a side of the hall, where it goes to one."""
    feel: frozenset[str]
    """strong, light, sudden, sustained, direct, indirect, free, bound."""
    counts: float
    steps: int
    turn: float
    """How far a turn goes, in degrees; less than 0 goes to the left."""
    there_and_back: bool
    times: int
    """How many jumps it is."""
    chosen: frozenset[str]
    """What pupils decide of it, so that its picture is one of several: as `Action.chosen`."""

    @property
    def kinds(self) -> tuple[str, ...]:
        """Every kind of action in it."""
        return (self.kind, *self.also)


def move_of(action: Action, before: Action | None = None) -> Move:
    """What `action` asks of a body; a level that it does not say is the one before it ended on."""
    start, end = _levels(action, before)
    left = action.side == "left"
    part = _first("parts", action.body_part)
    steps, turn_by = action.steps, action.turn_by
    return Move(
        kind=action.kind,
        also=action.also,
        manner=_manner(action),
        start=start,
        end=end,
        size=(action.size or "").split(" to ")[-1] or None,
        grows=(action.size or "").startswith("small to"),
        part=part,
        one_side=_is_one(action.body_part),
        direction=action.direction,
        pathway=action.pathway,
        left=left,
        sideless=action.side is None,
        towards=action.towards,
        feel=qualities(action.dynamics),
        counts=float(action.counts),
        steps=max(1, round(float(steps if steps is not None else action.counts))),
        turn=_TURNS.get(turn_by or "whole", 360.0) * (-1 if left else 1),
        there_and_back=turn_by == "there and back",
        times=action.times,
        chosen=action.chosen,
    )


def slashes(move: Move) -> bool:
    """Whether it goes over the floor, or into the air, with the effort called a slash.

    Strong, sudden and winding is to slash (Laban and Lawrence, Effort, 1947): steps have no such
    feel but by the arms. Steps that are said to be small are quick and near: whoever goes past
    others keeps the arms in.
    """
    goes = {"travel", "jump"} & set(move.kinds)
    near = move.kind == "travel" and move.size == "small"
    return bool(goes) and not near and move.feel >= {"strong", "sudden", "indirect"}


def stays_tall(move: Move) -> bool:
    """Whether weight that settles does so with nobody going down: at the high level all through."""
    return move.start == move.end == "high" and move.manner != "dip"


def held_out(move: Move) -> bool:
    """Whether one hand or arm is held out in front all through steps, a lean or a rise from it."""
    held = move.kind == "travel" or (move.kind == "gesture" and move.manner == "lean")
    held = held or (move.kind == "transfer" and rises(move))
    return held and move.one_side and move.part in ("hand", "arm")


def reaches(move: Move) -> bool:
    """Whether one hand or arm goes out in front, level, and does nothing else: a link, a sign."""
    alone = move.kind == "gesture" and move.manner is None and move.direction == "forwards"
    return alone and move.end == "middle" and move.one_side and move.part in ("hand", "arm")


def shares_weight(move: Move) -> bool:
    """Whether it is a lean back from an arm held out in front: from whoever holds the other end.

    Alone, nobody needs an arm in front to lean back.
    """
    return move.kind == "gesture" and held_out(move) and move.direction == "backwards"


def rises(move: Move) -> bool:
    """Whether it ends on a higher level than it starts."""
    return LEVELS.index(move.end) > LEVELS.index(move.start)


def weight_aside(move: Move) -> bool:
    """Whether a transfer of weight goes to one side, forwards or back, not only up or down."""
    if move.manner is None:
        return move.start == move.end
    return move.manner in ("rock", "wind")


_TURNS = {
    "quarter": 90.0,
    "half": 180.0,
    "three quarters": 270.0,
    "whole": 360.0,
    "there and back": 70.0,
}
_NOT_WALKED = frozenset({"roll", "crawl", "side", "gallop", "skip", "hop", "run"})
"""Steps that are no walk, whatever word pupils have for a walk: a rush in quick steps is none."""
_ENDINGS = r"(?:s|es|d|ed|ing|ning|ping|ting)?"


def _manner(action: Action) -> str | None:
    """The shape or the kind of step that the words name: the author's step first, then pupils'."""
    found = _first(action.kind, " ".join(filter(None, (action.step, action.word))))
    walked = action.kind == "travel" and action.step == "walk"
    return None if walked and found in _NOT_WALKED else found


def _levels(action: Action, before: Action | None) -> tuple[str, str]:
    told = (action.level or "").split(" to ")
    if told[0]:
        return told[0], told[-1]
    if action.kind == "jump" and before is None:
        return "middle", "high"
    last = _levels(before, None)[1] if before is not None else "middle"
    return last, last


def _is_one(part: str | None) -> bool:
    words = (part or "").lower().split()
    return bool({"one", "right", "left", "an", "a"} & set(words)) or words[-1:] == ["foot"]


@cache
def _manners() -> dict[str, Any]:
    found: dict[str, Any] = json.loads(
        Path(__file__).with_name("manners.json").read_text(encoding="utf-8")
    )
    return found


@lru_cache(maxsize=1024)
def _first(table: str, text: str | None) -> str | None:
    """The first line of a table that has a word of the text; None where none has."""
    if not text:
        return None
    small = text.lower()
    return next((name for name, words in _patterns(table) if words.search(small)), None)


@cache
def _patterns(table: str) -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Each line of a table with what its words look like in a text."""
    said = {name: "|".join(map(re.escape, words)) for name, words in _manners()[table].items()}
    return tuple((name, re.compile(rf"\b(?:{one}){_ENDINGS}\b")) for name, one in said.items())
