"""One mouth and one pair of hands: what the beat asks of a teacher who already points or speaks.

What the author asks of the teacher comes first, since only that fits the step.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.movement.sounding import STRUCK, Piece
from build_tools.page_words.words import _

_POINTS = re.compile(r"\bpoint\b[^.;]*\b(?:as you (?:say|count)|as its word)\b", re.IGNORECASE)
"""Hands that are wanted on the counts."""
_STRIKES = re.compile(r"\b(?:tap|pat|drum|roll|shake|clap|ring)\b", re.IGNORECASE)
"""The author says already when hands do what."""
_SPEAKS = re.compile(r"\b(?:call|count|name|say|whisper)\b", re.IGNORECASE)
_THE_WORDS = re.compile(r"\b(?:say|whisper)\b[^.;]*\bwords?\b", re.IGNORECASE)
"""The author asks for the same words as the beat does."""


def one_thing_at_a_time(made: str, pieces: Sequence[Piece], you: str) -> str:
    """`made`, what a teacher sounds over `pieces`, so that it never asks twice of one person."""
    if not made:
        return made
    own = [one for one in pieces if one.by in (None, "teacher")]
    if any(one.sound in STRUCK for one in own) and _POINTS.search(you) and not _STRIKES.search(you):
        small = f"{made[:1].lower()}{made[1:]}"
        return _("First point. When they know it, {what}", what=small)
    speaks = any(one.sound == "voice" for one in own)
    if speaks and _SPEAKS.search(you) and not _THE_WORDS.search(you):
        return f"{made} " + _("Where you have something else to say, say that instead.")
    return made
