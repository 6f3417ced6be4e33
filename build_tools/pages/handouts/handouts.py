"""To print for a lesson: strips to cut for each group, words to put up, a sheet to look with."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.words import N_, _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.handouts.card_sets import card_bodies, card_set, device_cards
from build_tools.pages.handouts.handed_out import (
    CardSetView,
    LookFor,
    PictureView,
    StripView,
    TextView,
    by_hand,
)
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.motif_drawn import motif_drawn
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture
from build_tools.views.diagrams.body_sprite import sprite
from build_tools.views.lesson.choices_in import choices_in
from build_tools.views.lesson.class_groups import groupings_known
from build_tools.views.lesson.handouts import StripToHand, looked_for, strips_to_hand
from build_tools.views.lesson.to_print import text_of, to_print
from build_tools.views.words.plain_words import development_in_words, name_in_words
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.words_needed import words_needed

_EACH = {
    "alone": N_("one between two"),
    "pairs": N_("one for each pair"),
    "half class": N_("one for each half of the class"),
    "whole class": N_("one for the whole class, to put up"),
}
_EACH_GROUP = N_("one for each group")
ALL = "to-print.html"
_STRIPS = re.compile(r"\bstrips?\b", re.IGNORECASE)
_TELLS_NOBODY = N_(
    "No pupil is named here and nothing is kept by the bank. Keep what you write as your school’s "
    "policy says."
)


@dataclass(frozen=True, slots=True)
class HandoutsView:
    """What to print for one lesson."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way to the unit."""
    lesson: Link | None
    """The way to the lesson; None for all lessons."""
    heading: str
    """To print for which lesson, or for all."""
    all: Link | None
    """The way to everything of the unit; None where this is it."""
    groupings: str
    """How the lesson's steps are grouped, for scripts; empty for all lessons."""
    planned: str
    """For how many pupils it is planned."""
    pictures: tuple[PictureView, ...]
    """The pictures that the lesson shows."""
    texts: tuple[TextView, ...]
    """The poem, story or rhythm that the lesson uses."""
    card_sets: tuple[CardSetView, ...]
    """Letters, numbers, signs and words to cut out."""
    bodies: Markup
    """The bodies that pictures point to, drawn once."""
    strips: tuple[StripView, ...]
    """What pupils dance, move by move, one for each group to hold."""
    strips_asked: bool
    """Whether "What to get" asks for strips; else they are printed for who wants them."""
    words: tuple[Labelled, ...]
    """The lesson's words with their plain meanings."""
    looking: tuple[LookFor, ...]
    """What is looked for, a column each."""
    looking_at: str | None
    """The one thing looked for today."""
    rows: tuple[int, ...]
    """The numbers of the rows, a row for each pupil."""
    tells_nobody: str
    """That no pupil's name is printed or kept."""


def handouts_page(bank: Bank, unit: Unit, lesson: Lesson) -> Page:
    """The page units/<slug>/lesson-<n>-handouts.html."""
    return _page(bank, unit, (lesson,), lesson)


def all_handouts_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/to-print.html: what every lesson hands out, each thing once."""
    return _page(bank, unit, unit.lessons, None)


def handouts_href(number: int) -> str:
    """Where a lesson's handouts lie, seen from any page of its unit."""
    return f"lesson-{number}-handouts.html"


def _page(bank: Bank, unit: Unit, lessons: Sequence[Lesson], only: Lesson | None) -> Page:
    """What `lessons` hand out; `only` is the one lesson of its own page."""
    heading = (
        _("To print for lesson {number}", number=only.number)
        if only
        else _("To print for the whole unit")
    )
    path = f"units/{unit.slug}/{handouts_href(only.number) if only else ALL}"
    title = f"{heading}: {f'{only.title}, ' if only else ''}{unit.title}"
    about = _("Pictures, texts, cards and strips, and a sheet to look with.")
    handed = _strips(unit, lessons)
    printed = to_print(unit, lessons)
    drawn = {one.name: motif_drawn(unit.dance, one.name) for one, _choices in handed}
    words = card_bodies(unit.dance, tuple(drawn))
    named = [one for card_set in printed.cards for one in card_set.cards]
    devices = device_cards(bank, unit, printed)
    bodies = [body for one in (*drawn.values(), *devices.drawn.values()) for body in one.bodies]
    bodies += [body for word, body in words.items() if word in {n.casefold() for n in named}]
    talk = only.look_and_talk if only else None
    view = HandoutsView(
        frame=frame(bank, path, title, about, "handouts.js"),
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        lesson=Link(
            _("Lesson {number}: {title}", number=only.number, title=only.title),
            lesson_href(only.number),
        )
        if only
        else None,
        heading=heading,
        all=Link(_("Everything for this unit, each thing once"), ALL) if only else None,
        groupings=" ".join(one.replace(" ", "_") for one in groupings_known(unit, only))
        if only
        else "",
        planned=_(
            "Counted for {pupils} pupils. Print only the sides you need.", pupils=USUAL_CLASS
        ),
        pictures=tuple(
            PictureView(one.title, one.file or "", one.text_version or "")
            for one in printed.pictures
        ),
        texts=tuple(
            TextView(one.title, notes_html(text_of(unit, one), 3)) for one in printed.texts
        ),
        card_sets=tuple(card_set(one, words, devices) for one in printed.cards),
        bodies=Markup(sprite(bodies)),
        strips=tuple(
            _strip(unit, one, choices, drawn[one.name].picture, n)
            for n, (one, choices) in enumerate(handed, start=1)
        ),
        strips_asked=any(_STRIPS.search(line) for lesson in lessons for line in lesson.collect),
        words=tuple(
            Labelled(word, sentence(plain))
            for word, plain in {
                meaning.word: meaning.plain
                for lesson in lessons
                for meaning in words_needed(unit, lesson, bank.words)
            }.items()
        ),
        looking=tuple(
            LookFor(sentence(end.every_pupil), sentence(end.looks_like))
            for end in (looked_for(unit, only) if only else ())
        ),
        looking_at=sentence(talk.looking_for) if talk else None,
        rows=tuple(range(1, USUAL_CLASS + 1)),
        tells_nobody=_(_TELLS_NOBODY),
    )
    return Page(path, "handouts/handouts.html", view.frame.title, view)


def _strips(unit: Unit, lessons: Sequence[Lesson]) -> list[tuple[StripToHand, tuple[str, ...]]]:
    """Each strip once, with what pupils choose in it; for several lessons the most copies."""
    found: dict[str, tuple[StripToHand, tuple[str, ...]]] = {}
    for lesson in lessons:
        for one in strips_to_hand(unit, lesson):
            known = found.get(one.name)
            if known is None or one.copies > known[0].copies:
                found[one.name] = (one, choices_in(unit, one.name))
    return list(found.values())


def _strip(
    unit: Unit, handed: StripToHand, choices: tuple[str, ...], drawn: Picture, place: int
) -> StripView:
    name = capital(name_in_words(handed.name))
    made = unit.dance.developments.get(handed.name)
    named = str(drawn.svg).replace("<svg ", f'<svg id="at-drawing-{place}" ', 1)
    each = _(_EACH.get(handed.grouping, _EACH_GROUP))
    return StripView(
        heading=f"{name}, {each}",
        name=name,
        how=sentence(development_in_words(made, unit.dance.sides)) if made else None,
        picture=replace(drawn, svg=Markup(named)),
        choices=choices,
        grouping=handed.grouping,
        count=str(handed.copies),
        by_hand=by_hand(handed.copies, each),
    )
