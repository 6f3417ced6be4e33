"""How a class of so many falls into groups, as words say it: 30, six fours and two threes."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.sentences.numbers import number_of

_SIZES = {
    "pairs": 2, "pair": 2, "twos": 2, "two": 2, "threes": 3, "three": 3, "fours": 4, "four": 4,
    "fives": 5, "five": 5, "sixes": 6, "six": 6, "sevens": 7, "seven": 7, "eights": 8, "eight": 8,
}  # fmt: skip
_NUMBER = r"(?:\d{1,2}|[a-z]+(?:-[a-z]+)?)"
_WHOLE = re.compile(
    rf"\b(?P<total>{_NUMBER})(?: (?:pupils|children|dancers))?"
    r"(?: (?:are|is|make|makes|give|gives|become|becomes|stand as|:)|,|:) "
    r"(?P<parts>[^.;:()]+)",
    re.IGNORECASE,
)
_SEVERAL = re.compile(rf"(?P<many>{_NUMBER}) (?P<size>[a-z]+)$", re.IGNORECASE)
_OF_EACH = re.compile(
    rf"(?P<many>{_NUMBER}) (?:[a-z]+ )?of (?P<of>{_NUMBER})(?: (?P<size>[a-z]+))?$", re.IGNORECASE
)
_AND = re.compile(r",? and |, ")


@dataclass(frozen=True, slots=True)
class ClassSum:
    """What is said, how many pupils it is said of, and how many its groups come to."""

    said: str
    total: int
    comes_to: int


def class_sums(text: str) -> Iterator[ClassSum]:
    """Every sum that a text tells in full, whether it is right or not."""
    start = 0
    while (one := _WHOLE.search(text, start)) is not None:
        start = one.end("total")
        total = number_of(one.group("total").lower())
        comes_to = _added(one.group("parts").strip()) if total is not None else None
        if total is not None and comes_to is not None and total > max(_SIZES.values()):
            yield ClassSum(one.group(0).strip(), total, comes_to)


def _added(parts: str) -> int | None:
    """The pupils in all the groups; None where something else is told as well."""
    added, each = 0, 0
    for part in _AND.split(parts):
        several, of_each = _SEVERAL.fullmatch(part), _OF_EACH.fullmatch(part)
        if of_each is not None:
            many, of = _many(of_each.group("many")), _many(of_each.group("of"))
            each = _SIZES.get((of_each.group("size") or "").lower(), each)
            if many is None or of is None or not each:
                return None
            added += many * of * each
        elif several is not None and several.group("size").lower() in _SIZES:
            many = _many(several.group("many"))
            if many is None:
                return None
            added += many * _SIZES[several.group("size").lower()]
        else:
            return None
    return added


def _many(said: str) -> int | None:
    return 1 if said.lower() in ("a", "an") else number_of(said.lower())
