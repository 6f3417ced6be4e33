"""To print for a lesson: strips to cut for each group, words to put up, a sheet to look with."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.without_counts import is_counted, lengths_in_words
from build_tools.views.diagrams.svg import text_width
from build_tools.views.diagrams.wall_strip import wall_strips
from build_tools.views.lesson.handouts import (
    StripToHand,
    action_words,
    looked_for,
    strips_to_hand,
)
from build_tools.views.words.plain_words import development_in_words, name_in_words
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.words_needed import words_needed

CARD_POINTS = 54
"""The size of the words on cards; the styles print them in it."""
_NARROW_CARD = 232.0
"""What a card of half a side's width holds, in points."""
_EACH = {
    "alone": "one between two",
    "pairs": "one for each pair",
    "half class": "one for each half of the class",
    "whole class": "one for the whole class, to put up",
}
_TELLS_NOBODY = (
    "No pupil is named here and nothing is kept by the bank. Keep what you write as your school’s "
    "policy says."
)


@dataclass(frozen=True, slots=True)
class StripView:
    """A strip, and as many as there are groups."""

    heading: str
    """What it is and how many there are: Crab, one for each pair: 15."""
    name: str
    """What stands on each strip."""
    how: str | None
    """How it is made from another; None for a motif as first made."""
    pictures: tuple[Picture, ...]
    """The strip, in as many pieces as it needs."""
    copies: tuple[int, ...]
    """The number of each further copy."""


@dataclass(frozen=True, slots=True)
class WordCard:
    """A word to cut out and put up."""

    word: str
    """Printed large, for pupils to see from afar."""
    wide: bool
    """Whether it needs a side's whole width."""


@dataclass(frozen=True, slots=True)
class LookFor:
    """A column of the sheet to look with."""

    every_pupil: str
    """What every pupil shows."""
    looks_like: str
    """What you see when it is there."""


@dataclass(frozen=True, slots=True)
class HandoutsView:
    """What to print for one lesson."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way to the unit."""
    lesson: Link
    """The way to the lesson."""
    number: int
    """Which lesson of the unit, from 1."""
    planned: str
    """For how many pupils it is planned."""
    strips: tuple[StripView, ...]
    """What pupils dance, move by move, one for each group to hold."""
    words: tuple[Labelled, ...]
    """The lesson's words with their plain meanings."""
    actions: tuple[WordCard, ...]
    """The pupils' words for what they dance."""
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
    path = f"units/{unit.slug}/{handouts_href(lesson.number)}"
    title = f"To print for lesson {lesson.number}: {lesson.title}, {unit.title}"
    about = f"Strips, word cards and a sheet to look with for {lesson.title}."
    around = frame(bank, path, title, about, "print.js")
    handed = strips_to_hand(unit, lesson)
    talk = lesson.look_and_talk
    view = HandoutsView(
        frame=around,
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        lesson=Link(f"Lesson {lesson.number}: {lesson.title}", lesson_href(lesson.number)),
        number=lesson.number,
        planned=f"Counted for {USUAL_CLASS} pupils. Print only the sides you need.",
        strips=tuple(_strip(unit, one) for one in handed),
        words=tuple(
            Labelled(meaning.word, sentence(meaning.plain))
            for meaning in words_needed(unit, lesson, bank.words)
        ),
        actions=tuple(_card(w) for w in action_words(unit.dance, tuple(s.name for s in handed))),
        looking=tuple(
            LookFor(sentence(end.every_pupil), sentence(end.looks_like))
            for end in looked_for(unit, lesson)
        ),
        looking_at=sentence(talk.looking_for) if talk else None,
        rows=tuple(range(1, USUAL_CLASS + 1)),
        tells_nobody=_TELLS_NOBODY,
    )
    return Page(path, "handouts/handouts.html", view.frame.title, view)


def handouts_href(number: int) -> str:
    """Where a lesson's handouts lie, seen from any page of its unit."""
    return f"lesson-{number}-handouts.html"


def _strip(unit: Unit, handed: StripToHand) -> StripView:
    dance = unit.dance
    actions = drawn_actions(dance, handed.name)
    lasts = None if is_counted(dance) else lengths_in_words(actions)
    name = capital(name_in_words(handed.name))
    made = dance.developments.get(handed.name)
    return StripView(
        heading=f"{name}, {_EACH.get(handed.grouping, 'one for each group')}: {handed.copies}",
        name=name,
        how=sentence(development_in_words(made)) if made else None,
        pictures=tuple(picture(strip) for strip in wall_strips(name, actions, lasts)),
        copies=tuple(range(2, handed.copies + 1)),
    )


def _card(word: str) -> WordCard:
    longest = max(word.split(), key=lambda part: text_width(part, CARD_POINTS, bold=True))
    return WordCard(word, text_width(longest, CARD_POINTS, bold=True) > _NARROW_CARD)
