"""Whether a game stops by itself: pupils go while something sounds, and are still in between."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_GO = Saying(
    """
    while ~2 v:ring|sound|shake|play|roll
    between =rings|=rolls|=sounds
    """
)
_STILL = Saying("still|freeze|settle")


def stops_at_sounds(said: str) -> bool:
    """Whether the words of a step, all its lines together, say so."""
    return _GO.said(said) is not None and _STILL.said(said) is not None
