"""Whom or what dancers face, as words say it: face to face with your partner, all to the front."""

from __future__ import annotations

import re
from dataclasses import dataclass

_PARTNER = re.compile(
    r"\b(?:face to face|facing (?:each other|one another|your (?:partner|two|other))|"
    r"(?:looking|look) at (?:each other|your partner))\b",
    re.IGNORECASE,
)
_FRONT = re.compile(
    r"\b(?:(?:all|both) )?(?:facing|face|looking (?:to|at|towards)|turned to) the front\b",
    re.IGNORECASE,
)
_THEN = re.compile(r"\b(?:then|turn(?:s|ed)?|before|until|in turn|one after)\b", re.IGNORECASE)
"""They face one way first, and then another."""


@dataclass(frozen=True, slots=True)
class FacingSaid:
    """The words, and whether it is a partner that is faced; else it is the front."""

    said: str
    partner: bool


def turns_in(text: str) -> bool:
    """Whether a text has them face one way first and then another."""
    return _THEN.search(text) is not None


def facing_in(text: str) -> FacingSaid | None:
    """What a text has all dancers face, if it is one thing."""
    partner, front = _PARTNER.search(text), _FRONT.search(text)
    if turns_in(text) or (partner is None) == (front is None):
        return None
    found = partner or front
    return FacingSaid(found.group(0), partner is not None) if found else None
