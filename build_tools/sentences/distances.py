"""How far apart dancers stand, as words say it: two and a half big steps, two arms' lengths."""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.sentences.numbers import number_of

_NUMBER = r"(?P<number>\d{1,2}(?: \d/\d|\.\d)?|half an?|an?|[a-z]+)(?P<half> and a half)?"
_UNIT = (
    r"(?P<kind>(?:big|large|long|wide|small|little|short|tiny|walking) )?"
    r"(?P<unit>steps?|paces?|arms?['’]s? lengths?|arm['’]s lengths?)"
)
_NO_DISTANCE = (
    r"(?! (?:nearer|further|farther|forwards?|backwards?|back|in\b|out\b|on\b|to the (?:left|right)"
    r"|later|or so|free|from (?:that|there|here|it)\b|behind the|in front"
    r"|(?:away )?from (?:the|that|your|a) (?:[a-z]+ )?(?:walls?|shore|gate|door|board|line|edge"
    r"|wings?)))"
)
_DISTANCE = re.compile(rf"\b{_NUMBER} {_UNIT}\b(?P<more> and a half)?{_NO_DISTANCE}", re.IGNORECASE)
_SPANS = {
    "big": (1.2, 1.8), "large": (1.2, 1.8), "long": (1.2, 1.8), "wide": (1.2, 1.8),
    "small": (0.5, 1.0), "little": (0.5, 1.0), "short": (0.5, 1.0), "tiny": (0.3, 1.0),
}  # fmt: skip
"""Walking steps that a step of each kind may be."""
_AN_ARM = (0.7, 1.6)
"""Walking steps that a child's arm may be, and an arm's length between two."""
_A_STEP = (0.9, 1.1)


@dataclass(frozen=True, slots=True)
class Distance:
    """What is said, and from how many walking steps to how many that may be."""

    said: str
    least: float
    most: float


def distances(text: str) -> tuple[Distance, ...]:
    """Every distance between dancers that a text says, in its order."""
    found = (_distance(one) for one in _DISTANCE.finditer(text))
    return tuple(one for one in found if one is not None)


def _distance(found: re.Match[str]) -> Distance | None:
    number = _number(found.group("number").lower())
    if number is None:
        return None
    number += 0.5 if found.group("half") or found.group("more") else 0
    kind = (found.group("kind") or "").strip().lower()
    least, most = _AN_ARM if "length" in found.group("unit") else _SPANS.get(kind, _A_STEP)
    return Distance(found.group(0), number * least, number * most)


def _number(said: str) -> float | None:
    if said in ("a", "an"):
        return 1.0
    if said.startswith("half"):
        return 0.5
    whole, _, part = said.partition(" ")
    if part:
        above, below = part.split("/")
        return int(whole) + int(above) / int(below) if int(below) else None
    if "." in said:
        return float(said)
    return number_of(said)
