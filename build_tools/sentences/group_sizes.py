"""How many dance together, as words of a part say it: each six, in your four, the pairs."""

from __future__ import annotations

import re

_SIZES = {
    "pair": 2, "two": 2, "three": 3, "trio": 3, "four": 4, "quartet": 4, "five": 5, "six": 6,
    "seven": 7, "eight": 8,
}  # fmt: skip
_SAID = re.compile(
    rf"\b(?:each|every|your own|your|the same|their)(?: own)? "
    rf"(?P<size>{'|'.join(_SIZES)})"
    r"(?! (?:steps?|counts?|times|beats?|bars?|eights|pairs|groups|lines|rows|metres?|breaths?|and"
    r"|or|of (?:the|your|them|you))\b)",
    re.IGNORECASE,
)


def group_sizes(text: str) -> frozenset[tuple[str, int]]:
    """Each group that a text speaks of as a class has it, and its size."""
    return frozenset(
        (one.group(0), _SIZES[one.group("size").lower()]) for one in _SAID.finditer(text)
    )
