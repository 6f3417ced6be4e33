"""One mouth and one pair of hands: what the beat asks of a teacher who already points or speaks.

What the author asks of the teacher comes first, since only that fits the step.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.movement.sounding import STRUCK, Piece
from build_tools.page_words.words import _
from build_tools.views.words.words_of_text import words_of_text

_POINTS = re.compile(r"\bpoint\b[^.;]*\b(?:as you (?:say|count)|as its word)\b", re.IGNORECASE)
"""Hands that are wanted on the counts."""
_STRIKES = re.compile(r"\b(?:tap|pat|drum|roll|shake|clap|ring)\b", re.IGNORECASE)
"""The author says already when hands do what."""
_SPEAKS = re.compile(r"\b(?:call|count|name|say|whisper)\b", re.IGNORECASE)
_THE_WORDS = re.compile(r"\b(?:say|whisper)\b[^.;]*\bwords?\b", re.IGNORECASE)
"""The author asks for the same words as the beat does."""
_SAME = 3
"""Words of the beat, one after another, that the author gives too: then they are its words."""


def one_thing_at_a_time(made: str, pieces: Sequence[Piece], you: str) -> str:
    """`made`, what a teacher sounds over `pieces`, so that it never asks twice of one person."""
    if not made:
        return made
    own = [one for one in pieces if one.by in (None, "teacher")]
    if any(one.sound in STRUCK for one in own) and _POINTS.search(you) and not _STRIKES.search(you):
        small = f"{made[:1].lower()}{made[1:]}"
        return _("First point. When they know it, {what}", what=small)
    speaks = any(one.sound == "voice" for one in own)
    if speaks and _SPEAKS.search(you) and not (_THE_WORDS.search(you) or _said(pieces, you)):
        return f"{made} " + _("Where “You” has words to call, call those instead.")
    return made


def _said(pieces: Sequence[Piece], you: str) -> bool:
    """Whether the author gives words of the beat: there is nothing else to say."""
    words = [word for one in pieces for said in one.words for word in words_of_text(said.says)]
    given = f" {' '.join(words_of_text(you))} "
    runs = (words[n : n + _SAME] for n in range(len(words) - _SAME + 1))
    return any(f" {' '.join(run)} " in given for run in runs)
