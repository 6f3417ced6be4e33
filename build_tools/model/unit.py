"""One unit: what is true of all its lessons."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson
from build_tools.model.work import Work


@dataclass(frozen=True, slots=True)
class Ancestor:
    """A unit further back in the line that this one was made from."""

    title: str
    publisher: str
    edition: str
    licence: str
    credit: str | None = None


@dataclass(frozen=True, slots=True)
class Parent(Ancestor):
    """The unit that this one was adapted from, what was changed, and what it came from itself."""

    changes: str | None = None
    earlier: tuple[Ancestor, ...] = ()
    """The nearest first."""


@dataclass(frozen=True, slots=True)
class SchoolYears:
    """School years of one nation, as written there: 3, R, P4."""

    nation: str
    years: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Stimulus:
    """What the dance starts from. `minutes` is how long it is shown."""

    kinds: tuple[str, ...]
    what: str
    show: str
    where: str
    minutes: int
    look_for: str
    content_note: str | None
    items: tuple[Work, ...]


@dataclass(frozen=True, slots=True)
class EndPoint:
    """Something every pupil shows by the end."""

    name: str
    every_pupil: str
    looks_like: str
    getting_there: str
    going_further: str


@dataclass(frozen=True, slots=True)
class Skill:
    """Something needed first, with two minutes that bring it in."""

    skill: str
    catch_up: str


@dataclass(frozen=True, slots=True)
class CurriculumLink:
    """Where the unit meets a published curriculum."""

    nation: str
    stage: str
    says: str
    met_by: str


@dataclass(frozen=True, slots=True)
class Neighbours:
    """Units before or after, by their folders' names, and the same in words."""

    in_words: str
    units: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Kit:
    """What to wear and collect, and how to do without."""

    wear: str
    collect: tuple[str, ...]
    without_props: str


@dataclass(frozen=True, slots=True)
class DrawnFor:
    """For whom plans are drawn: so many pupils on a floor in metres, `width` along the front."""

    pupils: int
    width: int
    depth: int


@dataclass(frozen=True, slots=True)
class Space:
    """The room needed, and the same in less."""

    hall: str
    half_hall: str
    classroom: str
    drawn_for: DrawnFor | None = None
    """None for the usual class in the usual hall."""
    who_sits_does: str | None = None
    """What those do who sit while others dance, as a sentence."""
    who_sits_where: str | None = None
    """Where they sit, as the end of a sentence."""


@dataclass(frozen=True, slots=True)
class Tried:
    """Honestly, whether it has been taught."""

    taught: bool
    with_whom: str | None
    where: str | None
    changed: str | None


@dataclass(frozen=True, slots=True)
class Reading:
    """Who read an edition of the unit, by what they are, for what no rule can judge, and when."""

    role: str
    edition: str
    day: str
    read_for: tuple[str, ...]
    found: str | None


@dataclass(frozen=True, slots=True, eq=False)
class Unit:
    """One unit. `slug` is its folder's name; `file` is the document it was written in.

    A unit equals only itself, so that what is worked out of it once can be kept by it.
    """

    slug: str
    file: str
    format: int
    """The version of the way of writing units that it is written in."""
    title: str
    edition: str
    issued: str
    publisher: str
    licence: str
    language: str
    credit: str | None
    adapted_from: Parent | None
    read_by: tuple[Reading, ...]
    draft: bool
    years: tuple[SchoolYears, ...]
    topics: tuple[str, ...]
    subjects: tuple[str, ...]
    summary: str
    stimulus: Stimulus
    end_points: Mapping[str, EndPoint]
    skills: tuple[Skill, ...]
    dance: Dance
    curriculum: tuple[CurriculumLink, ...]
    builds_on: Neighbours
    leads_to: Neighbours
    words: Mapping[str, str]
    kit: Kit
    space: Space
    allow: Mapping[str, str]
    tried: Tried
    lessons: tuple[Lesson, ...]
    """In the order of their numbers; numbers may still repeat or be missing."""
    media: Mapping[str, int]
    """Media files there are, with their sizes in bytes."""
    notes: str
    safety: tuple[str, ...] = ()
    """What to check and say in every lesson; each lesson has these lines after its own."""
