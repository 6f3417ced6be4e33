"""Whether two texts say the same, letter for letter, whatever stands round their words."""

from __future__ import annotations


def same_words(text: str | None) -> str:
    """A text without capitals, spare spaces and its full stop, for comparing it with another."""
    return " ".join((text or "").casefold().split()).rstrip(".")
