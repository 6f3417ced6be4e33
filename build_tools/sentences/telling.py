"""The words by which one text takes up another: what is left when small words are dropped."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from build_tools.sentences.word_lists import word_list

_WORD = re.compile(r"[a-z]+")
_SMALL = word_list(
    "a an and again all any are as at back be been begin both but by can dance dances danced "
    "dancing do does each every first for from go have here how if in into is it its just last "
    "lesson next no not of off on once one only or our out so start starts step steps still take "
    "that the their them then there these they this those to today try up use was we were what "
    "when where while who with without you your yet"
)
_SAME_FOR = 4
"""Words with so many first letters in common count as the same: sink and sinking."""


def telling_words(texts: Iterable[str | None]) -> frozenset[str]:
    """The telling words of the texts, each cut to its first letters and without its ending."""
    return frozenset().union(*(_telling(text) for text in texts if text))


@lru_cache(maxsize=1024)
def _telling(text: str) -> frozenset[str]:
    words = _WORD.findall(text.lower())
    return frozenset([_cut(word) for word in words if word not in _SMALL and len(word) > 1])


@lru_cache(maxsize=4096)
def _cut(word: str) -> str:
    for ending in ("ing", "ed", "ly", "s"):
        if word.endswith(ending) and len(word) > len(ending) + 2:
            word = word.removesuffix(ending)
            break
    return word.rstrip("e")[:_SAME_FOR]
