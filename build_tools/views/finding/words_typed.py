"""A text as the finder compares it: small letters and figures, without accents.

The page's script, `site_overrides/front/finding/words-typed.js`, does the same to what a teacher
types; a test holds the two together.
"""

from __future__ import annotations

import re
import unicodedata

SHARD_LETTERS = 2
"""By how many of its first letters a word's file is named."""
_WORD = re.compile(r"[a-z0-9]+")


def words_typed(text: str) -> tuple[str, ...]:
    """The words of `text` that can be looked up, in order; a letter alone is none."""
    plain = unicodedata.normalize("NFD", text.lower())
    letters = "".join(c for c in plain if not unicodedata.combining(c))
    return tuple(word for word in _WORD.findall(letters) if len(word) >= SHARD_LETTERS)


def shard_of(word: str) -> str:
    """The name of the file that a word is in."""
    return word[:SHARD_LETTERS]
