"""What to collect for a whole unit, each thing once, with the lessons that use it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.views.written.works import works

_LITTLE = frozenset((
    "a", "all", "an", "and", "any", "as", "at", "both", "by", "each", "every", "for", "from",
    "half", "in", "no", "of", "on", "one", "or", "set", "sets", "small", "some", "such", "the",
    "their", "them", "to", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "with",
))  # fmt: skip
"""Words that name nothing to collect."""


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing to collect; `lessons` is empty where only the unit names it."""

    what: str
    lessons: tuple[int, ...]


def things_to_collect(unit: Unit) -> tuple[Thing, ...]:
    """The unit's own list first, then what a lesson asks for besides; no thing twice.

    A line of a lesson is in the unit's list where every word that names something is: in the
    list, or in the title of something in the stimulus.
    """
    own = [_names(thing) for thing in unit.kit.collect]
    titles = _names(" ".join(one.title for one in works(unit)))
    used: list[list[int]] = [[] for _ in own]
    words: dict[frozenset[str], str] = {}
    lessons: dict[frozenset[str], list[int]] = {}
    for lesson in unit.lessons:
        for thing in lesson.collect:
            names = _names(thing)
            places = _places(names, own, titles)
            for place in places:
                _add(used[place], lesson.number)
            if not places:
                words.setdefault(names, thing)
                _add(lessons.setdefault(names, []), lesson.number)
    things = [Thing(thing, tuple(n)) for thing, n in zip(unit.kit.collect, used, strict=True)]
    return (*things, *(Thing(text, tuple(lessons[names])) for names, text in words.items()))


def _places(
    names: frozenset[str], own: Sequence[frozenset[str]], titles: frozenset[str]
) -> list[int]:
    """Which lines of the unit's list a lesson's line stands for; none where a word is new."""
    left = names & frozenset[str]().union(*own)
    if not left or names - left - titles:
        return []
    found: list[int] = []
    while left:
        most = max(len(left & line) for line in own)
        best = [place for place, line in enumerate(own) if len(left & line) == most]
        found += best
        left = left.difference(*(own[place] for place in best))
    return found


def _add(numbers: list[int], number: int) -> None:
    if number not in numbers:
        numbers.append(number)


def _names(thing: str) -> frozenset[str]:
    """The words of a line that name something, each without the s of the plural."""
    words = re.findall(r"[^\W_]+", thing.casefold())
    return frozenset(
        word.removesuffix("s") if len(word) > 3 else word for word in words if word not in _LITTLE
    )
