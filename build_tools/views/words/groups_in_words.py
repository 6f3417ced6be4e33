"""Groups of a class as a teacher says them: six fours and one three.

A page's script says it for the class of the day, in site_overrides/sums/groups-named.js, and
generated classes hold the two to the same words.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from build_tools.page_words.forms import number_counting
from build_tools.page_words.words import NN_, _, ngettext
from build_tools.views.words.plain_words import listed

_NAMES = {
    1: NN_("{number} pupil alone", "{number} pupils alone"),
    2: NN_("{number} pair", "{number} pairs"),
    3: NN_("{number} three", "{number} threes"),
    4: NN_("{number} four", "{number} fours"),
    5: NN_("{number} five", "{number} fives"),
    6: NN_("{number} six", "{number} sixes"),
}


def groups_in_words(sizes: Sequence[int]) -> str:
    """Groups by size, as many of one size together, what there is most of first."""
    if not sizes:
        return _("nobody")
    counted = sorted(Counter(sizes).items(), key=lambda one: (-one[1], -one[0]))
    return listed([group_named(size, many) for size, many in counted])


def group_named(size: int, many: int) -> str:
    """So many groups of one size: three pairs, one four, two groups of 8."""
    number = number_counting(many)
    if size in _NAMES:
        return ngettext(*_NAMES[size], many, number=number)
    return ngettext(
        "{number} group of {size}", "{number} groups of {size}", many, number=number, size=size
    )
