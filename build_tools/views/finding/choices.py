"""What a search can be narrowed by: for each list of the finder, the values that a unit has."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.school_years import in_words
from build_tools.model.unit import SchoolYears, Unit
from build_tools.movement import forms
from build_tools.page_words.words import N_
from build_tools.views.dance.coverage import devices_done, met
from build_tools.views.finding.words_typed import words_typed
from build_tools.views.lesson.collecting import things_to_collect
from build_tools.views.words.plain_words import how_many
from build_tools.views.words.punctuation import capital


@dataclass(frozen=True, slots=True)
class Value:
    """One choice of a list, as the finder compares it and as a teacher reads it."""

    name: str
    words: str


@dataclass(frozen=True, slots=True)
class Choices:
    """One list of the finder: what it asks, and which values a unit has."""

    name: str
    asks: str
    of: Callable[[Bank, Unit], Iterable[Value]]


_GROUPS = {
    "alone": "Alone",
    "pairs": "In pairs",
    "threes": "In threes",
    "fours": "In fours",
    "fives": "In fives",
    "sixes": "In sixes",
    "half class": "Half the class",
    "whole class": "The whole class",
}
MOVEMENT = {
    "travel": N_("Travelling"),
    "turn": N_("Turning"),
    "jump": N_("Jumping"),
    "gesture": N_("Moving one part of the body"),
    "stillness": N_("Holding still"),
    "transfer": N_("Taking weight on other parts"),
    "unison": N_("All at the same time"),
    "canon": N_("One after another (canon)"),
    "question and answer": N_("Question and answer"),
    "mirror": N_("Mirroring"),
    "side by side": N_("Two things at once"),
    "retrograde": N_("Moves danced backwards"),
    "accumulation": N_("Building up move by move"),
    "change of speed": N_("Slower and faster"),
    "change of size": N_("Bigger and smaller"),
    "change of level": N_("Higher and lower"),
    "change of dynamics": N_("Strong, light, sudden, slow"),
}
_FORMS: tuple[tuple[Callable[[tuple[str, ...]], bool], Value], ...] = (
    (forms.is_binary, Value("binary", "Two parts (A B)")),
    (forms.is_ternary, Value("ternary", "There and back (A B A)")),
    (forms.is_rondo, Value("rondo", "A chorus that comes back (rondo)")),
    (forms.is_cumulative, Value("cumulative", "Building up part by part")),
    (forms.returns_to_start, Value("returns", "Ends as it began")),
)
_STORY = Value("story", "One part after another, like a story")
_OWN_ORDER = Value("own-order", "The class chooses the order")
FORM_WORDS = tuple(value.words for value in (*(one for _, one in _FORMS), _STORY, _OWN_ORDER))
"""Every shape of a dance, in words."""
_SCREEN = re.compile(
    r"\b(screen|projector|whiteboard|slides?|video|film|monitor|television)\b", re.I
)


def values_of_year(nation: str, year: str) -> Value:
    """A school year as the finder compares it: england-3."""
    name = f"{nation.lower().replace(' ', '-')}-{year.lower()}"
    return Value(name, in_words(SchoolYears(nation, (year,))))


def _years(_: Bank, unit: Unit) -> Iterator[Value]:
    for one in unit.years:
        for year in one.years:
            yield values_of_year(one.nation, year)


def _subjects(_: Bank, unit: Unit) -> Iterator[Value]:
    for subject in unit.subjects:
        yield Value("-".join(words_typed(subject)), subject)


def _lessons(_: Bank, unit: Unit) -> Iterator[Value]:
    number = len(unit.lessons)
    yield Value(f"{number:02}", how_many(number, "lesson"))


def _groups(_: Bank, unit: Unit) -> Iterator[Value]:
    found = met(unit)
    return (_value(name, words) for name, words in _GROUPS.items() if name in found)


def _movement(_: Bank, unit: Unit) -> Iterator[Value]:
    found = met(unit) | set(devices_done(unit))
    return (_value(name, words) for name, words in MOVEMENT.items() if name in found)


def _form(_: Bank, unit: Unit) -> Iterator[Value]:
    yield from form_values(unit)


def form_values(unit: Unit) -> Iterator[Value]:
    """The shapes that the unit's dance has."""
    form = tuple(unit.dance.form)
    if unit.dance.order_choice is not None:
        yield _OWN_ORDER
        return
    found = [value for holds, value in _FORMS if holds(form)]
    yield from found or [_STORY]


def _sound(_: Bank, unit: Unit) -> Iterator[Value]:
    kinds = {unit.dance.sound.kind, *(s.sound.kind for s in unit.dance.sections.values())}
    if "recorded" in kinds:
        yield Value("recorded", "With recorded music")
    else:
        yield Value("none", "No recorded music")
    for kind, words in (
        ("drum", "A drum"),
        ("voice", "Voices"),
        ("silence", "Some of it in silence"),
    ):
        if kind in kinds:
            yield Value(kind, words)


def _needs(bank: Bank, unit: Unit) -> Iterator[Value]:
    if not any(_SCREEN.search(text) for text in _said_in_hall(unit)):
        yield Value("no-screen", "No screen in the hall")
    if nothing_bought(bank, unit):
        yield Value("tomorrow", "Ready tomorrow, nothing to buy")


def nothing_bought(bank: Bank, unit: Unit) -> bool:
    """Whether each thing to collect is named with one that a school has, and nothing is played."""
    has = {word for thing in bank.thesaurus.in_schools for word in words_typed(thing)}
    if unit.dance.sound.kind == "recorded":
        return False
    return all(has & set(words_typed(thing.what)) for thing in things_to_collect(unit))


def _said_in_hall(unit: Unit) -> Iterator[str]:
    yield from (thing.what for thing in things_to_collect(unit))
    for lesson in unit.lessons:
        for step in lesson.steps:
            yield step.say or ""
            yield step.task or ""


def _value(name: str, words: str) -> Value:
    return Value(name.replace(" ", "-"), capital(words))


CHOICES = (
    Choices("year", "Year", _years),
    Choices("subject", "Subject", _subjects),
    Choices("lessons", "How many lessons", _lessons),
    Choices("groups", "How they work", _groups),
    Choices("movement", "What they learn to do", _movement),
    Choices("form", "Shape of the dance", _form),
    Choices("sound", "Sound", _sound),
    Choices("needs", "What you need", _needs),
)
"""The finder's lists, in their order on the page."""
