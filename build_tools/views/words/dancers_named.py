"""How many parts the words of `who` name one by one: dancers 1, 2, 3 and 4."""

from __future__ import annotations

import re

_NUMBERS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8}
_NUMBER = re.compile(rf"\b(?:[1-8]|{'|'.join(_NUMBERS)})\b(?!\s+(?:counts?|times|steps?))")


def dancers_named(who: str) -> int | None:
    """The last number where the words name every part from one on; None where they do not."""
    said = [_NUMBERS.get(word) or int(word) for word in _NUMBER.findall(who.lower())]
    if len(said) < 2 or sorted(set(said)) != list(range(1, max(said) + 1)):
        return None
    return max(said)
