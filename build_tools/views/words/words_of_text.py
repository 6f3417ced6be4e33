"""The words of a text by themselves, for finding whether another text gives them too."""

from __future__ import annotations

import re

_WORD = re.compile(r"[^\W\d_]+")


def words_of_text(text: str) -> list[str]:
    """Its words in order, in small letters, without figures and signs."""
    return _WORD.findall(text.casefold())
