"""The unit page: its picture, the dance with names, lesson by lesson, and doors to the rest."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.page_words.words import _, pgettext
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import Door, doors, to_counts
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.pieces.stimulus import ways_to_show
from build_tools.pages.pieces.unit_card import first_picture
from build_tools.views.dance.additions import lesson_adds
from build_tools.views.dance.dance_in_words import dance_told
from build_tools.views.dance.growth import Growth, growth
from build_tools.views.diagrams.named_strip import Grown, StripLook, named_strip
from build_tools.views.words.plain_words import listed, told_apart
from build_tools.views.words.topics import topics_in_words
from build_tools.views.words.unit_in_words import lessons_in_words, tried_in_words, years_in_words

_WIDE = StripLook(width=960, height=64, size=19)
_NARROW = StripLook(width=350, height=52, size=15)
_ROW = StripLook(width=340, height=32, size=16)


@dataclass(frozen=True, slots=True)
class HeroView:
    """The unit's own picture."""

    src: str
    """The picture's file, relative to the page."""
    shows: str
    """What it shows, in words."""


@dataclass(frozen=True, slots=True)
class LessonRow:
    """One lesson of the unit."""

    number: int
    """Which lesson, from 1."""
    title: str
    """What it is called."""
    href: str
    """Where its page is."""
    pupils_make: str
    """What pupils will have made."""
    choose: str | None
    """What pupils decide in it, as a sentence; None where nothing is left to them."""
    so_far: Picture
    """The dance at its end."""


@dataclass(frozen=True, slots=True)
class UnitView:
    """The unit page."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    title: str
    """As the unit names itself."""
    summary: str
    """What the dance will be."""
    facts: tuple[Labelled, ...]
    """Years and ages, lessons, subjects and topics."""
    hero: HeroView | None
    """Its picture; None where it has none."""
    first_lesson: Link
    """The way to the first lesson."""
    shown: tuple[Link, ...]
    """The ways to what the dance starts from, full screen."""
    booklet: Link
    """All of the unit, to print."""
    told: str
    """How long the dance is, and how it goes, in whole sentences."""
    wide: Picture
    """The dance part by part with names, for wide screens and paper."""
    narrow: Picture
    """The same for a phone."""
    ways: tuple[Link, ...]
    """To watch it and to hear it."""
    lessons: tuple[LessonRow, ...]
    """The lessons, the dance growing."""
    doors: tuple[Door, ...]
    """The further pages."""
    more: tuple[Link, ...]
    """The unit on one side, and what comes after it."""
    tried: str
    """Honestly, whether it has been taught."""


def unit_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/index.html."""
    path = f"units/{unit.slug}/index.html"
    first = unit.lessons[0]
    hero = first_picture(unit)
    view = UnitView(
        frame=frame(bank, path, unit.title, unit.summary, "unit.js"),
        language=unit.language,
        title=unit.title,
        summary=unit.summary,
        facts=(
            Labelled(_("For"), years_in_words(unit)),
            Labelled(_("Takes"), lessons_in_words(unit)),
            Labelled(_("Subjects"), listed(unit.subjects)),
            Labelled(_("Topics"), topics_in_words(bank, unit.topics)),
            *(
                ()
                if unit.publisher == bank.name
                else (Labelled(pgettext("who issued it", "From"), unit.publisher),)
            ),
        ),
        hero=_hero(hero) if hero else None,
        first_lesson=Link(
            _("Lesson {number}: {title}", number=first.number, title=first.title),
            lesson_href(first.number),
        ),
        shown=ways_to_show(unit),
        booklet=Link(_("Print all of it"), "booklet.html"),
        told=dance_told(unit.dance),
        wide=picture(named_strip(unit.dance, _WIDE)),
        narrow=picture(named_strip(unit.dance, _NARROW)),
        ways=(
            Link(_("Watch the dance from above"), "dance.html"),
            to_counts(unit.dance),
        ),
        lessons=tuple(
            _row(unit, lesson, grown)
            for lesson, grown in zip(unit.lessons, growth(unit), strict=True)
        ),
        doors=doors(unit),
        more=(
            Link(_("The unit on one page"), "sheet.html"),
            Link(_("What comes before and after it"), "next.html"),
        ),
        tried=tried_in_words(unit),
    )
    return Page(path, "unit/unit.html", view.frame.title, view)


def _hero(item: Work) -> HeroView:
    return HeroView(item.file or "", " ".join((item.text_version or item.title).split()))


def _row(unit: Unit, lesson: Lesson, so_far: Growth) -> LessonRow:
    grown = Grown(so_far.before, so_far.today, so_far.joined)
    settled = lesson_adds(unit, lesson).settled
    chosen = [unit.dance.choices[name].what for name in settled if name in unit.dance.choices]
    choose = told_apart([f"{what[:1].lower()}{what[1:]}" for what in chosen])
    return LessonRow(
        number=lesson.number,
        title=lesson.title,
        href=lesson_href(lesson.number),
        pupils_make=lesson.pupils_make,
        choose=_("Pupils choose {what}.", what=choose) if choose else None,
        so_far=picture(named_strip(unit.dance, _ROW, grown)),
    )
