"""The about page: who keeps the bank, the day it is dated to, licences and notices."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.views.words.days import day_in_words
from build_tools.views.words.licences import licence_in_words
from build_tools.views.words.plain_words import how_many

PATH = "about.html"


@dataclass(frozen=True, slots=True)
class Notice:
    """One part that is bundled or that the software uses."""

    name: str
    """The part's name."""
    version: str
    """As the lock or the file itself says it, such as 9.5.49."""
    licence: str
    """By its SPDX id where it has one, such as MIT."""
    digest: str
    """Of the bundled file itself; of a package, the first that the lock names for it."""
    role: str
    """What it is there for."""


@dataclass(frozen=True, slots=True)
class UnitsRights:
    """The units of one publisher under one licence."""

    units: str
    """How many there are, in words."""
    publisher: str
    """Who issued them."""
    licence: str
    """In words, with the address where it is published."""


@dataclass(frozen=True, slots=True, order=True)
class UnitRights:
    """Whose one unit is."""

    publisher: str
    """Who issued it."""
    licence: str
    """By its SPDX id."""


@dataclass(frozen=True, slots=True)
class AboutView:
    """The about page."""

    frame: Frame
    """What stands around the content."""
    about: str
    """Who keeps the bank and what for."""
    as_of: str
    """The day to which ages and dates are counted."""
    units: tuple[UnitsRights, ...]
    """Whose the units are; each says its own rights on its page Plan and assess."""
    notices: tuple[Notice, ...]
    """Every part that is bundled or that the software uses."""


def unit_rights(unit: Unit) -> UnitRights:
    """The rights of `unit`: they can be kept without it."""
    return UnitRights(unit.publisher, unit.licence)


def about_page(bank: Bank, units: Iterable[UnitRights], notices: Sequence[Notice]) -> Page:
    """The page about.html."""
    view = AboutView(
        frame=frame(bank, PATH, "About the bank", bank.about),
        about=bank.about,
        as_of=day_in_words(bank.as_of),
        units=tuple(
            UnitsRights(how_many(many, "unit"), one.publisher, licence_in_words(one.licence))
            for one, many in sorted(Counter(units).items())
        ),
        notices=tuple(notices),
    )
    return Page(PATH, "about/about.html", view.frame.title, view)
