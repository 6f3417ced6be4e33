"""The whole bank: its units, its words, its topics."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.unit import Neighbours, SchoolYears, Unit
from build_tools.problem import Grade


@dataclass(frozen=True, slots=True)
class Word:
    """A word of dance in plain words."""

    word: str
    plain: str
    in_class: str | None
    under: str | None


@dataclass(frozen=True, slots=True)
class Topic:
    """A topic and the other words it may be looked up by."""

    name: str
    also: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NearWord:
    """What teachers may type, in any of its forms, with the topics and subjects that it means.

    `near` names topics that are offered where no unit is about it.
    """

    typed: tuple[str, ...]
    subjects: tuple[str, ...]
    topics: tuple[str, ...]
    near: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Thesaurus:
    """What teachers type that names no topic; empty in a bank without `vocabulary/near.yml`."""

    passed_over: tuple[str, ...] = ()
    """Little words that say nothing about a topic."""
    of_the_hall: tuple[str, ...] = ()
    """Words of the room and the body that every lesson says."""
    in_schools: tuple[str, ...] = ()
    """Things that a school has."""
    near: tuple[NearWord, ...] = ()


@dataclass(frozen=True, slots=True)
class Bank:
    """Everything the pages are made from. `as_of` is a day, year-month-day."""

    name: str
    as_of: str
    about: str
    grades: Mapping[str, Grade]
    topics: Mapping[str, Topic]
    words: Mapping[str, Word]
    safety_title: str
    safety_notes: str
    units: tuple[Unit, ...]
    thesaurus: Thesaurus = Thesaurus()


@dataclass(frozen=True, slots=True)
class UnitOutline:
    """As much of a unit as the rules for the whole bank look at."""

    slug: str
    file: str
    title: str
    issued: str
    """The day of its edition, year-month-day."""
    draft: bool
    years: tuple[SchoolYears, ...]
    topics: tuple[str, ...]
    builds_on: Neighbours
    leads_to: Neighbours
    allow: Mapping[str, str]
    """Rules the unit breaks on purpose, each with the reason."""
    starts_with: tuple[str, ...]
    """What is said and set in the first step of the first lesson, where a class learns to stop."""
    shared: tuple[str, ...] = ()
    """The pictures that units of the bank share which it shows, by their names."""
    pictured: int = 0
    """Bytes of its pictures where they are published."""
    recorded: int = 0
    """Bytes of its recordings."""


@dataclass(frozen=True, slots=True)
class BankOutline:
    """The bank as the rules for the whole bank see it: it stays small for a thousand units.

    `as_of` is the bank's own day; `folders` names the folders of all units, those whose files are
    not sound among them.
    """

    as_of: str
    topics: Mapping[str, Topic]
    units: tuple[UnitOutline, ...]
    folders: frozenset[str]
