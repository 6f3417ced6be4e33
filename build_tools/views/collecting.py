"""What to collect for a whole unit, each thing once, with the lessons that use it."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.unit import Unit


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing to collect; `lessons` is empty where only the unit names it."""

    what: str
    lessons: tuple[int, ...]


def things_to_collect(unit: Unit) -> tuple[Thing, ...]:
    """The unit's own list first, then what a lesson asks for besides; no thing twice."""
    words: dict[str, str] = {}
    lessons: dict[str, list[int]] = {}
    named = [(thing, 0) for thing in unit.kit.collect]
    named += [(thing, lesson.number) for lesson in unit.lessons for thing in lesson.collect]
    for thing, number in named:
        key = _key(thing)
        words.setdefault(key, thing)
        found = lessons.setdefault(key, [])
        if number and number not in found:
            found.append(number)
    return tuple(Thing(text, tuple(lessons[key])) for key, text in words.items())


def _key(thing: str) -> str:
    text = " ".join(thing.split()).casefold().rstrip(".")
    for article in ("a ", "an ", "the ", "one "):
        text = text.removeprefix(article)
    return text
