"""Counts as a class counts them: never past a phrase. Four eights; the third eight.

Nobody counts to 72 who watches thirty pupils. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from build_tools.movement.counts import figures, phrases
from build_tools.sentences.word_lists import word_row
from build_tools.views.words.plain_words import listed

_ONES = word_row(
    "no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen"
)
_ORDINALS = word_row(
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth"
)


def number_word(number: int) -> str:
    """A whole number as it is said; past sixteen its figures."""
    return _ONES[number] if 0 <= number < len(_ONES) else str(number)


def phrase_word(phrase: int, number: int = 1) -> str:
    """What a phrase is called: an eight, eights; one of more than sixteen counts is a phrase."""
    one = number_word(phrase) if phrase < len(_ONES) else "phrase"
    if number == 1:
        return one
    return f"{one[:-1]}xes" if one.endswith("x") else f"{one}s"


def phrases_in_words(number: int, phrase: int, how: str = "") -> str:
    """How many phrases: four eights, an eight, two soft eights; many are 'all the eights'."""
    many = "all the" if number >= len(_ONES) else number_word(number)
    first = "one" if number == 1 else many
    return " ".join(word for word in (first, how, phrase_word(phrase, number)) if word)


def counts_in_phrases(counts: Fraction, phrase: int) -> str:
    """So many counts: four eights, two eights and four, 6 counts; empty where they are too many."""
    whole, left = phrases(counts, phrase)
    if not whole or phrase >= len(_ONES):
        many = figures(counts)
        return f"{many} {'count' if counts <= 1 else 'counts'}" if counts < len(_ONES) else ""
    if whole >= len(_ONES):
        return ""
    more = f" and {_left_in_words(left)}" if left else ""
    return f"{phrases_in_words(whole, phrase)}{more}"


def nth_phrases(indexes: Sequence[int], phrase: int) -> str:
    """Phrases by their places, from 0: the third eight, the first and second eights."""
    if any(index >= len(_ORDINALS) for index in indexes):
        return listed([f"{phrase_word(phrase)} number {index + 1}" for index in indexes])
    places = listed([_ORDINALS[index] for index in indexes])
    return f"the {places} {phrase_word(phrase, len(indexes))}"


def _left_in_words(left: Fraction) -> str:
    return number_word(int(left)) if left.denominator == 1 else figures(left)
