"""Many texts at once: which of them hold a word, or one of a list of words, a bit for each text.

All the texts of a unit are asked for the same lists as those of the next. So each list that was
asked for once is looked for in one walk over the words of the next unit.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from functools import cached_property

from build_tools.sentences.plain import places_of_words

MOST_LISTS = 8192
"""So many lists are kept in mind; another is looked for by itself."""
_lists: list[frozenset[str]] = []
_lists_with: dict[str, list[int]] = defaultdict(list)
"""For each word the places in `_lists` of those that hold it."""


class ManyTexts:
    """Texts by their numbers from 0, asked for the words they hold, as `plain_words` has them."""

    def __init__(self, texts: Sequence[str]) -> None:
        self._places = places_of_words(texts)
        self.words = frozenset(self._places)
        self._bits: dict[str, int] = {}

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
    bits = 0
    for number in numbers:
        bits |= 1 << number
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
