"""The unit on one side of paper, for a staff-room wall or a planning folder."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import LessonEntry, lesson_entries
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.lesson.collecting import things_to_collect
from build_tools.views.words.licences import licence_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import sentence
from build_tools.views.words.sections_called import called
from build_tools.views.words.unit_in_words import lessons_in_words, rights_in_words, years_in_words
from build_tools.views.written.works import works

FILE = "sheet.html"


@dataclass(frozen=True, slots=True)
class SheetLesson:
    """One lesson on the sheet."""

    number: int
    """Which lesson of the unit, from 1."""
    title: str
    """What the lesson is called."""
    adds: str
    """What it adds to the dance, in one line."""


@dataclass(frozen=True, slots=True)
class SheetView:
    """The unit on one side."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way to the unit."""
    title: str
    """As the unit names itself."""
    summary: str
    """What the dance will be."""
    facts: tuple[Labelled, ...]
    """Years and ages, lessons, links with subjects."""
    dance: Picture
    """The dance on one line."""
    dance_length: str
    """How long the dance is and how its sections follow one another, in words."""
    ideas: tuple[Labelled, ...]
    """The sections by letter, each with what it is about."""
    lessons: tuple[SheetLesson, ...]
    """What each lesson adds."""
    end_points: tuple[str, ...]
    """What every pupil shows by the end."""
    collect: tuple[str, ...]
    """What to collect for the whole unit."""
    rights: tuple[str, ...]
    """Who issued it and made what, and the licence."""


def sheet_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/sheet.html."""
    path = f"units/{unit.slug}/{FILE}"
    title = _("{unit} on one side", unit=unit.title)
    around = frame(bank, path, title, unit.summary, "print.js")
    sections = unit.dance.sections
    view = SheetView(
        frame=around,
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        title=unit.title,
        summary=sentence(unit.summary),
        facts=(
            Labelled(_("For"), years_in_words(unit)),
            Labelled(_("Takes"), lessons_in_words(unit)),
            Labelled(_("Links with"), listed(unit.subjects)),
        ),
        dance=picture(small_line(unit.dance, "sheet")),
        dance_length=whole_dance_in_words(unit.dance),
        ideas=tuple(
            Labelled(called(sections[letter]), sections[letter].idea)
            for letter in dict.fromkeys(unit.dance.form)
        ),
        lessons=tuple(_lesson(entry) for entry in lesson_entries(unit)),
        end_points=tuple(sentence(end.every_pupil) for end in unit.end_points.values()),
        collect=tuple(thing.what for thing in things_to_collect(unit)),
        rights=(*_made_by(unit), *rights_in_words(unit)),
    )
    return Page(path, "unit_sheet/unit_sheet.html", view.frame.title, view)


def _lesson(entry: LessonEntry) -> SheetLesson:
    adds = " ".join(entry.adds) if entry.adds else entry.pupils_make
    return SheetLesson(entry.number, entry.title, sentence(adds))


def _made_by(unit: Unit) -> tuple[str, ...]:
    """The things of the stimulus, those of one maker and licence together."""
    made: dict[tuple[str, str], list[str]] = {}
    for item in works(unit):
        made.setdefault((item.by, item.licence), []).append(item.title)
    return tuple(
        _(
            "{things}: by {maker}, {licence}.",
            things="; ".join(titles),
            maker=by,
            licence=licence_in_words(licence),
        )
        for (by, licence), titles in made.items()
    )
