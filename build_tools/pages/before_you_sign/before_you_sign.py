"""Before you sign: what only a person can judge in a unit, a list to print and to read it by."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import SIGN, said, to_unit
from build_tools.views.words.days import day_in_words
from build_tools.views.words.punctuation import capital
from build_tools.views.words.signing import ASPECTS, Aspect, of_this_edition, readings_in_words


@dataclass(frozen=True, slots=True)
class AspectView:
    """One thing that the unit is read for."""

    title: str
    """What it is called."""
    question: str
    """What who signs has to answer."""
    how: str
    """How to find the answer."""
    read: tuple[str, ...]
    """Who has read the unit for it, and at which edition."""


@dataclass(frozen=True, slots=True)
class SignView:
    """The list for who signs."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What the page is called."""
    edition: str
    """Which edition this is, and the day of its issue."""
    aspects: tuple[AspectView, ...]
    """What the unit is read for, in order."""
    readings: tuple[str, ...]
    """Who read it for what and when; or that nobody did."""
    lines: str
    """What is written into the unit’s file to keep a reading, as an example."""
    names: str
    """The names to choose from there."""


def sign_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/sign.html."""
    path = f"units/{unit.slug}/{SIGN.href}"
    here = said(SIGN)
    heading = f"{here.words}: {unit.title}"
    around = frame(bank, path, heading, here.about, "print.js")
    view = SignView(
        frame=around,
        language=unit.language,
        unit=to_unit(unit),
        heading=heading,
        edition=_(
            "Edition {edition}, issued on {day}",
            edition=unit.edition,
            day=day_in_words(unit.issued),
        ),
        aspects=tuple(_aspect(unit, aspect) for aspect in ASPECTS),
        readings=readings_in_words(unit),
        lines=_lines(unit),
        names=", ".join(aspect.name for aspect in ASPECTS),
    )
    return Page(path, "before_you_sign/before_you_sign.html", view.frame.title, view)


def _aspect(unit: Unit, aspect: Aspect) -> AspectView:
    read = []
    for one in unit.read_by:
        if aspect.name in one.read_for:
            here = of_this_edition(unit, one)
            role = capital(one.role)
            read.append(
                _("{role}, at this edition", role=role)
                if here
                else _(
                    "{role}, at {edition}; this is {now}",
                    role=role,
                    edition=one.edition,
                    now=unit.edition,
                )
            )
    return AspectView(capital(_(aspect.title)), _(aspect.question), _(aspect.how), tuple(read))


def _lines(unit: Unit) -> str:
    role = _("dance adviser of a county service")
    found = _("The last part wants one more rehearsal.")
    return (
        "read_by:\n"
        f"  - role: {role}\n"
        f"    edition: {unit.edition}\n"
        f"    day: {unit.issued}\n"
        "    for: [truth, choices, watching]\n"
        f"    found: {found}\n"
    )
