"""What the advisers' page holds, part by part, every field explained."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.pages.frame.frame import Frame, Link


@dataclass(frozen=True, slots=True)
class ProblemView:
    """One problem."""

    grade: str
    """Its grade in this bank."""
    place: str
    """The file and the line."""
    message: str
    """What is found, with its numbers."""
    help: str
    """How to mend it."""
    rule: Link
    """The rule, with the way to its words."""


@dataclass(frozen=True, slots=True)
class AllowanceView:
    """One problem that the unit allows."""

    rule: Link
    """The rule, with the way to its words."""
    place: str
    """The file and the line."""
    message: str
    """What is found and allowed."""
    reason: str
    """Why the unit allows it, in its author's words."""


@dataclass(frozen=True, slots=True)
class PartLicence:
    """The licence of one part of a unit."""

    title: str
    """What the part is."""
    licence: str
    """By its SPDX id."""


@dataclass(frozen=True, slots=True)
class ChangesUnder:
    """Changes of one weight."""

    heading: str
    """What they touch."""
    changes: tuple[str, ...]
    """Each change, as a sentence."""


@dataclass(frozen=True, slots=True)
class LastEdition:
    """What changed since the edition before."""

    since: str
    """Which edition that is, and where it is kept; or that none is."""
    verdict: str
    """Whether the unit's number is the one that the changes call for; empty where none is kept."""
    parts: tuple[ChangesUnder, ...]
    """The changes, the weightiest first."""
    unreadable: tuple[str, ...]
    """What is kept under the unit's name and cannot be read, each with the reason."""


@dataclass(frozen=True, slots=True)
class UnitReview:
    """One unit as an adviser looks at it."""

    title: str
    """As the unit names itself."""
    anchor: str
    """Its name in links on this page."""
    href: str | None
    """Where its page is; none for a draft."""
    edition: str
    """Its edition, and the day it was issued."""
    age: str
    """How long ago that was, on the bank's own day."""
    licence: str
    """By its SPDX id."""
    parts: tuple[PartLicence, ...]
    """The licences of its parts."""
    problems: tuple[ProblemView, ...]
    """What the rules found, errors before questions before notes."""
    allowances: tuple[AllowanceView, ...]
    """What it allows, each with a reason."""
    last: LastEdition
    """What changed since the edition before."""
    readings: tuple[str, ...]
    """Who read it for what no rule can judge, at which edition; or that nobody did."""
    sign: Link | None
    """The list that it is read by; none for a draft."""
    unread: str
    """What nobody has read this edition for; empty where all of it was."""


@dataclass(frozen=True, slots=True)
class StandardView:
    """One published text that units say they meet."""

    where: str
    """The nation and the stage."""
    says: str
    """Its words or its code."""
    age: str
    """The year it names, and how long ago that was."""
    units: tuple[Link, ...]
    """The units that say they meet it, on this page."""


@dataclass(frozen=True, slots=True)
class ReviewView:
    """The advisers' page."""

    frame: Frame
    """What stands around the content."""
    style: str
    """The page's own style sheet."""
    as_of: str
    """The day to which ages are counted."""
    bank_problems: tuple[ProblemView, ...]
    """What was found in the bank's own files."""
    unread: tuple[ProblemView, ...]
    """What was found in drafts that cannot be read as they stand, so that nothing else is known."""
    units: tuple[UnitReview, ...]
    """Every unit, drafts among them."""
    standards: tuple[StandardView, ...]
    """The published texts that units say they meet."""
    judged: tuple[str, ...]
    """What only a person can judge."""
