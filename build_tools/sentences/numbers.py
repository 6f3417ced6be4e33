"""The numbers that words and figures say."""

from __future__ import annotations

from build_tools.sentences.word_lists import word_row

_ONES = word_row(
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen"
)
TENS = word_row("twenty thirty forty fifty sixty seventy eighty ninety")
_NUMBERS = {word: value for value, word in enumerate(_ONES)}
_NUMBERS |= {word: 10 * value for value, word in enumerate(TENS, 2)}
_NUMBERS |= {"once": 1, "twice": 2, "thrice": 3, "dozen": 12, "hundred": 100, "single": 1}
_MOST_FIGURES = 9
_UNITS = frozenset(_ONES[1:10])
NUMBER_WORDS = frozenset(_NUMBERS)
"""The words that say a number by themselves."""


def number_of(form: str) -> int | None:
    """What a number word or a figure says; None if it is neither. Figures are whole numbers.

    So many figures as nobody counts with say nothing.
    """
    if form.isdecimal():
        return int(form) if len(form) <= _MOST_FIGURES else None
    tens, _, ones = form.partition("-")
    if ones and tens in TENS:
        return _NUMBERS[tens] + _NUMBERS[ones]
    return _NUMBERS.get(form)


def is_number_together(first: str, second: str) -> bool:
    """Whether two words say one number: thirty two."""
    return first in TENS and second in _UNITS
