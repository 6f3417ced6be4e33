"""The lessons of a unit as its page lists them: what each is, and what it adds to the dance."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.views.dance.additions import lesson_adds
from build_tools.views.words.plain_words import listed, minutes_in_words, name_in_words
from build_tools.views.words.punctuation import kept_together
from build_tools.views.words.sections_called import called_by


@dataclass(frozen=True, slots=True)
class LessonEntry:
    """One lesson in the unit's list."""

    number: int
    """Which lesson of the unit, from 1."""
    title: str
    """What the lesson is called."""
    href: str
    """Where its page is."""
    minutes: str
    """How long it lasts, in words."""
    pupils_make: str
    """What pupils will have made."""
    adds: tuple[str, ...]
    """What it adds to the dance, in short sentences."""


def lesson_href(number: int) -> str:
    """Where a lesson's page lies, seen from any page of its unit."""
    return f"lesson-{number}.html"


def lesson_entries(unit: Unit) -> tuple[LessonEntry, ...]:
    """Every lesson of the unit, in order."""
    return tuple(
        LessonEntry(
            number=lesson.number,
            title=lesson.title,
            href=lesson_href(lesson.number),
            minutes=kept_together(minutes_in_words(lesson.minutes)),
            pupils_make=lesson.pupils_make,
            adds=_adds(unit, index),
        )
        for index, lesson in enumerate(unit.lessons)
    )


def _adds(unit: Unit, index: int) -> tuple[str, ...]:
    adds = lesson_adds(unit, unit.lessons[index])
    lines = []
    if adds.motifs:
        lines.append(f"Pupils make the {_named(adds.motifs)}.")
    if adds.developments:
        lines.append(f"They change it: {_named(adds.developments)}.")
    if adds.sections:
        called = [called_by(unit.dance, letter) for letter in adds.sections]
        lines.append(f"They make {listed(called)}.")
    if adds.joined:
        lines.append(f"They join {listed(adds.joined)}.")
    chosen = [unit.dance.choices[n].what for n in adds.settled if n in unit.dance.choices]
    lines += [f"They choose {what[:1].lower()}{what[1:]}." for what in chosen]
    if adds.shows_whole:
        lines.append("They show the whole dance.")
    if lines:
        lines[0] = lines[0].replace("They", "Pupils", 1)
    return tuple(lines)


def _named(names: tuple[str, ...]) -> str:
    return listed([name_in_words(name) for name in names])
