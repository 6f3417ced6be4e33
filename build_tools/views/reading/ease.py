"""How hard a text is to read, and how long it takes.

Words the class is taught may be left out of the count of syllables: `choreography` is long, but it
is not hard once it has been taught. A taught word still counts towards the length of its sentence.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from build_tools.views.reading.syllables import syllables

WORDS_A_MINUTE = 238
"""Silent reading of non-fiction by adults, in English (Brysbaert 2019, Journal of Memory and
Language 109:104047). Children, and adults reading a second language, are slower."""

SENTENCES_FOR_SMOG = 30
POLYSYLLABLE = 3

_WORD = re.compile(r"[^\W_]+(?:['’-][^\W_]+)*")
_ABBREVIATION = re.compile(r"\b(?:Mr|Mrs|Ms|Dr|St|e\.g|i\.e)\.$")
_END = re.compile(r"(?<![.!?…])[.!?…]+[\"'”’)\]]*(?=\s+[^\sa-z])|\n+")
_VOWELS = frozenset(b"aeiouyAEIOUY")
_ONLY_VOWELS = bytes(byte if byte in _VOWELS else ord(" ") for byte in range(256))
_STOP = re.compile(r"[.!?](?=\s)|\n")


@dataclass(frozen=True, slots=True)
class ReadingEase:
    """A text counted and scored. `syllables` are those of the words that are not taught."""

    words: int
    sentences: int
    syllables: int
    taught: int
    """How many of the words are taught words: their syllables are not counted."""
    ease: float
    """Flesch reading ease: about 100 is very easy, 60 plain, below 30 very hard."""
    grade: float
    """Flesch-Kincaid grade: the American school grade; a British school year is one more."""


@lru_cache(maxsize=256)
def words(text: str) -> tuple[str, ...]:
    """The words of `text` in order; a number is a word, and so is one joined by hyphens."""
    return tuple(_WORD.findall(text))


@lru_cache(maxsize=256)
def sentences(text: str) -> tuple[str, ...]:
    """The sentences of `text` in order, each with a word in it. A new line starts a new one.

    A mark before a small letter ends nothing, so that "Freeze!" she says is one sentence.
    """
    found: list[str] = []
    start = 0
    for end in _END.finditer(text):
        piece = text[start : end.end()]
        if not _ABBREVIATION.search(piece):
            found.append(piece.strip())
            start = end.end()
    found.append(text[start:].strip())
    return tuple(piece for piece in found if _WORD.search(piece))


def longest_sentence(text: str) -> str:
    """The sentence with the most words, the first of equals; empty if there is none."""
    return max(sentences(text), key=lambda one: len(words(one)), default="")


def flesch_reading_ease(words_a_sentence: float, syllables_a_word: float) -> float:
    """Reading ease (Flesch 1948, A new readability yardstick, Journal of Applied Psychology 32)."""
    return 206.835 - 1.015 * words_a_sentence - 84.6 * syllables_a_word


def flesch_kincaid_grade(words_a_sentence: float, syllables_a_word: float) -> float:
    """American school grade (Kincaid, Fishburne, Rogers and Chissom 1975, Report 8-75)."""
    return 0.39 * words_a_sentence + 11.8 * syllables_a_word - 15.59


def smog_grade(polysyllables: int, sentence_count: int) -> float | None:
    """American school grade from words of three syllables or more; None under 30 sentences.

    McLaughlin 1969, SMOG grading: a new readability formula, Journal of Reading 12: the formula
    was made on 30 sentences and does not hold for fewer.
    """
    if sentence_count < SENTENCES_FOR_SMOG:
        return None
    return 1.0430 * math.sqrt(polysyllables * 30 / sentence_count) + 3.1291


def smog(text: str, taught: Iterable[str] = ()) -> float | None:
    """The SMOG grade of `text`, taught words left out; None under 30 sentences."""
    untaught, _ = _without_taught(words(text), taught)
    long = sum(syllables(word) >= POLYSYLLABLE for word in untaught)
    return smog_grade(long, len(sentences(text)))


def reading_ease(text: str, taught: Iterable[str] = ()) -> ReadingEase | None:
    """`text` counted and scored; None where no word is left to score.

    `taught` holds words and phrases in any case; their plurals are left out with them. The scores
    wander on texts under about 100 words: score a whole lesson, not one task.
    """
    everything = words(text)
    untaught, taught_count = _without_taught(everything, taught)
    if not untaught:
        return None
    sentence_count = len(sentences(text))
    syllable_count = sum(map(syllables, untaught))
    averages = len(everything) / sentence_count, syllable_count / len(untaught)
    return ReadingEase(
        words=len(everything),
        sentences=sentence_count,
        syllables=syllable_count,
        taught=taught_count,
        ease=flesch_reading_ease(*averages),
        grade=flesch_kincaid_grade(*averages),
    )


def ease_at_a_glance(text: str) -> float:
    """About the Flesch reading ease of `text`, and in plain text too low rather than too high.

    Syllables are taken from the groups of vowels: silent letters count, and no list is loaded.
    """
    word_count = len(text.split())
    if not word_count:
        return flesch_reading_ease(0, 0)
    # by bytes, which is several times as fast as a pattern
    syllable_count = len(text.encode("ascii", "replace").translate(_ONLY_VOWELS).split())
    sentence_count = 1 + len(_STOP.findall(text))
    return flesch_reading_ease(word_count / sentence_count, syllable_count / word_count)


def reading_minutes(word_count: int) -> float:
    """Minutes an adult takes to read that many words in silence."""
    return word_count / WORDS_A_MINUTE


def _without_taught(found: tuple[str, ...], taught: Iterable[str]) -> tuple[list[str], int]:
    phrases = sorted((_plain(words(phrase)) for phrase in taught), key=len, reverse=True)
    if not phrases:
        return list(found), 0
    starts = {ending for p in phrases if p for ending in (p[0], *_plurals(p[0]))}
    plain = _plain(found)
    left: list[str] = []
    at = 0
    while at < len(found):
        length = 0
        if plain[at] in starts:
            length = next((len(p) for p in phrases if p and _same(plain[at : at + len(p)], p)), 0)
        if not length:
            left.append(found[at])
        at += length or 1
    return left, len(found) - len(left)


def _plain(some: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(word.casefold() for word in some)


def _plurals(word: str) -> tuple[str, str]:
    return f"{word}s", f"{word}es"


def _same(here: tuple[str, ...], phrase: tuple[str, ...]) -> bool:
    endings = (phrase[-1], *_plurals(phrase[-1]))
    return len(here) == len(phrase) and here[:-1] == phrase[:-1] and here[-1] in endings
