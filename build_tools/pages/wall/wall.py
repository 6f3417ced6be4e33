"""The lessons of a unit on the wall, for pupils; the address says which of them is up."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.for_scripts import ForScripts, for_scripts
from build_tools.pages.pieces.lesson_entries import WALL, card_href, lesson_href, lesson_named
from build_tools.pages.pieces.lesson_pictures import lesson_pictures
from build_tools.pages.pieces.music import Music, music
from build_tools.pages.pieces.standing import standing_plans
from build_tools.pages.wall.wall_step import WallStep, wall_step
from build_tools.views.diagrams.body_sprite import BodyDrawn, sprite
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.words.the_room import the_room

_PICTURES = (".svg", ".png", ".jpg", ".webp")


@dataclass(frozen=True, slots=True)
class WallPicture:
    """A picture, as large as the wall."""

    src: str
    """Its file, relative to the page."""
    words: str
    """What it shows."""
    title: str
    """What it is called."""


@dataclass(frozen=True, slots=True)
class WallLesson:
    """One lesson on the wall."""

    for_scripts: ForScripts
    """What the wall tells its scripts."""
    place: str
    """Where it stands on the page, as its address says it."""
    named: str
    """The lesson by its number and its title."""
    lesson: Link
    """The way to the page that is read in the morning."""
    card: Link
    """The way to the card for the hand."""
    title: str
    """What the lesson is called, without its number."""
    opening: tuple[WallPicture, ...]
    """What is shown before the first step: what the dance starts from where this lesson is the
    first of the unit, and the lesson's own pictures."""
    picture: WallPicture | None
    """What is seen beside a step that has no drawing: the lesson's first picture, else what the
    dance starts from; None where that is no picture."""
    steps: tuple[WallStep, ...]
    """In the order of the lesson, one on the wall at a time."""


@dataclass(frozen=True, slots=True)
class WallView:
    """Every lesson of a unit on the wall; the address says which of them is shown."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: str
    """What the unit is called."""
    music: Music | None
    """The recording that travels with the unit."""
    room: str
    """Which side is the front, and what the dance calls the others."""
    lessons: tuple[WallLesson, ...]
    """In the order of the unit."""
    bodies: Markup
    """The bodies that drawings point to, drawn once."""


def wall_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/wall.html."""
    path = f"units/{unit.slug}/{WALL}"
    title = _("On the wall: {title}", title=unit.title)
    bodies: list[BodyDrawn] = []
    lessons = tuple(_lesson(unit, lesson, bodies) for lesson in unit.lessons)
    view = WallView(
        frame=frame(bank, path, title, unit.summary, "wall.js"),
        language=unit.language,
        unit=unit.title,
        music=music(unit),
        room=the_room(unit.dance),
        lessons=lessons,
        bodies=Markup(sprite(bodies)),
    )
    return Page(path, "wall/wall.html", view.frame.title, view)


def _lesson(unit: Unit, lesson: Lesson, bodies: list[BodyDrawn]) -> WallLesson:
    """The lesson; `bodies` takes those that its drawings point to."""
    own = tuple(WallPicture(o.src, o.shows, o.title) for o in lesson_pictures(lesson))
    first = _pictures(unit)[:1]
    plans = standing_plans(unit, lesson)
    return WallLesson(
        for_scripts=for_scripts(unit, lesson),
        place=f"lesson-{lesson.number}",
        named=lesson_named(lesson),
        lesson=Link(_("Lesson {number}", number=lesson.number), lesson_href(lesson.number)),
        card=Link(_("Card"), card_href(lesson.number)),
        title=lesson.title,
        opening=(*(first if lesson.number == 1 else ()), *own),
        picture=next(iter((*own, *first)), None),
        steps=tuple(
            wall_step(unit.dance, *each, bodies)
            for each in zip(step_facts(unit, lesson), lesson.steps, plans, strict=True)
        ),
    )


def _pictures(unit: Unit) -> tuple[WallPicture, ...]:
    """The pictures of the stimulus."""
    return tuple(
        WallPicture(item.file, item.text_version or item.title, item.title)
        for item in unit.stimulus.items
        if item.file is not None and item.file.endswith(_PICTURES)
    )
