"""The lessons of a unit as its page lists them: what each is, and what it adds to the dance."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.views.dance.additions import lesson_adds
from build_tools.views.words.plain_words import listed, minutes_in_words, name_in_words
from build_tools.views.words.punctuation import kept_together
from build_tools.views.words.sections_called import called_by

WALL = "wall.html"
"""The page of a unit's walls."""


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


def card_href(number: int) -> str:
    """Where a lesson's card lies: its page, seen otherwise."""
    return f"{lesson_href(number)}#card"


def wall_href(number: int) -> str:
    """Where a lesson's wall lies: its place on the page of all the unit's walls."""
    return f"{WALL}#lesson-{number}"


def lesson_named(lesson: Lesson) -> str:
    """A lesson by its number and its title: Lesson 2: The tide."""
    return _("Lesson {number}: {title}", number=lesson.number, title=lesson.title)


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
    said: list[tuple[tuple[str, str], str]] = []
    if adds.motifs:
        said.append((_MAKE_MOVES, _named(adds.motifs)))
    if adds.developments:
        said.append((_CHANGE, _named(adds.developments)))
    if adds.sections:
        said.append((_MAKE, listed([called_by(unit.dance, letter) for letter in adds.sections])))
    if adds.joined:
        said.append((_JOIN, listed(adds.joined)))
    chosen = [unit.dance.choices[n].what for n in adds.settled if n in unit.dance.choices]
    said += [(_CHOOSE, f"{what[:1].lower()}{what[1:]}") for what in chosen]
    if adds.shows_whole:
        said.append((_SHOW, ""))
    return tuple(
        _(pattern[min(place, 1)]).format(what=what) for place, (pattern, what) in enumerate(said)
    )


_MAKE_MOVES = (N_("Pupils make the {what}."), N_("They make the {what}."))
"""What the first line says, which names who, and what one further down says."""
_CHANGE = (N_("Pupils change it: {what}."), N_("They change it: {what}."))
_MAKE = (N_("Pupils make {what}."), N_("They make {what}."))
_JOIN = (N_("Pupils join {what}."), N_("They join {what}."))
_CHOOSE = (N_("Pupils choose {what}."), N_("They choose {what}."))
_SHOW = (N_("Pupils show the whole dance."), N_("They show the whole dance."))


def _named(names: tuple[str, ...]) -> str:
    return listed([name_in_words(name) for name in names])
