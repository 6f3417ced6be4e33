"""The unit as a booklet: a title side, the unit in short, and a place for each lesson in full."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import doors
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import LessonEntry, lesson_entries
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.pieces.unit_card import first_picture, picture_shows
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.lesson.collecting import things_to_collect
from build_tools.views.paper.paper_size import on_paper
from build_tools.views.words.topics import topics_in_words
from build_tools.views.words.unit_in_words import (
    lessons_in_words,
    rights_in_words,
    tried_in_words,
    years_in_words,
)


@dataclass(frozen=True, slots=True)
class BoundLesson:
    """One lesson in the booklet."""

    place: str
    """The name of its place in the booklet."""
    paper_size: str
    """The size that its words need on paper to stay on two sides, in points."""
    lesson: LessonEntry
    """The lesson in short; the article of its page is bound in at its place."""


@dataclass(frozen=True, slots=True)
class BoundPage:
    """A further page of the unit in the booklet."""

    place: str
    """The name of its place in the booklet."""
    title: str
    """What it is called."""
    href: str
    """The page whose article is bound in at its place."""


@dataclass(frozen=True, slots=True)
class BookletView:
    """The booklet."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    paper_foot: str
    """What stands at the foot of every printed side."""
    unit: Link
    """The way to the unit's page."""
    title: str
    """As the unit names itself; the heading of the title side."""
    summary: str
    """What the dance will be."""
    facts: tuple[Labelled, ...]
    """Years and ages, lessons, topics, space."""
    dance_length: str
    """How long the dance is and how its sections follow one another, in words."""
    line: Picture
    """The dance on one line, and section by section in words."""
    every_pupil: tuple[str, ...]
    """What every pupil shows by the end."""
    collect: tuple[str, ...]
    """What to collect for the whole unit."""
    wear: str
    """Clothes and feet, in the author’s words."""
    lessons: tuple[BoundLesson, ...]
    """The lessons in order."""
    further: tuple[BoundPage, ...]
    """What to get ready, the dance in full, every move, planning and assessing."""
    src: str | None
    """The unit's first picture; None where it has none."""
    shows: str
    """What the picture shows."""
    tried: str
    """Honestly, whether it has been taught."""
    rights: tuple[str, ...]
    """Who issued it, which edition, from what it was adapted, its licence."""


def booklet_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/booklet.html, before the other pages are bound in."""
    path = f"units/{unit.slug}/booklet.html"
    shown = first_picture(unit)
    view = BookletView(
        frame=frame(bank, path, _("{unit}, booklet", unit=unit.title), unit.summary, "booklet.js"),
        language=unit.language,
        paper_foot=_("{unit}, edition {edition}", unit=unit.title, edition=unit.edition),
        unit=Link(unit.title, "index.html"),
        title=unit.title,
        summary=unit.summary,
        facts=(
            Labelled(_("For"), years_in_words(unit)),
            Labelled(_("Takes"), lessons_in_words(unit)),
            Labelled(_("Topics"), topics_in_words(bank, unit.topics)),
            Labelled(_("Space"), unit.space.hall),
        ),
        dance_length=whole_dance_in_words(unit.dance),
        line=picture(small_line(unit.dance, "line")),
        every_pupil=tuple(end.every_pupil for end in unit.end_points.values()),
        collect=tuple(thing.what for thing in things_to_collect(unit)),
        wear=unit.kit.wear,
        lessons=tuple(
            BoundLesson(f"lesson-{lesson.number}", on_paper(unit, lesson).size, entry)
            for lesson, entry in zip(unit.lessons, lesson_entries(unit), strict=True)
        ),
        further=tuple(
            BoundPage(door.href.removesuffix(".html"), door.words, door.href)
            for door in doors(unit)
        ),
        src=shown.file if shown else None,
        shows=picture_shows(shown) if shown else "",
        tried=tried_in_words(unit),
        rights=rights_in_words(unit),
    )
    return Page(path, "booklet/booklet.html", view.frame.title, view)
