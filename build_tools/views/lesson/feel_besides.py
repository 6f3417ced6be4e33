"""How a move feels, where its author's own words stand: only what these do not say, as a teacher
would say it. "Held back." behind "Two small side-steps to the right." puzzled an adviser.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from build_tools.movement.effort import EFFORT_ACTIONS
from build_tools.page_words.speaking import spoken
from build_tools.page_words.tables import ENGLISH
from build_tools.views.dance.moves_today import feel_in_words

_PHRASES: Mapping[str, str] = {
    "strong": "strongly",
    "light": "lightly",
    "sudden": "suddenly",
    "sustained": "smoothly",
    "direct": "directly",
    "indirect": "in curves",
    "free": "freely",
    "bound": "hold it back",
}
_LIGHT = "light"
"""Alone it is said as it is written: nobody was puzzled, and print has no letter to spare."""
_SAYS: Mapping[str, str] = {
    "strong": r"strong|firm|hard|heav|tight|press|push|pull|power|force|slash|punch|stone|throw",
    "light": r"light|soft|gentl|tiptoe|float|feather|moth\b|wool|slack",
    "sudden": r"sudden|quick|sharp|jerk|snap|fast|all at once|at once|jolt|tap|dead|one count",
    "sustained": r"slow|smooth|melt|even|gradual|gentl|counts|unfold|glid",
    "direct": r"straight|direct|forwards",
    "indirect": r"wind|curv|twist|round|turn|wave|bend",
    "free": r"free|throw|let .{0,30}\b(?:go|run|drop|fall|swing)|fling|loose|swing|slack|drop",
    "bound": r"\bheld|hold|still|stop|tight|careful|stone|not a twitch|control|held back",
}
"""Words that say a quality, or show it, by how they begin or wherever they stand."""


def feel_besides(means: str, dynamics: tuple[str, ...]) -> str:
    """The qualities that the author's words `means` do not say, in words; "" where none is left."""
    if spoken() != ENGLISH or not means:
        return feel_in_words(dynamics)
    each = dict.fromkeys(quality for word in dynamics for quality in _qualities(word))
    left = [_PHRASES[one] for one in each if not _says(one, means)]
    return _LIGHT if left == [_PHRASES["light"]] else ", ".join(left)


def _qualities(word: str) -> tuple[str, ...]:
    effort = EFFORT_ACTIONS.get(word)
    return (effort.weight, effort.time, effort.space) if effort else (word,)


def _says(quality: str, means: str) -> bool:
    return re.search(rf"\b(?:{_SAYS[quality]})", means, re.IGNORECASE) is not None
