"""What no single message can say: a row of things, a number in words, a day.

English stands here; another language has a module in `grammar/`, named for its tag. A language
that has none says its rows and days by messages and CLDR alone.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from build_tools.page_words.grammar import welsh
from build_tools.page_words.speaking import spoken
from build_tools.page_words.tables import ENGLISH, PSEUDO
from build_tools.page_words.words import pgettext

_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
_ONES = (
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen",
)  # fmt: skip
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_NUMBERS = _ONES[:13]
_LAST: dict[str, Callable[[str, str, str], str]] = {"cy": welsh.with_last}
_NUMBERED: dict[str, Sequence[str]] = {"cy": welsh.NUMBERS}
_IN_FIGURES = frozenset({"cy"})
"""Languages in which a number stands in figures before what it counts: 4 o gymalau."""


def row(words: Sequence[str], last: str = "and", *, apart: bool = False) -> str:
    """Things in a row: a, b and c; `last` is `and` or `or`.

    With `apart`, semicolons stand between them, since one of them has a comma inside.
    """
    if len(words) < 2:
        return "".join(words)
    before = f"{'; '.join(words[:-1])};" if apart else ", ".join(words[:-1])
    if spoken() in _LAST:
        return _LAST[spoken()](before, words[-1], last)
    if last == "and":
        return pgettext("a row of things", "{before} and {last}", before=before, last=words[-1])
    return pgettext("a row of things", "{before} or {last}", before=before, last=words[-1])


def number_in_words(number: int) -> str:
    """A number up to twelve in words, where nothing counted follows it; else in figures."""
    names = _NUMBERED.get(spoken(), _NUMBERS)
    return names[number] if 0 <= number < len(names) else str(number)


def counts_in_figures() -> bool:
    """Whether a number before what it counts stands in figures, and not in words."""
    return spoken() in _IN_FIGURES


def number_counting(number: int) -> str:
    """A number before what it counts: in words up to 99, or in figures as `counts_in_figures`."""
    if counts_in_figures() or number > 99:
        return str(number)
    if number < len(_ONES):
        return _ONES[number]
    tens, ones = divmod(number, 10)
    return _TENS[tens - 2] + (f"-{_ONES[ones]}" if ones else "")


def day(year: int, month: int, number: int) -> str:
    """25 November 2026; in another language as CLDR has it (Unicode Locale Data)."""
    if spoken() in (ENGLISH, PSEUDO):
        return f"{number} {_MONTHS[month - 1]} {year}"
    from babel.dates import format_date

    return format_date(date(year, month, number), "d MMMM y", locale=spoken())
