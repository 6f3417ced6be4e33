"""What people say for a word or a number of a list, where it can mean nothing else.

"On their own" is alone, "twice" 2, "half a minute" 30 seconds, "32 (4 x 8)" 32, since the sum is
right. What could be meant in two ways is not here, and is asked about.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from fractions import Fraction

_WORDS: dict[str, tuple[str, ...]] = {
    "on their own": ("alone", "each pupil"),
    "on your own": ("alone", "each pupil"),
    "by themselves": ("alone", "each pupil"),
    "individually": ("alone", "each pupil"),
    "in twos": ("pairs",),
    "half of the class": ("half class", "half the class"),
    "moderate": ("steady",),
}
_GROUPS_OF = {
    "two": "pairs", "three": "threes", "four": "fours", "five": "fives", "six": "sixes",
    "2": "pairs", "3": "threes", "4": "fours", "5": "fives", "6": "sixes",
}  # fmt: skip
_LITTLE = re.compile(r"\A(?:in|the) |\b(?:the) ")
_OFTEN = {"once": 1, "twice": 2, "thrice": 3}
_ROUGHLY = re.compile(r"(?:about|around|roughly|approximately|approx\.?|circa|ca?\.) ?(?=\d)")
_SUM = re.compile(r"(?:(\d+) ?)?(?P<o>\()?(\d+) ?[x×*] ?(\d+)(?(o)\))")
_HALVES = {"half a": "1/2", "a": "1", "one": "1", "1": "1", "two": "2", "2": "2", "three": "3",
           "3": "3", "one and a half": "3/2", "1 1/2": "3/2", "1.5": "3/2", "1½": "3/2",
           }  # fmt: skip
_MINUTES = re.compile(r"(?P<many>[\w/½. ]+?) ?(?:minutes?|mins?)(?P<half> and a half)?")
_SPAN = re.compile(r"(\d+) ?(?:-|–|—|to) ?(\d+)(?: ?(?:m|mins?|minutes?))?")
OPTIONS = "from"
"""The list of what pupils choose from."""
_WHOLE_DANCE = re.compile(r"(?:the )?(?:whole|entire) dance")


def word_said(typed: str, words: Collection[object]) -> str | None:
    """The one of `words` that `typed` plainly stands for."""
    said = " ".join(typed.casefold().split()).strip(" .,;")
    for one in _WORDS.get(said, ()):
        if one in words:
            return one
    if found := re.fullmatch(r"(?:in )?groups of (\w+)", said):
        groups = _GROUPS_OF.get(found[1])
        return groups if groups in words else None
    bare = _LITTLE.sub("", said)
    for whole in (bare, _LITTLE.sub("", bare)):
        near = [one for one in words if isinstance(one, str) and _LITTLE.sub("", one) == whole]
        if len(near) == 1:
            return near[0]
    return None


def number_said(typed: str, field: str) -> str | None:
    """The number that `typed` plainly says in the field of this name, in figures."""
    said = " ".join(typed.casefold().split()).rstrip(".")
    if field == "times" and said in _OFTEN:
        return str(_OFTEN[said])
    if field == "counts" and (found := _SUM.fullmatch(said)):
        product = int(found[3]) * int(found[4])
        return str(product) if found[1] is None or int(found[1]) == product else None
    if field == "seconds":
        return _as_seconds(said)
    if field in ("minutes", "least") and (found := _SPAN.fullmatch(said)):
        first, last = int(found[1]), int(found[2])
        return str(last if field == "minutes" else first) if first < last else None
    if field in ("tempo", "minutes", "least") and (found := _ROUGHLY.match(said)):
        return said[found.end() :]
    return None


def _as_seconds(said: str) -> str | None:
    found = _MINUTES.fullmatch(said)
    many = _HALVES.get(found["many"]) if found else None
    if found is None or many is None:
        return None
    return str(int(60 * (Fraction(many) + (Fraction(1, 2) if found["half"] else 0))))


def name_said(typed: str, field: str) -> str | None:
    """The name that `typed` plainly stands for: the whole dance is `whole`."""
    said = " ".join(typed.casefold().split()).strip(" .,;")
    if field in ("dances", "shows") and " " in said and _WHOLE_DANCE.fullmatch(said):
        return "whole"
    return None


def options_said(typed: str) -> list[str] | None:
    """What pupils choose from, with commas between and perhaps an "or" before the last.

    It is never one thing, so its commas part options, except in brackets. None where a semicolon
    parts them, where nothing does, or where brackets do not close.
    """
    if ";" in typed or re.search(r"[()]", re.sub(r"\([^()]*\)", "", typed)):
        return None
    parts = re.split(r"\s*,\s*(?![^(]*\))", typed.strip().rstrip("."))
    last = parts.pop().removeprefix("or ")
    parts += re.split(r"\s+or\s+(?![^(]*\))", last)
    return parts if len(parts) > 1 and all(parts) else None
