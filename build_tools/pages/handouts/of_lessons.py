"""What a lesson hands out: strips for each group, words to put up, a sheet to look with."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.pages.frame.frame import Link
from build_tools.pages.handouts.card_sets import card_bodies, card_set, device_cards
from build_tools.pages.handouts.handed_out import (
    CardSetView,
    GivenOut,
    LookFor,
    PictureView,
    StripView,
    TextView,
    by_hand,
)
from build_tools.pages.handouts.shown_for import WHOLE
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.motif_drawn import motif_drawn
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture
from build_tools.views.diagrams.body_sprite import BodyDrawn
from build_tools.views.lesson.choices_in import choices_in
from build_tools.views.lesson.class_groups import groupings_known
from build_tools.views.lesson.handouts import (
    TO_PUT_UP,
    StripToHand,
    asks_for_strips,
    looked_for,
    strips_to_hand,
)
from build_tools.views.lesson.to_print import text_of, to_print
from build_tools.views.words.made_from import made_from_in_words
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.words_needed import words_needed

_EACH = {
    "alone": N_("one between two"),
    "pairs": N_("one for each pair"),
    "half class": N_("one for each half of the class"),
}
_EACH_GROUP = N_("one for each group")


@dataclass(frozen=True, slots=True)
class HandedOut:
    """What is to print for one lesson, or for all of a unit."""

    name: str
    """The lesson's number; WHOLE for all lessons."""
    heading: str
    """To print for which lesson, or for all."""
    title: str
    """The same with the titles of lesson and unit."""
    lesson: Link | None
    """The way to the lesson; None for all lessons."""
    groupings: str
    """How the lesson's steps are grouped, for scripts; empty for all lessons."""
    pictures: tuple[PictureView, ...]
    """The pictures that are shown."""
    texts: tuple[TextView, ...]
    """The poem, story or rhythm that is used."""
    card_sets: tuple[CardSetView, ...]
    """Letters, numbers, signs and words to cut out."""
    bodies: tuple[BodyDrawn, ...]
    """The bodies that pictures point to."""
    strips: tuple[StripView, ...]
    """What pupils dance, move by move, one for each group to hold."""
    strips_asked: bool
    """Whether "What to get" asks for strips; else they are printed for who wants them."""
    words: tuple[Labelled, ...]
    """The words with their plain meanings."""
    looking: tuple[LookFor, ...]
    """What is looked for, a column each."""
    looking_at: str | None
    """The one thing looked for today."""


def handed_out(bank: Bank, unit: Unit, only: Lesson | None = None) -> HandedOut:
    """What the lesson `only` hands out; without one, what every lesson does, each thing once."""
    lessons = (only,) if only else unit.lessons
    heading = (
        _("To print for lesson {number}", number=only.number)
        if only
        else _("To print for the whole unit")
    )
    handed = _strips(unit, lessons)
    printed = to_print(unit, lessons)
    drawn = {one.name: motif_drawn(unit.dance, one.name) for one, _choices in handed}
    words = card_bodies(unit.dance, tuple(drawn))
    named = [one for card_set in printed.cards for one in card_set.cards]
    devices = device_cards(bank, unit, printed)
    bodies = [body for one in (*drawn.values(), *devices.drawn.values()) for body in one.bodies]
    bodies += [body for word, body in words.items() if word in {n.casefold() for n in named}]
    talk = only.look_and_talk if only else None
    return HandedOut(
        name=str(only.number) if only else WHOLE,
        heading=heading,
        title=f"{heading}: {f'{only.title}, ' if only else ''}{unit.title}",
        lesson=Link(
            _("Lesson {number}: {title}", number=only.number, title=only.title),
            lesson_href(only.number),
        )
        if only
        else None,
        groupings=" ".join(one.replace(" ", "_") for one in groupings_known(unit, only))
        if only
        else "",
        pictures=tuple(
            PictureView(one.title, one.file or "", one.text_version or "")
            for one in printed.pictures
        ),
        texts=tuple(
            TextView(one.title, notes_html(text_of(unit, one), 3)) for one in printed.texts
        ),
        card_sets=tuple(card_set(one, words, devices) for one in printed.cards),
        bodies=tuple(bodies),
        strips=tuple(
            _strip(unit, one, choices, drawn[one.name].picture) for one, choices in handed
        ),
        strips_asked=any(map(asks_for_strips, lessons)),
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
    )


def _strips(unit: Unit, lessons: Sequence[Lesson]) -> list[tuple[StripToHand, tuple[str, ...]]]:
    """Each strip once, with what pupils choose in it; for several lessons the most copies."""
    found: dict[str, tuple[StripToHand, tuple[str, ...]]] = {}
    for lesson in lessons:
        for one in strips_to_hand(unit, lesson):
            known = found.get(one.name)
            if known is None or one.copies > known[0].copies:
                found[one.name] = (one, choices_in(unit, one.name))
    return list(found.values())


def _strip(unit: Unit, handed: StripToHand, choices: tuple[str, ...], drawn: Picture) -> StripView:
    name = capital(name_in_words(handed.name))
    made = unit.dance.developments.get(handed.name)
    each = _(_EACH.get(handed.grouping, _EACH_GROUP))
    if handed.grouping == TO_PUT_UP:
        each = _("one to put up")
    return StripView(
        name=name,
        how=sentence(made_from_in_words(unit.dance, made)) if made else None,
        picture=drawn,
        choices=choices,
        given=GivenOut(
            heading=f"{name}, {each}",
            grouping=handed.grouping,
            count=str(handed.copies),
            more=handed.more,
            by_hand=by_hand(handed.copies, each),
        ),
    )
