"""The unit page: the whole unit, its dance drawn, what each lesson adds, what to collect."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.unit import Neighbours, StimulusItem, Unit
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import LessonEntry, lesson_entries, lesson_href
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.unit.unit_dance import (
    ChoiceView,
    JourneyView,
    MotifView,
    SectionView,
    choice_views,
    journey_views,
    motif_views,
    section_views,
    sound_in_words,
)
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.diagrams.score import dance_score
from build_tools.views.lesson.collecting import things_to_collect
from build_tools.views.words.plain_words import listed, minutes_in_words, name_in_words
from build_tools.views.words.punctuation import capital, kept_together
from build_tools.views.words.topics import topics_in_words
from build_tools.views.words.unit_in_words import (
    item_credit,
    lessons_in_words,
    rights_in_words,
    tried_in_words,
    years_in_words,
)


@dataclass(frozen=True, slots=True)
class ItemView:
    """One picture, sound, poem or object of the stimulus."""

    title: str
    """What the thing is called by whoever made it."""
    src: str | None
    """The file of a picture or recording, relative to the page; None where there is none."""
    recorded: bool
    """Whether the file is a recording."""
    text_version: str | None
    """What it shows or says, in words."""
    credit: str
    """Who made it, where it comes from, and its licence."""


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
    """Years and ages, lessons, topics, subjects, space."""
    first_lesson: Link
    """The way to the first lesson."""
    booklet: Link
    """The unit as a booklet, to print."""
    sheet: Link
    """The unit on one side, to print."""
    stimulus: tuple[Labelled, ...]
    """What to show, where, how long, what to look for."""
    content_note: str | None
    """Anything in it that could upset some pupils."""
    items: tuple[ItemView, ...]
    """The pictures and other things of the stimulus, with credits."""
    end_points: tuple[EndPointView, ...]
    """What every pupil shows by the end."""
    dance_length: str
    """How long the dance is and how its sections follow one another, in words."""
    score: Picture
    """The dance over its counts."""
    front: str
    """Where the front is."""
    sound: str
    """The sound of the dance and who follows whom."""
    ending: tuple[Labelled, ...]
    """What each pupil does at the very end."""
    lessons: tuple[LessonEntry, ...]
    """The lessons, with what each adds."""
    journeys: tuple[JourneyView, ...]
    """Where each motif is made, changed, danced and shown."""
    collect: tuple[Labelled, ...]
    """What to collect; the words say which lessons use it."""
    wear: str
    """Clothes and feet, in the author’s words."""
    without_props: str
    """How to do without."""
    skills: tuple[Labelled, ...]
    """What pupils need first, each with two minutes that bring it in."""
    sections: tuple[SectionView, ...]
    """The sections, one by one."""
    motifs: tuple[MotifView, ...]
    """The motifs, each with its strip and what is made from it."""
    choices: tuple[ChoiceView, ...]
    """What pupils decide."""
    spaces: tuple[Labelled, ...]
    """The hall, half a hall, and a classroom."""
    words: tuple[Labelled, ...]
    """The words pupils meet."""
    curriculum: tuple[CurriculumView, ...]
    """Where the unit meets a published curriculum."""
    builds_on: NeighboursView
    """What pupils did before."""
    leads_to: NeighboursView
    """What this leads on to."""
    notes: Markup
    """The adviser's notes."""
    tried: str
    """Honestly, whether it has been taught."""
    rights: tuple[str, ...]
    """Who issued it, which edition, from what it was adapted, its licence."""


def unit_page(bank: Bank, unit: Unit, published: Collection[str] = ()) -> Page:
    """The page units/<slug>/index.html, with ways to its neighbours among those `published`."""
    path = f"units/{unit.slug}/index.html"
    s = unit.stimulus
    first = unit.lessons[0]
    view = UnitView(
        frame=frame(bank, path, unit.title, unit.summary),
        language=unit.language,
        title=unit.title,
        summary=unit.summary,
        facts=(
            Labelled("For", years_in_words(unit)),
            Labelled("Takes", lessons_in_words(unit)),
            Labelled("Topics", topics_in_words(bank, unit.topics)),
            Labelled("Links with", listed(unit.subjects)),
            Labelled("Space", unit.space.hall),
        ),
        first_lesson=Link(
            f"Start with lesson {first.number}: {first.title}", lesson_href(first.number)
        ),
        booklet=Link("The unit as a booklet", "booklet.html"),
        sheet=Link("The unit on one side", "sheet.html"),
        stimulus=(
            Labelled("What it is", s.what),
            Labelled("Show", s.show),
            Labelled("Where", s.where),
            Labelled("How long", kept_together(minutes_in_words(s.minutes))),
            Labelled("Pupils look for", s.look_for),
        ),
        content_note=s.content_note,
        items=tuple(_item(item) for item in s.items),
        end_points=tuple(
            EndPointView(e.every_pupil, e.looks_like, e.getting_there, e.going_further)
            for e in unit.end_points.values()
        ),
        dance_length=whole_dance_in_words(unit.dance),
        score=picture(dance_score(unit.dance, "score")),
        front=unit.dance.front,
        sound=sound_in_words(unit.dance.sound),
        ending=tuple(Labelled(capital(part.who), part.does) for part in unit.dance.ending),
        lessons=lesson_entries(unit),
        journeys=journey_views(unit),
        collect=tuple(
            Labelled(thing.what, _lessons(thing.lessons, len(unit.lessons)))
            for thing in things_to_collect(unit)
        ),
        wear=unit.kit.wear,
        without_props=unit.kit.without_props,
        skills=tuple(Labelled(skill.skill, skill.catch_up) for skill in unit.skills),
        sections=section_views(unit),
        motifs=motif_views(unit.dance),
        choices=choice_views(unit),
        spaces=(
            Labelled("In a hall", unit.space.hall),
            Labelled("In half a hall", unit.space.half_hall),
            Labelled("In a classroom", unit.space.classroom),
        ),
        words=tuple(Labelled(word, plain) for word, plain in unit.words.items()),
        curriculum=tuple(
            CurriculumView(f"{c.nation}, {c.stage}", c.says, c.met_by) for c in unit.curriculum
        ),
        builds_on=_neighbours(unit.builds_on, published),
        leads_to=_neighbours(unit.leads_to, published),
        notes=notes_html(unit.notes, 3),
        tried=tried_in_words(unit),
        rights=rights_in_words(unit),
    )
    return Page(path, "unit/unit.html", view.frame.title, view)


def _item(item: StimulusItem) -> ItemView:
    recorded = bool(item.file and item.file.endswith(".mp3"))
    return ItemView(item.title, item.file, recorded, item.text_version, item_credit(item))


def _lessons(numbers: tuple[int, ...], of: int) -> str:
    if not numbers:
        return ""
    if len(numbers) == of > 1:
        return "every lesson"
    word = "lesson" if len(numbers) == 1 else "lessons"
    return f"{word} {listed([str(n) for n in numbers])}"


def _neighbours(neighbours: Neighbours, published: Collection[str]) -> NeighboursView:
    links = (
        Link(capital(name_in_words(slug)), f"../{slug}/index.html")
        for slug in neighbours.units
        if slug in published
    )
    return NeighboursView(neighbours.in_words, tuple(links))
