"""Pupils try something alone or with one other before a group does it together."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "try": (
        "try find make work test explore invent think do answer dance look choose practise move "
        "experiment play improvise discover start begin prepare rehearse create show"
    ),
    "then": "then next after afterwards before now later finally only when bring",
}

SMALLER_FIRST = Saying(
    """
    alone|yourself|yourselves|themselves|individually|solo|singly|separately
    on ~2 own
    by ~1 yourself|yourselves|themselves|oneself
    each of ~4 @try
    each ~2 pupil|dancer|one|person|of|member ~4 @try
    pairs|partners|partner|twos|pair ~2 @try
    @try ~4 with|beside ~3 partner|person|neighbour|one
    with|in ~1 one|your|a|pairs|twos ~1 partner|person|neighbour
    in pairs|twos
    in|find|take ~2 own ~1 space|spot|place
    two ~4 @try ~~6 two ~3 watch|look
    two of you try
    of ~1 own
    where you stand
    turn away ~3 from
    own ~3 first
    @try ~2 own ~3 , then|next|after|afterwards|later
    """,
    _LISTS,
)
"""A smaller beginning, before all are together."""

_TOGETHER = Saying(
    """
    group|groups ~1 work|yet
    group|groups|four|fours yet
    """
)

_THEN_THE_GROUP = Saying(
    """
    ^ then|next|after|afterwards|later|finally|only|last|now ~~8 group|four|share|together|all
    """
)
_OWN = Saying(
    """
    @try ~2 your|their|his|her own
    """,
    _LISTS,
)


def smaller_first(text: str | None) -> bool:
    """Whether a text begins with fewer than the group, or says that the group comes later."""
    if SMALLER_FIRST.said(text) or _TOGETHER.denied(text):
        return True
    return bool(_OWN.said(text) and _THEN_THE_GROUP.said(text))
