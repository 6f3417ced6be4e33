"""Plan and assess: what every pupil shows by the end, words, curriculum, and whose unit it is."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Neighbours, Unit
from build_tools.page_words.words import _, of_schema
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import ASSESS, SIGN, Door, doors, said, to_unit
from build_tools.pages.pieces.labelled import Labelled
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.punctuation import capital
from build_tools.views.words.signing import readings_in_words
from build_tools.views.words.unit_in_words import rights_in_words, tried_in_words


@dataclass(frozen=True, slots=True)
class EndPointView:
    """Something every pupil shows by the end."""

    every_pupil: str
    """What every pupil does."""
    looks_like: str
    """What you see when it is there."""
    getting_there: str
    """What you see on the way."""
    going_further: str
    """What you see beyond it."""


@dataclass(frozen=True, slots=True)
class CurriculumView:
    """Where the unit meets a published curriculum."""

    where: str
    """The nation and the stage."""
    says: str
    """The words or code of the published text."""
    met_by: str
    """What in the unit meets it."""


@dataclass(frozen=True, slots=True)
class NeighboursView:
    """What comes before or after."""

    in_words: str
    """The same in words."""
    units: tuple[Link, ...]
    """Units of the bank."""


@dataclass(frozen=True, slots=True)
class AssessView:
    """The page Plan and assess."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What the page is called."""
    end_points: tuple[EndPointView, ...]
    """What every pupil shows by the end."""
    words: tuple[Labelled, ...]
    """The words pupils meet."""
    curriculum: tuple[CurriculumView, ...]
    """Where the unit meets a published curriculum."""
    builds_on: NeighboursView
    """What pupils did before."""
    leads_to: NeighboursView
    """What this leads on to."""
    tried: str
    """Honestly, whether it has been taught."""
    readings: tuple[str, ...]
    """Who read it for what no rule can judge, at which edition; or that nobody did."""
    sign: Link
    """The way to the list that it is read by."""
    rights: tuple[str, ...]
    """Who issued it, which edition, from what it was adapted, its licence."""
    doors: tuple[Door, ...]
    """The unit's other pages."""


def assess_page(bank: Bank, unit: Unit, published: Collection[str] = ()) -> Page:
    """The page units/<slug>/assess.html, with ways to its neighbours among those `published`."""
    path = f"units/{unit.slug}/{ASSESS.href}"
    here = said(ASSESS)
    view = AssessView(
        frame=frame(bank, path, f"{here.words}: {unit.title}", here.about),
        language=unit.language,
        unit=to_unit(unit),
        heading=here.words,
        end_points=tuple(
            EndPointView(e.every_pupil, e.looks_like, e.getting_there, e.going_further)
            for e in unit.end_points.values()
        ),
        words=tuple(Labelled(word, plain) for word, plain in unit.words.items()),
        curriculum=tuple(
            CurriculumView(f"{of_schema(c.nation)}, {c.stage}", c.says, c.met_by)
            for c in unit.curriculum
        ),
        builds_on=_neighbours(unit.builds_on, published),
        leads_to=_neighbours(unit.leads_to, published),
        tried=tried_in_words(unit),
        readings=readings_in_words(unit),
        sign=Link(_(SIGN.words), SIGN.href),
        rights=rights_in_words(unit),
        doors=doors(unit, ASSESS),
    )
    return Page(path, "assess/assess.html", view.frame.title, view)


def _neighbours(neighbours: Neighbours, published: Collection[str]) -> NeighboursView:
    links = (
        Link(capital(name_in_words(slug)), f"../{slug}/index.html")
        for slug in neighbours.units
        if slug in published
    )
    return NeighboursView(neighbours.in_words, tuple(links))
