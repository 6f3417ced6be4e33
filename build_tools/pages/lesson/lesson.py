"""The lesson page, in the order in which a teacher needs it on the morning."""

from __future__ import annotations

from dataclasses import dataclass, replace

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.lesson.lesson_covers import CoversView, covers
from build_tools.pages.lesson.lesson_fit import FitView, fit_view
from build_tools.pages.lesson.lesson_steps import StepView, step_views
from build_tools.pages.lesson.lesson_story import StoryView, story_of
from build_tools.pages.page import Page
from build_tools.pages.pieces.for_scripts import ForScripts, for_scripts
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import card_href, lesson_href, lesson_named, wall_href
from build_tools.pages.pieces.lesson_pictures import LessonPicture, lesson_pictures
from build_tools.pages.pieces.motif_drawn import MotifDrawn, motif_drawn
from build_tools.pages.pieces.music import Music, music
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.pieces.standing import standing_plans
from build_tools.pages.pieces.step_help import step_helps
from build_tools.pages.pieces.talk import TalkView, talk_view
from build_tools.pages.pieces.trouble import trouble_lines
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.diagrams.body_sprite import BodyDrawn, sprite
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.diagrams.standing_plan import standing_plan
from build_tools.views.lesson.checks_before import checks_before
from build_tools.views.lesson.drawn_first import drawn_first
from build_tools.views.lesson.lesson_in_short import LineInShort, lesson_in_short
from build_tools.views.lesson.lesson_wording import (
    DEFERENCE,
    changes_in_order,
    heading_of_change,
    step_in_short,
)
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.moves_met import TodaysMoves
from build_tools.views.lesson.notes_in_steps import danced_in
from build_tools.views.lesson.standing_in_steps import plans_of
from build_tools.views.lesson.to_print import where_to_get
from build_tools.views.paper.in_turns import aside_in_turns
from build_tools.views.paper.paper_size import on_paper
from build_tools.views.words.pace_said import HEAR_IT
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import kept_together, sentence
from build_tools.views.words.the_room import the_room
from build_tools.views.words.words_needed import words_needed


@dataclass(frozen=True, slots=True)
class ShortLine:
    """The lesson in seven lines: one of them."""

    time: str
    """From which minute to which."""
    numbers: str
    """The numbers of its steps, with spaces between."""
    steps: tuple[Link, ...]
    """What pupils do in each, with the way to it."""


@dataclass(frozen=True, slots=True)
class ThingToGet:
    """One thing to get ready."""

    words: str
    """The thing, in the author's words."""
    href: str | None
    """Where it can be printed or heard; None where it can be neither."""


@dataclass(frozen=True, slots=True)
class LessonView:
    """The lesson page."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The unit, with the way to its page."""
    for_scripts: ForScripts
    """What the page tells its scripts."""
    paper_foot: str
    """What stands at the foot of every printed side."""
    paper_size: str
    """The size of its words on paper: points, or more for more than two sides."""
    place: str
    """Which lesson of how many."""
    title: str
    """What the lesson is called, without its number."""
    pupils_make: str
    """What pupils will have made by the end."""
    focus: str
    """What pupils get better at, as a sentence."""
    picture: Picture
    """What is made today, drawn."""
    minutes: str
    """How long it lasts in the hall."""
    collect: tuple[ThingToGet, ...]
    """What to get ready, five things at most."""
    music: Music | None
    """The recording that travels with the unit."""
    pictures: tuple[LessonPicture, ...]
    """What this lesson shows besides what the dance starts from."""
    card: Link
    """The lesson as a card for the hand."""
    wall: Link
    """The lesson on the wall."""
    above: Link
    """The whole dance seen from above."""
    counts: Link
    """The counts for the hall."""
    handouts: Link
    """Strips, word cards and a sheet to look with, to print."""
    short_lines: tuple[ShortLine, ...]
    """The lesson in seven lines at most."""
    fit: FitView
    """The lesson fitted to today, with the help of scripts."""
    room: str
    """Which side is the front, and what the unit calls the others."""
    room_printed: bool
    """Whether paper says it too: where a side has a name that steps may use."""
    classroom_first: tuple[str, ...]
    """What to do before you leave the classroom."""
    safety: tuple[str, ...]
    """What to check and say before they move."""
    story: StoryView | None
    """Where pupils are coming from."""
    plans: tuple[Picture, ...]
    """The floor as paper has it before the steps; empty where paper has it on the side of notes."""
    steps: tuple[StepView, ...]
    """In order, each with everything a teacher says and looks for."""
    talk: TalkView | None
    """Looking and talking, and where the next lesson starts."""
    not_dancing: str
    """A part for a pupil who cannot dance today."""
    trouble: tuple[Labelled, ...]
    """One line for each thing that can go wrong."""
    short_of_time: str | None
    """What the author says to do when time is short, for scripts."""
    change: tuple[Labelled, ...]
    """Ways to change the lesson to fit the class."""
    words: tuple[Labelled, ...]
    """Words for today, each in plain words."""
    aside: frozenset[str]
    """What of it is printed on the further side, where the moves need the room."""
    aside_in_turns: frozenset[str]
    """What more of it is, where the lesson is fitted to teams or two sittings."""
    bodies: Markup
    """The bodies that pictures point to, drawn once."""
    deference: str
    """Whose word on safety comes first."""
    safety_page: Link
    """The way to the bank's safety page."""
    notes: Markup
    """The teacher's notes."""
    covers: CoversView
    """What the lesson covers, the curriculum, credits, and whether it was tried."""
    previous: Link | None
    """The lesson before."""
    next: Link | None
    """The lesson after."""


