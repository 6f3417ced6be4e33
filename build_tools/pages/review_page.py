"""The advisers' page: what the rules found, ages, licences, coverage; then what to judge."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.school_years import in_words
from build_tools.model.unit import SchoolYears, Unit
from build_tools.pages.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.shown import capital, day_in_words, licence_in_words, sentence
from build_tools.pipeline import Allowance, Report
from build_tools.problem import GRADES, Problem
from build_tools.rules.catalogue import all_rules
from build_tools.views.coverage import coverage, devices_done
from build_tools.views.plain_words import name_in_words
from build_tools.views.time_since import time_since, years_since

PATH = "review.html"
_NAME = re.compile(r"`([^`]*)`")
_JUDGED = (
    "Imagination: is there something here that nobody has danced before?",
    "Truth to the stimulus: would it be another dance if it started from something else?",
    "The worth of the pupils’ choices: does it matter to the dance which way they decide?",
)


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
    """Its licence."""


@dataclass(frozen=True, slots=True)
class UnitReview:
    """One unit as an adviser looks at it."""

    title: str
    """Its title."""
    anchor: str
    """Its name in links on this page."""
    href: str | None
    """Where its page is; none for a draft."""
    edition: str
    """Its edition, and the day it was issued."""
    age: str
    """How long ago that was, on the bank's own day."""
    licence: str
    """Its licence."""
    parts: tuple[PartLicence, ...]
    """The licences of its parts."""
    problems: tuple[ProblemView, ...]
    """What the rules found, errors before questions before notes."""
    allowances: tuple[AllowanceView, ...]
    """What it allows, each with a reason."""


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
class CoverageRow:
    """One word of dance."""

    word: str
    """The word."""
    units: tuple[str, ...]
    """For each school year, how many units meet it; a dash for none."""


@dataclass(frozen=True, slots=True)
class CoverageTable:
    """The words under one heading."""

    heading: str
    """The heading."""
    anchor: str
    """Its name in links."""
    years: tuple[str, ...]
    """The school years, a column each."""
    rows: tuple[CoverageRow, ...]
    """Its words, a row each."""


@dataclass(frozen=True, slots=True)
class RepeatView:
    """Something that more than one unit has."""

    what: str
    """What it is."""
    units: tuple[Link, ...]
    """The units, on this page."""


@dataclass(frozen=True, slots=True)
class LeadView:
    """How one unit follows from another."""

    first: Link
    """The earlier unit, on this page."""
    then: Link
    """The unit that it leads on to, on this page."""


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
    units: tuple[UnitReview, ...]
    """Every unit, drafts among them."""
    standards: tuple[StandardView, ...]
    """The published texts that units say they meet."""
    tables: tuple[CoverageTable, ...]
    """What each school year meets by doing, a table a heading."""
    repeats: tuple[RepeatView, ...]
    """Topics and devices that more than one unit has."""
    leads: tuple[LeadView, ...]
    """Which units lead on to which."""
    judged: tuple[str, ...]
    """What only a person can judge."""


def review_page(bank: Bank, report: Report) -> Page:
    """The page review.html over every unit of `bank` and what `report` says of them."""
    units = tuple(sorted(bank.units, key=lambda u: (u.title.lower(), u.slug)))
    published = [unit for unit in units if not unit.draft]
    around = frame(bank, PATH, "Review", "What an adviser looks at before the bank is shared.")
    view = ReviewView(
        frame=around,
        style=f"{around.to_root}assets/css/review.css",
        as_of=day_in_words(bank.as_of),
        bank_problems=_problems(p for p in report.problems if not p.file.startswith("units/")),
        units=tuple(_unit(bank, unit, report) for unit in units),
        standards=_standards(bank, units),
        tables=_tables(published),
        repeats=_repeats(published),
        leads=_leads(units),
        judged=_JUDGED,
    )
    return Page(PATH, "review.html", view.frame.title, view)


