"""Words that are spoken on the counts, with the number of counts that is said of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.sentences.numbers import number_of

_NUMBERS = (
    "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|"
    "sixteen|twenty|twenty-four|thirty-two"
)
_SPOKEN = re.compile(
    rf"\b(?P<counts>{_NUMBERS}|\d{{1,2}}) counts\b[^.;:\"“]{{0,40}}[:,] "
    r"[\"“](?P<words>[^\"”]+)[\"”]",
    re.IGNORECASE,
)
_ONE_A_COUNT = re.compile(r"[a-z]+(?:[’'-][a-z]+)?", re.IGNORECASE)
_COUNTED = re.compile(rf"\b(?:{_NUMBERS})\b", re.IGNORECASE)
_FEWEST = 2
"""Numbers among the words, from which on it is a pattern that is counted."""


@dataclass(frozen=True, slots=True)
class SpokenCounts:
    """What is said, how many counts it is said to have, and how many its words take."""

    said: str
    counts: int
    words: int


def spoken_counts(text: str) -> Iterator[SpokenCounts]:
    """Every pattern of one word a count, with commas between, of which a text says the counts."""
    for one in _SPOKEN.finditer(text):
        counts = number_of(one.group("counts").lower())
        words = [part.strip(" .!") for part in one.group("words").split(",")]
        simple = all(_ONE_A_COUNT.fullmatch(part) for part in words)
        counted = sum(_COUNTED.fullmatch(part) is not None for part in words)
        if counts is not None and simple and counted >= _FEWEST:
            yield SpokenCounts(one.group(0), counts, len(words))
