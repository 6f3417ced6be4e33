"""What an author says of a part that a class has not made yet: it waits for that lesson.

One sentence of the unit may tell of several parts: "In a three, the knock begins with a silence; in
track and marble the front one is track first". Before a part is made, its piece of the sentence
says nothing to anybody.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.lesson.notes_read import Explained

_PIECES = re.compile(r"(;\s+|,?\s+and (?=in\b)|,?\s+but (?=in\b))")
_SENTENCES = re.compile(r"(?<=[.!?])\s+")
_LITTLE = frozenset({"a", "an", "and", "at", "in", "of", "on", "once", "our", "ours", "the", "to"})
"""Words of names that are no name by themselves."""
_DOES = r"(?:begins|starts|ends|goes|comes)\b"


def said_by_now(unit: Unit, number: int, text: str) -> str:
    """`text` as it holds in lesson `number`: what it says of parts made later is left out."""
    later = _of_later_parts(unit, number)
    if later is None or not later.search(text):
        return text
    kept = (_without(later, sentence) for sentence in _SENTENCES.split(text))
    return " ".join(sentence for sentence in kept if sentence)


def explained_by_now(unit: Unit, number: int, piece: Explained) -> Explained:
    """The author's words for a move, and its ways on a chair and on wheels, the same way."""
    seated, wheels = (
        (said_by_now(unit, number, way) or None) if way else way
        for way in (piece.seated, piece.wheels)
    )
    return Explained(piece.word, said_by_now(unit, number, piece.text), seated, wheels)


def first_made_in(unit: Unit, name: str) -> int | None:
    """The number of the first lesson that makes or changes the motif or part `name`."""
    return next(
        (
            lesson.number
            for lesson in unit.lessons
            if any(name in (*step.makes, *step.develops) for step in lesson.steps)
        ),
        None,
    )


def _without(later: re.Pattern[str], sentence: str) -> str:
    """The pieces of a sentence before the first that is of a later part."""
    pieces = _PIECES.split(sentence)
    kept = ""
    for n in range(0, len(pieces), 2):
        if later.search(pieces[n]):
            break
        kept += (pieces[n - 1] if n else "") + pieces[n]
    if not kept:
        return ""
    return kept if kept.endswith((".", "!", "?")) else f"{kept}."


@lru_cache(maxsize=64)
def _of_later_parts(unit: Unit, number: int) -> re.Pattern[str] | None:
    """What names a part that no lesson up to `number` has, though a later one makes it."""
    dance = unit.dance
    first = first_lessons(unit)
    later = [letter for letter, made in first.items() if made > number]
    by_now = [letter for letter, made in first.items() if made <= number]
    known = {word for letter in by_now for word in _names(dance, letter)}
    names = {word for letter in later for word in _names(dance, letter)} - known
    marks = [rf"\b[Ii]n (?:part )?{re.escape(letter)}(?![\w'])" for letter in later]
    if names:
        any_name = "|".join(map(re.escape, sorted(names, key=lambda one: (-len(one), one))))
        marks += [rf"\b[Ii]n (?:the )?(?:{any_name})\b", rf"\bthe (?:{any_name}) {_DOES}"]
        marks.append(rf"\bthe (?:first|second|third|fourth|last) (?:{any_name})\b")
    return re.compile("|".join(marks)) if marks else None


@lru_cache(maxsize=16)
def first_lessons(unit: Unit) -> Mapping[str, int]:
    """The number of the first lesson that makes or dances each part."""
    first: dict[str, int] = {}
    for lesson in unit.lessons:
        for step in lesson.steps:
            named = (*step.makes, *step.joins, *step.dances, *step.shows)
            for letter in letters_in(unit.dance, named):
                first.setdefault(letter, lesson.number)
    return first


def _names(dance: Dance, letter: str) -> set[str]:
    """What people call a part: its name, and each word of it that is no little one."""
    name = (dance.sections[letter].name or "").casefold()
    return {name, *name.split()} - _LITTLE - {""}
