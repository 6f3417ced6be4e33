"""Before and after a unit: what goes on from it, what leads up to it, what is about the same."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.page_words.speaking import speaking
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.unit_card import UnitCard, moved
from build_tools.views.finding.choices import MOVEMENT
from build_tools.views.finding.findable import Findable
from build_tools.views.finding.related import Near, Related
from build_tools.views.words.plain_words import listed
from build_tools.views.words.topics import topics_in_words

Cards = Mapping[str, UnitCard]
"""The card of every unit, by its folder's name."""


@dataclass(frozen=True, slots=True)
class NearView:
    """One unit that is near."""

    card: UnitCard
    """The unit as a card."""
    why: str
    """Why it is named, in a sentence or two."""


@dataclass(frozen=True, slots=True)
class NearGroup:
    """Units that are near in the same way."""

    anchor: str
    """Its place on the page."""
    heading: str
    """In which way."""
    said: str | None
    """What the unit's author says of it; None for what is only about the same."""
    units: tuple[NearView, ...]
    """The units, the nearest first."""
    none: str
    """What is said where there is none."""


@dataclass(frozen=True, slots=True)
class NextView:
    """The page on what comes before and after a unit."""

    frame: Frame
    """What stands around the content."""
    unit: Link
    """The way back to the unit."""
    groups: tuple[NearGroup, ...]
    """What goes on from it, what leads up to it, what is about the same."""


def next_page(bank: Bank, unit: Findable, near: Related, cards: Cards) -> Page:
    """The page units/<slug>/next.html. It changes with other units, so it is none of the unit's."""
    with speaking(cards[unit.slug].language):
        return _next_page(bank, unit, near, cards)


def _next_page(bank: Bank, unit: Findable, near: Related, cards: Cards) -> Page:
    path = f"units/{unit.slug}/next.html"
    title = _("Before and after “{unit}”", unit=unit.title)
    view = NextView(
        frame=frame(bank, path, title, _("What goes on from it, and what leads up to it.")),
        unit=Link(unit.title, "index.html"),
        groups=(
            NearGroup(
                "at-after",
                _("Go on with"),
                unit.leads_to.in_words,
                tuple(_after(cards, one) for one in near.goes_on),
                _("No unit of the bank goes on from it yet."),
            ),
            NearGroup(
                "at-before",
                _("Good to have done before"),
                unit.builds_on.in_words,
                tuple(_before(cards, one) for one in near.comes_before),
                _("No unit of the bank leads up to it yet."),
            ),
            NearGroup(
                "at-alike",
                _("About the same, for the same ages"),
                None,
                tuple(_alike(bank, cards, one) for one in near.alike),
                _("No other unit for these ages is about the same."),
            ),
        ),
    )
    return Page(path, "what_next/what_next.html", view.frame.title, view)


def _after(cards: Cards, near: Near) -> NearView:
    again = _("It uses again: {what}.", what=_taught(near.again)) if near.again else ""
    new = _("New: {what}.", what=_taught(near.new)) if near.new else ""
    return NearView(moved(cards[near.unit.slug], "../../"), f"{again} {new}".strip())


def _before(cards: Cards, near: Near) -> NearView:
    why = _("It teaches first: {what}.", what=_taught(near.again)) if near.again else ""
    return NearView(moved(cards[near.unit.slug], "../../"), why)


def _alike(bank: Bank, cards: Cards, near: Near) -> NearView:
    return NearView(moved(cards[near.unit.slug], "../../"), f"{topics_in_words(bank, near.again)}.")


def _taught(words: tuple[str, ...]) -> str:
    said = [_(MOVEMENT[word]) for word in words]
    return listed([f"{one[:1].lower()}{one[1:]}" for one in said])