def _unit(bank: Bank, unit: Unit, report: Report) -> UnitReview:
    own = f"units/{unit.slug}/"
    return UnitReview(
        title=f"{unit.title} (draft)" if unit.draft else unit.title,
        anchor=_anchor(unit),
        href=None if unit.draft else f"{own}index.html",
        edition=f"{unit.edition}, issued on {day_in_words(unit.issued)}",
        age=time_since(unit.issued, bank.as_of),
        licence=licence_in_words(unit.licence),
        parts=tuple(
            PartLicence(item.title, licence_in_words(item.licence)) for item in unit.stimulus.items
        ),
        problems=_problems(p for p in report.problems if p.file.startswith(own)),
        allowances=tuple(
            _allowance(a) for a in report.allowances if a.problem.file.startswith(own)
        ),
    )


def _problems(problems: Iterable[Problem]) -> tuple[ProblemView, ...]:
    return tuple(
        ProblemView(
            grade=p.severity,
            place=_place(p),
            message=_said(p.message),
            help=_said(p.help),
            rule=_rule(p.rule),
        )
        for p in sorted(problems, key=lambda p: (GRADES.index(p.severity), p))
    )


def _allowance(allowance: Allowance) -> AllowanceView:
    problem = allowance.problem
    return AllowanceView(
        rule=_rule(problem.rule),
        place=_place(problem),
        message=_said(problem.message),
        reason=sentence(allowance.reason),
    )


def _said(text: str) -> str:
    """What a rule says, as a sentence; names in backticks stand in quotation marks."""
    return sentence(_NAME.sub(r"“\1”", text))


def _place(problem: Problem) -> str:
    return f"{problem.file.rpartition('/')[2]}, line {problem.line}"


def _rule(name: str) -> Link:
    """The way to a rule's words; what is found before any rule has no place there."""
    known = any(rule.name == name for rule in all_rules())
    return Link(name, f"rules.html#{name}" if known else "rules.html")


def _anchor(unit: Unit) -> str:
    return f"unit-{unit.slug}"


def _here(unit: Unit) -> Link:
    return Link(unit.title, f"#{_anchor(unit)}")


def _standards(bank: Bank, units: Sequence[Unit]) -> tuple[StandardView, ...]:
    met_by: dict[tuple[str, str], list[Unit]] = {}
    for unit in units:
        for link in unit.curriculum:
            found = met_by.setdefault((f"{link.nation}, {link.stage}", link.says), [])
            if unit not in found:
                found.append(unit)
    return tuple(
        StandardView(where, says, years_since(says, bank.as_of), tuple(_here(u) for u in found))
        for (where, says), found in sorted(met_by.items(), key=lambda pair: pair[0])
    )


def _tables(units: Sequence[Unit]) -> tuple[CoverageTable, ...]:
    found = coverage(units)
    years = tuple(capital(in_words(SchoolYears(n, (year,)))) for n, year in found.years)
    return tuple(
        CoverageTable(
            heading=capital(heading),
            anchor=f"met-{heading}",
            years=years,
            rows=tuple(
                CoverageRow(row.word, tuple(str(n) if n else "–" for n in row.units))
                for row in rows
            ),
        )
        for heading, rows in found.headings.items()
    )


def _repeats(units: Sequence[Unit]) -> tuple[RepeatView, ...]:
    by_what: dict[str, list[Unit]] = {}
    for unit in units:
        for topic in unit.topics:
            by_what.setdefault(f"Topic: {name_in_words(topic)}", []).append(unit)
        for device in devices_done(unit):
            by_what.setdefault(f"Device: {device}", []).append(unit)
    return tuple(
        RepeatView(what, tuple(_here(unit) for unit in found))
        for what, found in sorted(by_what.items())
        if len(found) > 1
    )


def _leads(units: Sequence[Unit]) -> tuple[LeadView, ...]:
    by_slug = {unit.slug: unit for unit in units}
    pairs = {(u.slug, later) for u in units for later in u.leads_to.units}
    pairs |= {(earlier, u.slug) for u in units for earlier in u.builds_on.units}
    return tuple(
        LeadView(_here(by_slug[first]), _here(by_slug[then]))
        for first, then in sorted(pairs)
        if first in by_slug and then in by_slug
    )
