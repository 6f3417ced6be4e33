"""Welsh: `a` before a consonant, `ac` before a vowel, and numbers in words.

`a` sounds the first letter of the next word anew where that is c, p or t (throi for troi). The next
word may be an author's, which nobody changes; so there the row says `a hefyd` (and also), after
which nothing changes. In the same way messages say "8 o gyfrifau", not "wyth cyfrif". From memory,
to be proved by a Welsh speaker.
"""

from __future__ import annotations

_VOWELS = frozenset("aeiouwyâêîôûŵŷàèìòùẁỳáéíóúẃýäëïöüẅÿ")
_SAID_WITH_A_VOWEL = frozenset({"1", "8", "11"})
"""Figures whose names begin with one: un, wyth, un ar ddeg."""
_SOUNDED_ANEW = ("c", "p", "t")
_NOT_SOUNDED_ANEW = ("ch", "ph", "th")
NUMBERS = (
    "dim", "un", "dau", "tri", "pedwar", "pump", "chwech", "saith", "wyth", "naw", "deg",
    "un ar ddeg", "deuddeg",
)  # fmt: skip


def with_last(before: str, last: str, joined_by: str) -> str:
    """The row with its last thing: a, b ac c."""
    if joined_by == "or":
        return f"{before} neu {last}"
    start = last.casefold().lstrip("“‘\"'(")
    figure = start.split()[0].rstrip(".,;:") if start.split() else ""
    if figure in _SAID_WITH_A_VOWEL or start[:1] in _VOWELS:
        return f"{before} ac {last}"
    if start.startswith(_SOUNDED_ANEW) and not start.startswith(_NOT_SOUNDED_ANEW):
        return f"{before} a hefyd {last}"
    return f"{before} a {last}"
