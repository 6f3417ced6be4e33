"""Where numbers stand beside words that are looked for: the rest of long notes is not read."""

from __future__ import annotations

import re
from itertools import pairwise

from build_tools.sentences.numbers import NUMBER_WORDS
from build_tools.sentences.plain import words_by_sentence
from build_tools.sentences.word_lists import word_list

_FIGURE = re.compile(r"\d")
_NUMBERS = NUMBER_WORDS - word_list("zero once twice thrice single dozen hundred")


def has_number(text: str, words: frozenset[str]) -> bool:
    """Whether a text of these words may say how many; once and twice say how often."""
    return not _NUMBERS.isdisjoint(words) or _FIGURE.search(text) is not None


def parts_with_numbers(text: str, named: frozenset[str], each: frozenset[str]) -> list[str]:
    """The sentences with a number and one of the words `named`, as they are written.

    Where a word in `each` is near, what has the number may be named in the sentence before: those
    before and after it then come with it.
    """
    sentences = [*words_by_sentence(text), ("", frozenset[str]())]
    wanted: set[int] = set()
    linked: set[int] = set()  # sentences that are read together with the one before
    before = frozenset[str]()
    for n, ((sentence, words), (_, after)) in enumerate(pairwise(sentences)):
        if has_number(sentence, words):
            if not each.isdisjoint(words | after) and not named.isdisjoint(words | before):
                wanted |= {n - 1, n, n + 1}
                linked |= {n, n + 1}
            elif not named.isdisjoint(words):
                wanted.add(n)
        before = words
    parts: list[str] = []
    start = end = 0
    for n, (sentence, _) in enumerate(sentences[:-1]):
        at = text.index(sentence, end)
        end = at + len(sentence)
        if n in linked and parts:
            parts[-1] = text[start:end]
        elif n in wanted:
            start = at
            parts.append(sentence)
    return parts
