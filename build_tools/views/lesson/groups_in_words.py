"""Groups as a teacher says them, and what to say so that pupils are in them in half a minute."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.views.words.plain_words import listed

_ONES = (
    *("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
    *("eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen"),
    "nineteen",
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_NAMES = {
    2: ("pair", "pairs"),
    3: ("three", "threes"),
    4: ("four", "fours"),
    5: ("five", "fives"),
    6: ("six", "sixes"),
}
_PAIRS_MAKE = {
    0: "Join the nearest pair to make a four.",
    1: "Join the nearest pair to make a four. The three joins a pair to make a five.",
    3: "Join the nearest pair to make a four. The three stays a three.",
}
"""What pairs are told, by how many pupils are over when the class is counted in fours."""
_ODD_GROUP = re.compile(
    r"\b(?:threes?|fours?|fives?|sixes|shares?|sharing|one over|(?:pair|three) over|extra)\b",
    re.IGNORECASE,
)


def number_in_words(number: int) -> str:
    """A whole number up to 99 in words; figures from 100."""
    if number < len(_ONES):
        return _ONES[number]
    if number > 99:
        return str(number)
    tens, ones = divmod(number, 10)
    return _TENS[tens - 2] + (f"-{_ONES[ones]}" if ones else "")


def groups_in_words(sizes: Sequence[int]) -> str:
    """Groups by size, as many of one size together: six fours and one three."""
    if not sizes:
        return "nobody"
    counted = [(size, list(sizes).count(size)) for size in sorted(set(sizes), reverse=True)]
    counted.sort(key=lambda pair: -pair[1])
    return listed([_named(size, count) for size, count in counted])


def groups_sentence(sizes: Sequence[int], before: str | None) -> str:
    """What to say to get pupils into these groups; `before` is the grouping they come from.

    Numbering off from one to the number of groups gives these very sizes, in any room.
    """
    if not sizes or sizes[0] == 1:
        return "Find a space of your own."
    if len(sizes) == 1:
        return "All together."
    if sizes.count(2) >= len(sizes) - 1 and sizes[0] < 4:
        over = " One over makes a three." if sizes[0] == 3 else ""
        return f"Turn to the nearest person.{over}"
    if before == "pairs" and _pairs_make(sizes):
        return _PAIRS_MAKE[sum(sizes) % 4]
    if len(sizes) == 2:
        return (
            "Make two groups, one on each side of the hall: "
            f"{number_in_words(sizes[0])} here and {number_in_words(sizes[1])} there."
        )
    return (
        f"Number off from one to {number_in_words(len(sizes))}, and start again at one. Stand "
        "with everyone who has your number."
    )


def odd_group(sizes: Sequence[int], size: int, partners: str | None) -> str:
    """What a group of another size than `size` changes; empty where there is none.

    `partners` is the lesson's line on who works with whom; it is taken where it speaks of this.
    """
    odd = [one for one in sizes if one != size]
    if not odd or size == 1 or odd[0] not in _NAMES or max(size, *sizes) > 6:
        return ""
    if partners and _ODD_GROUP.search(partners):
        return partners
    name = _NAMES[odd[0]][0]
    if odd[0] > size:
        return f"In a {name}, two pupils dance the same part together."
    return f"In a {name}, the last part is left out."


def _named(size: int, count: int) -> str:
    number = number_in_words(count)
    if size == 1:
        return f"{number} {'pupil' if count == 1 else 'pupils'} alone"
    if size in _NAMES:
        return f"{number} {_NAMES[size][0 if count == 1 else 1]}"
    return f"{number} {'group' if count == 1 else 'groups'} of {size}"


def _pairs_make(sizes: Sequence[int]) -> bool:
    """Whether pairs, and the three of an odd class, make these groups by joining."""
    return sum(sizes) % 4 in _PAIRS_MAKE and sizes.count(4) >= len(sizes) - 1
