"""The parts of the page on what the bank teaches, every field explained."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.pages.frame.frame import Link
from build_tools.pages.pieces.picture import Picture


@dataclass(frozen=True, slots=True)
class SomeUnits:
    """How many units, and the first few of them."""

    number: str
    """How many there are."""
    first: tuple[Link, ...]
    """The first few."""
    more: str
    """How many more there are, in words; empty where all are named."""


@dataclass(frozen=True, slots=True)
class CountRow:
    """One word, counted for each year."""

    word: str
    """What pupils meet."""
    units: tuple[str, ...]
    """For each school year, how many units meet it."""


@dataclass(frozen=True, slots=True)
class CountTable:
    """The words under one heading, as a table and as a picture."""

    heading: str
    """Actions, space, dynamics and so on."""
    anchor: str
    """Its name in links."""
    about: str
    """What is counted."""
    years: tuple[str, ...]
    """The school years as they are written, a column each."""
    rows: tuple[CountRow, ...]
    """Its words, a row each."""
    picture: Picture | None
    """The same as a picture; None for published texts, whose words are long."""


@dataclass(frozen=True, slots=True)
class MissingYear:
    """What one school year does not meet."""

    year: str
    """The school year, with how many units it has."""
    lines: tuple[str, ...]
    """Under each heading, the words that no unit of the year covers."""


@dataclass(frozen=True, slots=True)
class NationView:
    """What the school years of one nation meet."""

    heading: str
    """The nation."""
    anchor: str
    """Its name in links."""
    tables: tuple[CountTable, ...]
    """A table and a picture for each heading."""
    missing: tuple[MissingYear, ...]
    """What each year does not meet."""


@dataclass(frozen=True, slots=True)
class RepeatRow:
    """Something that several units have."""

    what: str
    """What comes back."""
    units: SomeUnits
    """The units that have it."""


@dataclass(frozen=True, slots=True)
class RepeatTable:
    """What comes back of one kind."""

    heading: str
    """Topics, devices or forms."""
    anchor: str
    """Its name in links."""
    rows: tuple[RepeatRow, ...]
    """What comes back, the most often first."""


@dataclass(frozen=True, slots=True)
class ChainView:
    """Units that follow one another."""

    units: tuple[Link, ...]
    """In the order in which they are taught."""
    more: str
    """How many more follow, in words; empty where all are named."""


@dataclass(frozen=True, slots=True)
class BandRow:
    """Editions of about one age."""

    age: str
    """Their age."""
    units: SomeUnits
    """The units, the oldest first."""


@dataclass(frozen=True, slots=True)
class LicenceRow:
    """One licence."""

    licence: str
    """Its name, with the address of its words."""
    units: SomeUnits
    """The units under it."""
    parts: str
    """How many pictures, poems and recordings in units are under it."""
