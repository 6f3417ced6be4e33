"""The words of a text without reading it: plain letters, in no order, which is soon done.

Most texts are never read. Which could say a thing is seen from the words that stand in them, for
all the texts of a unit at once.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable
from functools import cache, lru_cache
from unicodedata import normalize

_NOT_ASCII = re.compile(r"[^\x00-\x7f]")
_FIGURE = re.compile(r"[0-9]")
_PARTS = re.compile(r"\d+|[a-z]+")
_A_SENTENCE_ENDS = re.compile(r"[.!?…\n](?:(?<!\d\.)|(?!\d))")
APART = "\0"
_LETTERS = frozenset(b"\0abcdefghijklmnopqrstuvwxyz0123456789")
_ONLY_LETTERS = bytes(byte if byte in _LETTERS else ord(" ") for byte in range(256))
JOINED = {
    ("each", "other"): "each-other",
    ("each", "other's"): "each-other",
    ("one", "another"): "each-other",
    ("no", "one"): "nobody",
    ("as", "if"): "as-if",
    ("as", "though"): "as-if",
    ("all", "fours"): "all-fours",
    ("at", "least"): "at-least",
    ("at", "most"): "at-most",
}
"""Words that mean one thing together, and the one word that stands for them."""


def plain_letters(text: str) -> str:
    """The text in small letters without accents, each character where it was: fete for fête."""
    if not text.isascii():
        for letter in set(_NOT_ASCII.findall(text)):
            text = text.replace(letter, _plain(letter))
    return text.lower()


@cache
def _plain(letter: str) -> str:
    if letter in "’‘":
        return "'"
    return normalize("NFKD", letter)[0].lower()[:1] or letter


def first_part(form: str) -> str:
    """A form as `plain_words` has it: thirty of thirty-two, don of don't."""
    return form.partition("-")[0].partition("'")[0]


@lru_cache(maxsize=2048)
def plain_words(text: str) -> frozenset[str]:
    """The words of a text, split at hyphens and apostrophes."""
    plain = _only_letters(text).replace(APART, " ")
    words = frozenset(plain.split())
    if "one" in words or _FIGURE.search(plain):
        return frozenset(_with_parts({word: [0] for word in words}))
    return words


def put_together(texts: Iterable[str]) -> str:
    """Many texts as one, with a mark between that none of them holds; each as long as it was."""
    return APART.join([text.replace(APART, " ") for text in texts])


def places_of_words(together: str) -> dict[str, list[int]]:
    """For each word of texts put together the numbers of those that hold it, at least once each.

    The words are those of `plain_words`, found in a fifth of the time.
    """
    found: dict[str, list[int]] = defaultdict(list)
    for number, text in enumerate(_only_letters(together).split(APART)):
        for word in text.split():
            found[word].append(number)
    return _with_parts(found)


def _only_letters(text: str) -> str:
    # by bytes, which is several times as fast
    plain = plain_letters(text).encode("ascii", "replace")
    return plain.translate(_ONLY_LETTERS).decode("ascii")


def _with_parts(places: dict[str, list[int]]) -> dict[str, list[int]]:
    """The same with the words that others are read as or hold: nobody of no one, 8 of 8th."""
    if "one" in places:
        # read as each other and nobody, whose first letters are not those written
        with_one = set(places["one"])
        for (first, second), one in JOINED.items():
            if first in places and second in places:
                both = with_one.intersection(places[first], places[second])
                if both:
                    places.setdefault(first_part(one), []).extend(both)
    for word in [word for word in places if word[0].isdigit() and not word.isdecimal()]:
        for part in _PARTS.findall(word):
            places.setdefault(part, []).extend(places[word])
    return places


def sentences_of(text: str) -> list[str]:
    """The sentences of a text without the marks at their ends; a stop between figures ends none."""
    return [one for one in _A_SENTENCE_ENDS.split(text) if one]


@lru_cache(maxsize=1024)
def words_by_sentence(text: str) -> tuple[tuple[str, frozenset[str]], ...]:
    """Each sentence of a text and its words, as `plain_words` has them."""
    sentences = sentences_of(text)
    if len(sentences) == 1:
        return ((sentences[0], plain_words(text)),)
    return tuple((one, plain_words.__wrapped__(one)) for one in sentences)
