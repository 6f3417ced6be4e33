"""The eight effort actions as a cube of weight, time and space.

Source: Laban and Lawrence, Effort, 1947. Opposites differ in all three; neighbours in one.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import permutations


@dataclass(frozen=True, slots=True)
class Effort:
    """One corner of the cube."""

    weight: str
    """strong or light."""
    time: str
    """sudden or sustained."""
    space: str
    """direct or indirect."""


EFFORT_ACTIONS: dict[str, Effort] = {
    "punch": Effort("strong", "sudden", "direct"),
    "press": Effort("strong", "sustained", "direct"),
    "slash": Effort("strong", "sudden", "indirect"),
    "wring": Effort("strong", "sustained", "indirect"),
    "dab": Effort("light", "sudden", "direct"),
    "glide": Effort("light", "sustained", "direct"),
    "flick": Effort("light", "sudden", "indirect"),
    "float": Effort("light", "sustained", "indirect"),
}

_BY_CORNER = {effort: name for name, effort in EFFORT_ACTIONS.items()}
_OPPOSITES = {
    "strong": "light",
    "light": "strong",
    "sudden": "sustained",
    "sustained": "sudden",
    "direct": "indirect",
    "indirect": "direct",
    "free": "bound",
    "bound": "free",
}


def distance(first: str, second: str) -> int:
    """In how many of weight, time and space two effort actions differ: 0 to 3."""
    a, b = EFFORT_ACTIONS[first], EFFORT_ACTIONS[second]
    return (a.weight != b.weight) + (a.time != b.time) + (a.space != b.space)


def opposite(action: str) -> str:
    """The effort action that differs in all three."""
    e = EFFORT_ACTIONS[action]
    corner = Effort(_OPPOSITES[e.weight], _OPPOSITES[e.time], _OPPOSITES[e.space])
    return _BY_CORNER[corner]


def opposite_quality(quality: str) -> str:
    """The other end of one quality, such as light for strong."""
    return _OPPOSITES[quality]


def routes(first: str, second: str) -> tuple[tuple[str, ...], ...]:
    """Every shortest way from one effort action to another, one quality changed at a step."""
    a, b = EFFORT_ACTIONS[first], EFFORT_ACTIONS[second]
    changed = [f for f in ("weight", "time", "space") if getattr(a, f) != getattr(b, f)]
    found = []
    for order in permutations(changed):
        names, here = [first], {"weight": a.weight, "time": a.time, "space": a.space}
        for factor in order:
            here[factor] = getattr(b, factor)
            names.append(_BY_CORNER[Effort(**here)])
        found.append(tuple(names))
    return tuple(found)


def qualities(words: tuple[str, ...]) -> frozenset[str]:
    """The single qualities in `words`, effort actions taken apart into theirs."""
    found: set[str] = set()
    for word in words:
        if word in EFFORT_ACTIONS:
            e = EFFORT_ACTIONS[word]
            found |= {e.weight, e.time, e.space}
        else:
            found.add(word)
    return frozenset(found)
