"""Who dances each part, where a line of format 1 says it in words that leave no doubt.

Format 1 had `who` alone: "partner one asks and partner two answers". What is read here is only
what can mean one thing; all other words are left to whoever wrote them.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

_SWAP = re.compile(r"[,;:]?\s*(?:and )?then (?:they |you |all )?swap\b.*$", re.IGNORECASE)
_ROLES: tuple[tuple[str, re.Pattern[str]], ...] = tuple(
    (role, re.compile(rf"\b(?:{words})\b", re.IGNORECASE))
    for role, words in (
        ("ones", r"partner one|(?:the |number )?ones"),
        ("twos", r"partner two|(?:the |number )?twos"),
        ("odds", r"(?:the )?odd numbers|(?:the )?odds"),
        ("evens", r"(?:the )?even numbers|(?:the )?evens"),
    )
)
_TOGETHER = ({"ones", "twos"}, {"odds", "evens"})
_OTHERS = re.compile(
    r"\b(?:everyone|everybody|all|both|each|whoever|class|half|three|four|threes|fours|watch\w*)\b",
    re.IGNORECASE,
)
_BEFORE_NUMBERS = re.compile(r"(?:the )?(?:dancers|numbers)\s+", re.IGNORECASE)
_NUMBER = re.compile(r"(\w+)(?:,? and |, ?| )?", re.IGNORECASE)
_FIGURES = {w: str(n) for n, w in enumerate(("one", "two", "three", "four", "five", "six"), 1)}


@dataclass(frozen=True, slots=True)
class SaidParts:
    """The roles in the order of the parts, whether they are partners, and if a swap is said."""

    roles: tuple[str, str]
    partners: bool
    swaps: bool


def said_parts(who: str | None) -> SaidParts | None:
    """The two roles that a line names, in its order; None where it may mean anything else."""
    if not who:
        return None
    plain = _SWAP.sub("", who)
    found = sorted((at.start(), role) for role, words in _ROLES for at in words.finditer(plain))
    names = [role for _, role in found]
    if len(names) != 2 or set(names) not in _TOGETHER or _OTHERS.search(plain):
        return None
    return SaidParts((names[0], names[1]), "partner" in plain.lower(), plain != who)


def counted_out(who: str | None) -> int | None:
    """How many dancers a line numbers from 1, one after another: "dancers 1, 2 and 3" are 3."""
    text = (who or "").lower()
    start = _BEFORE_NUMBERS.match(text)
    at, many = start.end() if start else 0, 0
    while (found := _NUMBER.match(text, at)) is not None:
        if _FIGURES.get(found.group(1), found.group(1)) != str(many + 1):
            break
        at, many = found.end(), many + 1
    return many if many > 1 else None


def places(roles: tuple[str, ...], size: int) -> dict[str, tuple[int, ...]]:
    """The places in a group of `size` that each of the roles has."""
    at = {
        "ones": (1,),
        "twos": (2,),
        "odds": tuple(range(1, size + 1, 2)),
        "evens": tuple(range(2, size + 1, 2)),
    }
    return {role: at[role] for role in sorted(roles, key=lambda role: at[role])}
