"""Lists of words, written as one writes a line."""

from __future__ import annotations


def word_list(line: str) -> frozenset[str]:
    """The words of the line: `word_list("sit sits sitting")`."""
    return frozenset(line.split())
