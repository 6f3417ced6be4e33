"""How much is between partners who face each other, as the moves of a section add it up.

Asked of what is written alone, not of paths on a floor: an author who says in words how far apart
partners stand has given no distance in a field.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.body.ages import AtAge, tables
from build_tools.model.dance import Action, Dance, Passage, Section, Standing
from build_tools.movement.development import actions_of
from build_tools.paths.steps import goes, steps_of, way_long
from build_tools.sentences.numbers import number_of

_APART = re.compile(
    r"\b(?P<number>[a-z]+|\d+)(?P<half> and a half)? (?:(?P<size>big|large|long|small|little) )?"
    r"(?:side-)?steps?\b",
    re.IGNORECASE,
)
_SIZES = {"big": "big", "large": "big", "long": "big", "small": "small", "little": "small"}
_TURNS = ("quarter", "half", "three quarters")
_ANSWERED = ("question and answer", "side by side")


@dataclass(frozen=True, slots=True)
class Between:
    """Metres between two partners, and the steps that each takes; the one who takes more first."""

    at_first: float
    at_last: float
    least: float
    """0 or less where they meet and pass."""
    forth: float
    back: float
    """Steps towards the other and away, of the partner who takes more of them."""


def between_partners(dance: Dance, section: Section, body: AtAge) -> Between | None:
    """What is between partners over a section; None where it, or a way of theirs, is not known."""
    faced = section.start.formation == "pairs" and section.start.facing == "partner"
    apart = metres_apart(section.start, body) if faced else None
    if apart is None:
        return None
    gone, steps = [0.0, 0.0], [[0.0, 0.0], [0.0, 0.0]]
    least = apart
    for passage in section.danced:
        ways = tuple(_ways(dance, passage))
        if not ways:
            return None
        for at_once in ways:
            for who, action in at_once:
                if not _is_straight(action, passage):
                    return None
                way = way_long(action, body) if goes(action) else 0.0
                sign = -1 if action.direction == "backwards" else 1
                gone[who] += sign * way
                steps[who][0 if sign > 0 else 1] += steps_of(action) if goes(action) else 0.0
            least = min(least, apart - sum(gone))
    forth, back = max(steps)
    return Between(apart, apart - sum(gone), least, forth, back)


def metres_apart(standing: Standing, body: AtAge) -> float | None:
    """How far apart two partners stand, by the field or by the words; None where neither says."""
    if standing.apart is not None:
        return float(standing.apart) * body.step
    found = _APART.search(standing.place)
    many = number_of(found["number"].casefold()) if found else None
    if found is None or many is None:
        return None
    size = _SIZES.get((found["size"] or "").casefold())
    long = body.step * (float(tables()["steps"][size]) if size else 1.0)
    return (many + (0.5 if found["half"] else 0.0)) * long


def _ways(dance: Dance, passage: Passage) -> Iterator[tuple[tuple[int, Action], ...]]:
    """What the two do, moment by moment: both at once in unison, else one after the other."""
    moves = [actions_of(dance, what) for what in passage.what]
    if not all(moves) or passage.fit not in ("unison", "canon", "canon in turn", *_ANSWERED):
        return
    answered = passage.fit in _ANSWERED
    if answered and len(moves) != len((0, 1)):
        return
    for n in range(passage.times * (2 if answered and passage.swap else 1)):
        if passage.fit == "unison":
            yield from (((0, one), (1, one)) for each in moves for one in each)
        elif answered:
            first, second = (moves[n % 2], moves[1 - n % 2]) if passage.swap else moves
            yield from (((0, one),) for one in first)
            yield from (((1, one),) for one in second)
        else:
            yield from (((who, one),) for who in (0, 1) for each in moves for one in each)


def _is_straight(action: Action, passage: Passage) -> bool:
    """Whether it keeps partners in line, and it is known which of the two ways it goes."""
    if action.facing or ("turn" in action.kinds and action.turn_by in _TURNS):
        return False
    if not goes(action):
        return True
    towards = action.towards or passage.towards
    ways = ("forwards", "backwards") if towards is None else ("forwards",)
    known = action.direction in ways or (towards == "partner" and action.direction is None)
    straight = action.pathway in (None, "straight") and "turn" not in action.kinds
    return known and straight and towards in (None, "partner")
