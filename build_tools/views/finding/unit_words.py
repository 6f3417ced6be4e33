"""The words that a unit may be found by, each with how it comes to be there."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from enum import IntEnum

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.views.finding.words_typed import words_typed
from build_tools.views.words.plain_words import name_in_words

_IN_EVERY_UNIT = "wheelchair wheelchairs wheels seated sitting inclusion"
"""Every step of every unit says how it goes sitting and on wheels, so these leave none out."""


class Strength(IntEnum):
    """How a word belongs to a unit; the first that holds counts."""

    ABOUT = 0
    """It is what the unit is about: its title, topics, subjects, what the dance will be."""
    IN_IT = 1
    """It is in what is shown, made or taught; or in a longer phrase for a topic: who types farm
    means farms before the farm animals of a unit about animals."""
    NEAR = 2
    """The bank's thesaurus says that it is near one of its topics."""
    SAID = 3
    """It is only said in passing, in a step or in what a picture shows."""


def unit_words(bank: Bank, unit: Unit) -> Mapping[str, Strength]:
    """Every word that leads to the unit. Words of the room that only steps say lead nowhere."""
    found: dict[str, Strength] = {}
    passed_over = _all(bank.thesaurus.passed_over)
    of_the_hall = _all(bank.thesaurus.of_the_hall)
    phrases = tuple(_phrases(bank, unit))
    for strength, texts, left_out in (
        (Strength.ABOUT, _about(unit), passed_over),
        (
            Strength.ABOUT,
            (one for one in phrases if len(_all([one]) - passed_over) == 1),
            passed_over,
        ),
        (Strength.IN_IT, phrases, passed_over),
        (Strength.IN_IT, _in_it(unit), passed_over | of_the_hall),
        (Strength.NEAR, _near(bank, unit), passed_over),
        (Strength.SAID, _said(unit), passed_over | of_the_hall),
    ):
        for word in _all(texts):
            if word not in left_out:
                found.setdefault(word, strength)
    return found


def _all(texts: Iterable[str]) -> frozenset[str]:
    return frozenset(word for text in texts for word in words_typed(text))


def _about(unit: Unit) -> Iterator[str]:
    yield unit.title
    yield _IN_EVERY_UNIT
    yield unit.summary
    yield from unit.subjects
    yield from (name_in_words(topic) for topic in unit.topics)


def _phrases(bank: Bank, unit: Unit) -> Iterator[str]:
    """What else people type for its topics and subjects, of one word or more."""
    for topic in unit.topics:
        if topic in bank.topics:
            yield from bank.topics[topic].also
    topics, subjects = set(unit.topics), set(unit.subjects)
    for entry in bank.thesaurus.near:
        if topics & set(entry.topics) or subjects & set(entry.subjects):
            yield from entry.typed


def _near(bank: Bank, unit: Unit) -> Iterator[str]:
    topics = set(unit.topics)
    for entry in bank.thesaurus.near:
        if topics & set(entry.near):
            yield from entry.typed
            for topic in entry.topics:
                yield name_in_words(topic)
                if topic in bank.topics:
                    yield from bank.topics[topic].also


def _in_it(unit: Unit) -> Iterator[str]:
    dance = unit.dance
    yield unit.stimulus.what
    yield from (item.title for item in unit.stimulus.items)
    yield from (name_in_words(name) for name in dance.motifs)
    yield from (motif.idea for motif in dance.motifs.values())
    for motif in dance.motifs.values():
        for action in motif.actions:
            yield action.word or ""
    for section in dance.sections.values():
        yield section.name or ""
        yield section.idea
    yield from unit.words
    for lesson in unit.lessons:
        yield lesson.title
        yield lesson.pupils_make
        yield from lesson.words
    for passage in (p for section in dance.sections.values() for p in section.danced):
        yield passage.fit


def _said(unit: Unit) -> Iterator[str]:
    yield from (item.text_version or "" for item in unit.stimulus.items)
    for lesson in unit.lessons:
        for step in lesson.steps:
            yield step.say or ""
            yield step.task or ""