def lesson_page(bank: Bank, unit: Unit, lesson: Lesson) -> Page:
    """The page units/<slug>/lesson-<n>.html."""
    path = f"units/{unit.slug}/{lesson_href(lesson.number)}"
    title = lesson_named(lesson)
    index = unit.lessons.index(lesson)
    today = todays_moves(unit, lesson)
    drawn = _drawn(unit, lesson, today)
    paper = on_paper(unit, lesson)
    plans = standing_plans(unit, lesson)
    minutes = kept_together(minutes_in_words(lesson.minutes))
    view = LessonView(
        frame=frame(bank, path, f"{title}, {unit.title}", lesson.pupils_make, "lesson.js"),
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        for_scripts=for_scripts(unit, lesson),
        paper_foot=_(
            "{unit}, lesson {number}, edition {edition}",
            unit=unit.title,
            number=lesson.number,
            edition=unit.edition,
        ),
        paper_size=paper.size,
        place=_("Lesson {number} of {many}", number=lesson.number, many=len(unit.lessons)),
        title=lesson.title,
        pupils_make=lesson.pupils_make,
        focus=sentence(lesson.focus),
        picture=drawn.first,
        minutes=minutes,
        collect=tuple(ThingToGet(one, where_to_get(unit, lesson, one)) for one in lesson.collect),
        music=music(unit),
        pictures=lesson_pictures(lesson),
        card=Link(_("Teach it, step by step"), card_href(lesson.number)),
        wall=Link(_("On the wall"), wall_href(lesson.number)),
        above=Link(_("The dance from above"), "dance.html"),
        counts=Link(_(HEAR_IT) if unit.dance.tempo else _("Cues for the hall"), "counts.html"),
        handouts=Link(_("To print for the class"), f"to-print.html#lesson-{lesson.number}"),
        short_lines=tuple(_short_line(lesson, line) for line in lesson_in_short(lesson)),
        fit=fit_view(unit, lesson),
        room=the_room(unit.dance),
        room_printed=bool(unit.dance.sides),
        classroom_first=lesson.classroom_first,
        safety=checks_before(unit, lesson),
        story=story_of(unit, lesson),
        plans=_plans_on_paper(unit, lesson) if paper.plans else (),
        steps=step_views(unit, lesson, step_helps(unit, lesson, today), drawn.steps, paper, plans),
        talk=talk_view(unit, lesson, lesson.look_and_talk) if lesson.look_and_talk else None,
        not_dancing=lesson.not_dancing,
        trouble=trouble_lines(lesson),
        short_of_time=lesson.trouble.get("short_of_time"),
        change=tuple(
            Labelled(heading_of_change(key), words) for key, words in changes_in_order(lesson)
        ),
        words=tuple(Labelled(m.word, m.plain) for m in words_needed(unit, lesson, bank.words)),
        aside=paper.aside,
        aside_in_turns=aside_in_turns(unit, lesson),
        bodies=Markup(sprite(drawn.bodies)),
        deference=_(DEFERENCE),
        safety_page=Link(_("More on keeping everyone safe"), "../../safety.html"),
        notes=notes_html(today.notes, 3),
        covers=covers(unit, lesson),
        previous=_neighbour(unit, index - 1),
        next=_neighbour(unit, index + 1),
    )
    return Page(path, "lesson/lesson.html", view.frame.title, view)


def _plans_on_paper(unit: Unit, lesson: Lesson) -> tuple[Picture, ...]:
    return tuple(
        replace(picture(standing_plan(unit, one.letter)), title=one.title)
        for one in plans_of(unit, lesson)
    )


def _short_line(lesson: Lesson, line: LineInShort) -> ShortLine:
    return ShortLine(
        _("{start} to {end}", start=line.start, end=line.end),
        " ".join(str(number) for number in line.steps),
        tuple(Link(step_in_short(lesson, n), f"#at-step-{n}") for n in line.steps),
    )


def _again(shown: Picture) -> Picture:
    """A picture whose words stand on the page already."""
    return replace(shown, words=())


@dataclass(frozen=True, slots=True)
class _Drawn:
    """The lesson's pictures: the first, those of each step, and the bodies they point to."""

    first: Picture
    """What is made today."""
    steps: tuple[tuple[Picture, ...], ...]
    """What each step makes or changes."""
    bodies: tuple[BodyDrawn, ...]
    """What they point to."""


def _drawn(unit: Unit, lesson: Lesson, today: TodaysMoves) -> _Drawn:
    """What is made today: a motif, else the dance with today's sections; then step by step."""
    first = drawn_first(unit, lesson)
    found: dict[str, MotifDrawn] = {
        name: motif_drawn(unit.dance, name) for one in today.steps for name in one.drawn
    }
    steps = tuple(
        tuple(
            _again(found[name].picture) if name == first else found[name].picture
            for name in one.drawn
        )
        for one in today.steps
    )
    bodies = tuple(body for drawn in found.values() for body in drawn.bodies)
    if first is not None:
        return _Drawn(found[first].picture, steps, bodies)
    named = [name for step in lesson.steps for name in (*step.makes, *danced_in(step))]
    line = small_line(unit.dance, "today", letters_in(unit.dance, named))
    return _Drawn(picture(line), steps, bodies)


def _neighbour(unit: Unit, index: int) -> Link | None:
    if not 0 <= index < len(unit.lessons):
        return None
    lesson = unit.lessons[index]
    return Link(lesson_named(lesson), lesson_href(lesson.number))
