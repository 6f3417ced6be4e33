"""Groups of a class as a teacher says them: six fours and one three.

A page's script says it for the class of the day, in site_overrides/sums/groups-in-words.js, and
generated classes hold the two to the same words.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from build_tools.views.words.plain_words import listed

_NAMES = {2: "pair", 3: "three", 4: "four", 5: "five", 6: "six"}
_ONES = (
    *("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
    *("eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen"),
    "nineteen",
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")


def groups_in_words(sizes: Sequence[int]) -> str:
    """Groups by size, as many of one size together, what there is most of first."""
    if not sizes:
        return "nobody"
    counted = sorted(Counter(sizes).items(), key=lambda one: (-one[1], -one[0]))
    return listed([group_named(size, many) for size, many in counted])


def group_named(size: int, many: int) -> str:
    """So many groups of one size: three pairs, one four, two groups of 8."""
    number = number_in_words(many)
    if size == 1:
        return f"{number} {'pupil' if many == 1 else 'pupils'} alone"
    if size not in _NAMES:
        return f"{number} {'group' if many == 1 else 'groups'} of {size}"
    name = _NAMES[size]
    return f"{number} {name if many == 1 else 'sixes' if size == 6 else f'{name}s'}"


def number_in_words(number: int) -> str:
    """A whole number up to 99 in words; figures from 100."""
    if number < len(_ONES):
        return _ONES[number]
    if number > 99:
        return str(number)
    tens, ones = divmod(number, 10)
    return _TENS[tens - 2] + (f"-{_ONES[ones]}" if ones else "")
