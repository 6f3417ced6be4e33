"""Many texts at once: which of them hold a word, or one of a list of words, a bit for each text.

All the texts of a unit are asked for the same lists as those of the next. So each list that was
asked for once is looked for in one walk over the words of the next unit.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Callable, Collection, Sequence
from functools import cached_property
from itertools import accumulate

from build_tools.sentences.plain import APART, places_of_words, put_together

MOST_LISTS = 8192
"""So many lists are kept in mind; another is looked for by itself."""
_READY = 4096
_BITS = tuple(1 << number for number in range(_READY))
"""A bit for each of the first numbers: a unit has about a thousand sentences."""
_lists: list[frozenset[str]] = []
_lists_with: dict[str, list[int]] = defaultdict(list)
"""For each word the places in `_lists` of those that hold it."""


class ManyTexts:
    """Texts by their numbers from 0, asked for the words they hold, as `plain_words` has them."""

    def __init__(self, texts: Sequence[str]) -> None:
        self._together = put_together(texts)
        self._starts = [0, *accumulate(len(text) + len(APART) for text in texts)]
        self._bits: dict[str, int] = {}

    @cached_property
    def words(self) -> frozenset[str]:
        """Every word that stands in them."""
        return frozenset(self._places)

    def with_word(self, word: str) -> int:
        """The texts that hold the word, a bit each."""
        bits = self._bits.get(word)
        if bits is None:
            bits = self._bits[word] = bits_of(self._places.get(word, ()))
        return bits

    def with_any(self, words: frozenset[str]) -> int:
        """The texts that hold one of the words, a bit each."""
        bits = self._with_any.get(words)
        if bits is None:
            bits = 0
            for word in words & self.words:
                bits |= self.with_word(word)
            self._with_any[words] = bits
            _keep_in_mind(words)
        return bits

    def containing(self, letters: str) -> int:
        """The texts that contain the letters as they are, a bit each."""
        return self._where(lambda start: self._together.find(letters, start))

    def matching(self, pattern: re.Pattern[str]) -> int:
        """The texts in which the pattern is found, a bit each.

        They are searched as one, so it may ask for no start or end of a text.
        """

        def found(start: int) -> int:
            match = pattern.search(self._together, start)
            return match.start() if match else -1

        return self._where(found)

    def _where(self, found_from: Callable[[int], int]) -> int:
        numbers: list[int] = []
        at = found_from(0)
        while at >= 0:
            number = bisect_right(self._starts, at) - 1
            numbers.append(number)
            at = found_from(self._starts[number + 1])
        return bits_of(numbers)

    @cached_property
    def _places(self) -> dict[str, list[int]]:
        return places_of_words(self._together)

    @cached_property
    def _with_any(self) -> dict[frozenset[str], int]:
        found = [0] * len(_lists)
        for word in self.words & _lists_with.keys():
            bits = self.with_word(word)
            for place in _lists_with[word]:
                found[place] |= bits
        return dict(zip(_lists, found, strict=True))


def bits_of(numbers: Collection[int]) -> int:
    """A bit for each of the numbers."""
    bits, ready = 0, _BITS
    for number in numbers:
        bits |= ready[number] if number < _READY else 1 << number
    return bits


def numbers_of(bits: int) -> list[int]:
    """The numbers whose bits are set, from the lowest."""
    found: list[int] = []
    while bits:
        lowest = bits & -bits
        found.append(lowest.bit_length() - 1)
        bits ^= lowest
    return found


def _keep_in_mind(words: frozenset[str]) -> None:
    if len(_lists) < MOST_LISTS:
        for word in words:
            _lists_with[word].append(len(_lists))
        _lists.append(words)
