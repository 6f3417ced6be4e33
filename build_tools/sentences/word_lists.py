"""Lists of words, written as one writes a line."""

from __future__ import annotations


def word_list(line: str) -> frozenset[str]:
    """The words of the line: `word_list("sit sits sitting")`."""
    return frozenset(line.split())


def word_row(line: str) -> tuple[str, ...]:
    """The words of the line in their order."""
    return tuple(line.split())
