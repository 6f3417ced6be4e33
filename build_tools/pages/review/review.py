"""The advisers' page: what the rules found, ages, licences; then what to judge."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import replace

from build_tools.checking.check_bank import Allowance, Report
from build_tools.checking.faulty_drafts import unit_of
from build_tools.comparing.comparison import SinceLast
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.frame.frame import Link, frame
from build_tools.pages.page import Page
from build_tools.pages.review.review_views import (
    AllowanceView,
    ChangesUnder,
    LastEdition,
    PartLicence,
    ProblemView,
    ReviewView,
    StandardView,
    UnitReview,
)
from build_tools.problem import GRADES, Problem
from build_tools.rules.catalogue import all_rules
from build_tools.views.words.days import day_in_words
from build_tools.views.words.licences import licence_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.signing import ASPECTS, not_read_for, readings_in_words
from build_tools.views.words.time_since import time_since, years_since
from build_tools.views.written.works import works

PATH = "review.html"
_NAME = re.compile(r"`([^`]*)`")
_NONE_KEPT = (
    "No other edition of it is kept in this bank. Before you change a unit, put a copy of its "
    "folder, or its pack, into content/earlier, named by unit and edition (our-unit-1.0.0)."
)


def review_page(bank: Bank, report: Report, earlier: Mapping[str, SinceLast]) -> Page:
    """The page review.html over every unit of `bank` and what `report` says of them.

    `earlier` holds, by the unit's slug, what changed since the edition before.
    """
    units = tuple(sorted(bank.units, key=lambda u: (u.title.lower(), u.slug)))
    around = frame(bank, PATH, "Review", "What an adviser looks at before the bank is shared.")
    view = ReviewView(
        frame=around,
        style=f"{around.to_root}assets/css/review.css",
        as_of=day_in_words(bank.as_of),
        bank_problems=_problems(p for p in report.problems if not p.file.startswith("units/")),
        unread=_unread(report, {unit.slug for unit in units}),
        units=tuple(_unit(bank, unit, report, earlier[unit.slug]) for unit in units),
        standards=_standards(bank, units),
        judged=tuple(f"{capital(one.title)}: {one.question}" for one in ASPECTS),
    )
    return Page(PATH, "review/review.html", view.frame.title, view)


def _unread(report: Report, read: Set[str]) -> tuple[ProblemView, ...]:
    """The problems of the units that are not among those `read`, each with its unit's folder."""
    apart = {unit_of(problem) for problem in report.problems} - read - {""}
    return tuple(
        replace(view, place=f"{slug}/{view.place}")
        for slug in sorted(apart)
        for view in _problems(p for p in report.problems if unit_of(p) == slug)
    )


def _unit(bank: Bank, unit: Unit, report: Report, since: SinceLast) -> UnitReview:
    own = f"units/{unit.slug}/"
    return UnitReview(
        title=f"{unit.title} (draft)" if unit.draft else unit.title,
        anchor=_anchor(unit),
        href=None if unit.draft else f"{own}index.html",
        edition=f"{unit.edition}, issued on {day_in_words(unit.issued)}",
        age=time_since(unit.issued, bank.as_of),
        licence=licence_in_words(unit.licence),
        parts=tuple(
            PartLicence(item.title, licence_in_words(item.licence)) for item in works(unit)
        ),
        problems=_problems(p for p in report.problems if p.file.startswith(own)),
        allowances=tuple(
            _allowance(a) for a in report.allowances if a.problem.file.startswith(own)
        ),
        last=_last(since),
        readings=readings_in_words(unit),
        sign=None if unit.draft else Link("the list", f"units/{unit.slug}/sign.html"),
        unread=_unread_for(unit),
    )


def _unread_for(unit: Unit) -> str:
    """What nobody has read this edition for, where somebody has read some of it."""
    return listed(not_read_for(unit)) if unit.read_by else ""


def _last(since: SinceLast) -> LastEdition:
    comparison = since.comparison
    if comparison is None:
        return LastEdition(_NONE_KEPT, "", (), since.unreadable)
    return LastEdition(
        since=f"Compared with edition {comparison.before}, kept in {since.place}.",
        verdict=sentence(comparison.verdict()),
        parts=tuple(
            ChangesUnder(heading, tuple(sentence(line) for line in lines))
            for heading, lines in comparison.under_headings()
        ),
        unreadable=since.unreadable,
    )


def _problems(problems: Iterable[Problem]) -> tuple[ProblemView, ...]:
    return tuple(
        ProblemView(
            grade=p.severity,
            place=_place(p),
            message=_as_sentence(p.message),
            help=_as_sentence(p.help),
            rule=_rule(p.rule),
        )
        for p in sorted(problems, key=lambda p: (GRADES.index(p.severity), p))
    )


def _allowance(allowance: Allowance) -> AllowanceView:
    problem = allowance.problem
    return AllowanceView(
        rule=_rule(problem.rule),
        place=_place(problem),
        message=_as_sentence(problem.message),
        reason=sentence(allowance.reason),
    )


def _as_sentence(text: str) -> str:
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
