"""Counts as a class counts them: never past a phrase. Four eights; the third eight.

Nobody counts to 72 who watches thirty pupils. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from build_tools.movement.counts import figures, phrases
from build_tools.page_words.forms import counts_in_figures
from build_tools.page_words.words import _, ngettext
from build_tools.sentences.word_lists import word_row
from build_tools.views.words.plain_words import counts_in_words, listed

_ONES = word_row(
    "no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen"
)
_ORDINALS = word_row(
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth"
)


def number_word(number: int) -> str:
    """A whole number as it is said; past sixteen its figures."""
    if counts_in_figures():
        return str(number)
    return _ONES[number] if 0 <= number < len(_ONES) else str(number)


def phrase_word(phrase: int, number: int = 1) -> str:
    """What a phrase is called: an eight, eights; one of more than sixteen counts is a phrase.

    In a language of figures it is how many counts it has, and the message has the rest.
    """
    if counts_in_figures():
        return str(phrase)
    one = number_word(phrase) if phrase < len(_ONES) else "phrase"
    if number == 1:
        return one
    return f"{one[:-1]}xes" if one.endswith("x") else f"{one}s"


def phrases_in_words(number: int, phrase: int, *, soft: bool = False) -> str:
    """How many phrases: four eights, one eight, two soft eights; many are 'all the eights'."""
    eights = phrase_word(phrase, number)
    if number >= len(_ONES):
        return (
            _("all the soft {eights}", eights=eights)
            if soft
            else _("all the {eights}", eights=eights)
        )
    said = number_word(number)
    if soft:
        return ngettext(
            "{number} soft {eights}", "{number} soft {eights}", number, number=said, eights=eights
        )
    return ngettext("{number} {eights}", "{number} {eights}", number, number=said, eights=eights)


def counts_in_phrases(counts: Fraction, phrase: int) -> str:
    """So many counts: four eights, two eights and four, 6 counts; empty where they are too many."""
    whole, left = phrases(counts, phrase)
    if not whole or phrase >= len(_ONES):
        return counts_in_words(counts) if counts < len(_ONES) else ""
    if whole >= len(_ONES):
        return ""
    said = phrases_in_words(whole, phrase)
    if not left:
        return said
    return _("{phrases} and {left}", phrases=said, left=length_word(left))


def nth_phrases(indexes: Sequence[int], phrase: int) -> str:
    """Phrases by their places, from 0: the third eight, the first and second eights."""
    eights = phrase_word(phrase, len(indexes))
    if any(index >= len(_ORDINALS) for index in indexes):
        one = phrase_word(phrase)
        return listed([_("{eight} number {number}", eight=one, number=n + 1) for n in indexes])
    places = listed([str(n + 1) if counts_in_figures() else _ORDINALS[n] for n in indexes])
    return ngettext(
        "the {places} {eights}", "the {places} {eights}", len(indexes), places=places, eights=eights
    )


def nth_in_words(number: int) -> str:
    """Which one in a row, as it is said: first, second; in a language of figures its number."""
    if counts_in_figures() or number > len(_ORDINALS):
        return str(number)
    return _ORDINALS[number - 1]


def length_word(counts: Fraction) -> str:
    """So many counts as they are said: four, 2 1/2."""
    return number_word(int(counts)) if counts.denominator == 1 else figures(counts)
