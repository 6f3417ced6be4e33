"""Many texts by their sentences: in which of them a thing may be said, found for all at once.

A saying stands in one sentence, so a sentence alone is read, and not the long notes it is from.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import reduce
from itertools import accumulate
from operator import or_

from build_tools.sentences.many_texts import ManyTexts, bits_of, numbers_of
from build_tools.sentences.plain import sentences_of
from build_tools.sentences.sayings import Saying


class ManySentences:
    """The sentences of texts, which are known by their numbers from 0."""

    def __init__(self, texts: Sequence[str]) -> None:
        each = [sentences_of(text) for text in texts]
        self._before = [(1 << first) - 1 for first in (0, *accumulate(map(len, each)))]
        """A bit for each sentence that stands before a text."""
        self._sentences = [(n, one) for n, sentences in enumerate(each) for one in sentences]
        self._index = ManyTexts([one for _, one in self._sentences])

    @property
    def words(self) -> frozenset[str]:
        """Every word of the texts, as `plain_words` has them."""
        return self._index.words

    @property
    def every(self) -> int:
        """A bit for each sentence."""
        return (1 << len(self._sentences)) - 1

    def of_texts(self, numbers: Iterable[int]) -> int:
        """The sentences of some texts, a bit each."""
        before = self._before
        return reduce(or_, (before[one + 1] ^ before[one] for one in numbers), 0)

    def texts_with(self, words: Iterable[str]) -> int:
        """The texts that hold one of the words, a bit each."""
        sentences = reduce(or_, map(self._index.with_word, words), 0)
        return bits_of({self._sentences[n][0] for n in numbers_of(sentences)})

    def that_may_say(self, what: Saying, among: int) -> Iterator[tuple[int, str]]:
        """Those of some sentences, a bit each, with all that a phrase needs, in order.

        Each has the number of its text.
        """
        for number in numbers_of(what.may_be_where(self._index, among)):
            yield self._sentences[number]
