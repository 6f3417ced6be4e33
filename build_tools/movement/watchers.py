"""Where watchers sit, by the words in which a dance says where its front is."""

from __future__ import annotations

import re
from typing import Literal

from build_tools.model.dance import Dance

Watchers = Literal[
    "at the front",
    "all round",
    "on two sides",
    "at the short walls",
    "at one short wall",
    "at the tables",
    "front in the middle",
]

_ALL_ROUND = re.compile(
    r"\b(?:all (?:four )?sides|every side|all (?:a)?round|on (?:all )?four sides|in the round|"
    r"(?:a|the) (?:ring|circle) (?:of (?:chairs|seats|benches|watchers)|around|round)|"
    r"no (?:single |one )?front)\b",
    re.IGNORECASE,
)
_SHORT_WALLS = re.compile(
    r"\b(?:watch\w*|sit|seats?|chairs|benches)\b[^.;]*\b"
    r"(?:short (?:walls?|sides?)|both ends|(?:two|either|one) ends?(?: of)?)\b",
    re.IGNORECASE,
)
_ONE_OF_THEM = re.compile(
    r"\b(?:one (?:of the )?(?:short (?:walls?|sides?)|ends?)|"
    r"short wall that is not|(?:never|not) (?:at |by |along )?the door)",
    re.IGNORECASE,
)
_TABLES = re.compile(
    r"\b(?:watch\w*|sit|sits)\b[^.;]*\b(?:at|on|behind) (?:the |their )?(?:tables?|desks?)\b",
    re.IGNORECASE,
)
_TWO_SIDES = re.compile(
    r"\b(?:two (?:opposite |long |facing )?(?:sides|walls)|both (?:long )?(?:sides|walls)|"
    r"either side|opposite (?:sides|walls))\b",
    re.IGNORECASE,
)
_MIDDLE = re.compile(
    r"\W*(?:(?:it|the front) is )?(?:in |at )?the (?:middle|centre)\b(?![^.;]*\bwall)",
    re.IGNORECASE,
)


def watchers(dance: Dance) -> Watchers:
    """Where watchers sit: all round, on two sides, or at the front, which may be the middle.

    In a classroom they sit at the tables, which take none of the floor that is cleared.
    Two sides are the front and the back; where the words have watchers by the short walls, they sit
    to the left and the right of a dance that faces a long one, or at one of the two: which is for
    the hall to say, so both are kept free for them.
    """
    if _TABLES.search(dance.front):
        return "at the tables"
    if _ALL_ROUND.search(dance.front):
        return "all round"
    if _SHORT_WALLS.search(dance.front):
        return "at one short wall" if _ONE_OF_THEM.search(dance.front) else "at the short walls"
    if _TWO_SIDES.search(dance.front):
        return "on two sides"
    return "front in the middle" if _MIDDLE.match(dance.front) else "at the front"
