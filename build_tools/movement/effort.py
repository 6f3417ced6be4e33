"""The eight effort actions as a cube of weight, time and space.

Opposites differ in all three; neighbours in one.
"""

from __future__ import annotations

from dataclasses import dataclass

SOURCE = "Laban and Lawrence, Effort, 1947."
"""Whose the eight actions are."""


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


def opposite_quality(quality: str) -> str:
    """The other end of one quality, such as light for strong."""
    return _OPPOSITES[quality]


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
