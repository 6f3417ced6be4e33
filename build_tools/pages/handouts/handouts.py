"""To print for a lesson: strips to cut for each group, words to put up, a sheet to look with."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.development import actions_of
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.handouts.handed_out import (
    CardSetView,
    CardView,
    LookFor,
    PictureView,
    StripView,
    TextView,
)
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.motif_drawn import MotifDrawn, motif_drawn
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture
from build_tools.views.dance.moves_before import moves_before
from build_tools.views.diagrams.body_sprite import BodyDrawn, body_drawn, body_picture, sprite
from build_tools.views.diagrams.svg import text_width
from build_tools.views.lesson.asked_to_get import Kind
from build_tools.views.lesson.choices_in import choices_in
from build_tools.views.lesson.class_groups import groupings_known
from build_tools.views.lesson.device_cards import DeviceCard, device_card, with_examples
from build_tools.views.lesson.handouts import StripToHand, looked_for, strips_to_hand
from build_tools.views.lesson.to_print import CardSet, ToPrint, text_of, to_print
from build_tools.views.words.plain_words import action_label, development_in_words, name_in_words
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
ALL = "to-print.html"
_OF_EACH = {
    "pairs": "for each pair",
    "threes": "for each three",
    "fours": "for each group of four",
    "fives": "for each group of five",
    "sixes": "for each group of six",
}
_HEADINGS = {
    Kind.LETTERS: "Letter cards",
    Kind.NUMBERS: "Number cards",
    Kind.SIGNS: "Signs for the walls",
    Kind.WORDS: "Word cards",
    Kind.DEVICES: "Device cards",
}
_SIZES = {Kind.LETTERS: "large", Kind.NUMBERS: "large", Kind.SIGNS: "sign"}
_STRIPS = re.compile(r"\bstrips?\b", re.IGNORECASE)
_TELLS_NOBODY = (
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
    heading = f"To print for lesson {only.number}" if only else "To print for the whole unit"
    path = f"units/{unit.slug}/{handouts_href(only.number) if only else ALL}"
    title = f"{heading}: {f'{only.title}, ' if only else ''}{unit.title}"
    about = "Pictures, texts, cards and strips, and a sheet to look with."
    handed = _strips(unit, lessons)
    printed = to_print(unit, lessons)
    drawn = {one.name: motif_drawn(unit.dance, one.name) for one, _ in handed}
    words = _card_bodies(unit.dance, tuple(drawn))
    named = [one for card_set in printed.cards for one in card_set.cards]
    devices = _device_cards(bank, unit, printed)
    bodies = [body for one in (*drawn.values(), *devices.drawn.values()) for body in one.bodies]
    bodies += [body for word, body in words.items() if word in {n.casefold() for n in named}]
    talk = only.look_and_talk if only else None
    view = HandoutsView(
        frame=frame(bank, path, title, about, "handouts.js"),
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        lesson=Link(f"Lesson {only.number}: {only.title}", lesson_href(only.number))
        if only
        else None,
        heading=heading,
        all=Link("Everything for this unit, each thing once", ALL) if only else None,
        groupings=" ".join(one.replace(" ", "_") for one in groupings_known(unit, only))
        if only
        else "",
        planned=f"Counted for {USUAL_CLASS} pupils. Print only the sides you need.",
        pictures=tuple(
            PictureView(one.title, one.file or "", one.text_version or "")
            for one in printed.pictures
        ),
        texts=tuple(
            TextView(one.title, notes_html(text_of(unit, one), 3)) for one in printed.texts
        ),
        card_sets=tuple(_card_set(one, words, devices) for one in printed.cards),
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
        tells_nobody=_TELLS_NOBODY,
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
    anchor = f"at-drawing-{place}"
    svg = str(drawn.svg)
    return StripView(
        heading=f"{name}, {_EACH.get(handed.grouping, 'one for each group')}",
        name=name,
        how=sentence(development_in_words(made)) if made else None,
        picture=replace(drawn, svg=Markup(svg.replace("<svg ", f'<svg id="{anchor}" ', 1))),
        anchor=anchor,
        box=svg.partition('viewBox="')[2].partition('"')[0],
        choices=choices,
        grouping=handed.grouping,
        count=str(handed.copies),
        copies=tuple(range(2, handed.copies + 1)),
    )


def _card_bodies(dance: Dance, names: Sequence[str]) -> dict[str, BodyDrawn]:
    """The body in each move of the motifs, by the move's word in small letters."""
    found: dict[str, BodyDrawn] = {}
    for name in names:
        actions = actions_of(dance, name)
        for action, before in zip(actions, moves_before(actions), strict=True):
            found.setdefault(action_label(action).casefold(), body_drawn(action, before))
    return found


@dataclass(frozen=True, slots=True)
class _Devices:
    """Cards that name a device, by their words, and the motif that shows each."""

    cards: Mapping[str, DeviceCard]
    """Each by its word."""
    drawn: Mapping[str, MotifDrawn]
    """Its drawing, by the same, where there is one."""


def _device_cards(bank: Bank, unit: Unit, printed: ToPrint) -> _Devices:
    words = [word for one in printed.cards if one.kind is Kind.DEVICES for word in one.cards]
    cards = {word: device_card(unit, bank.words, word) for word in words}
    dance = with_examples(unit.dance, words, bank.words)
    drawn = {word: motif_drawn(dance, one.drawn) for word, one in cards.items() if one.drawn}
    return _Devices(cards, drawn)


def _card_set(one: CardSet, bodies: Mapping[str, BodyDrawn], devices: _Devices) -> CardSetView:
    whose = f" {_OF_EACH[one.grouping]}" if one.grouping in _OF_EACH else ""
    told = one.kind is Kind.DEVICES
    return CardSetView(
        anchor=one.anchor,
        heading=_HEADINGS[one.kind],
        size="device" if told else "small" if one.grouping else _SIZES.get(one.kind, "word"),
        grouping=one.grouping,
        said=f"One set{whose}" if one.grouping else None,
        cards=tuple(
            _device(devices, word, n) if told else _card(word, bodies.get(word.casefold()), one)
            for n, word in enumerate(one.cards, start=1)
        ),
        copies=tuple(range(2, one.sets + 1)),
    )


def _device(devices: _Devices, word: str, place: int) -> CardView:
    shown, means = devices.drawn.get(word), devices.cards[word].plain
    if shown is None:
        return CardView(capital(word), False, None, means)
    svg, anchor = str(shown.picture.svg), f"at-device-{place}"
    box = svg.partition('viewBox="')[2].partition('"')[0]
    return CardView(
        word=capital(word),
        wide=False,
        body=None,
        means=means,
        drawing=Markup(svg.replace("<svg ", f'<svg id="{anchor}" ', 1)),
        drawn_again=Markup(
            f'<svg class="drawing" aria-hidden="true" viewBox="{box}"><use href="#{anchor}"/></svg>'
        ),
    )


def _card(word: str, body: BodyDrawn | None, of: CardSet) -> CardView:
    longest = max(word.split(), key=lambda part: text_width(part, CARD_POINTS, bold=True))
    wide = text_width(longest, CARD_POINTS, bold=True) > _NARROW_CARD and of.grouping is None
    shown = body if of.kind is Kind.WORDS else None
    return CardView(word, wide, Markup(body_picture(shown)) if shown else None)
