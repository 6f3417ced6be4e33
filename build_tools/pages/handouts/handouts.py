"""To print for a class: one page of a unit for all its lessons, each thing once.

The page shows what every lesson hands out; where its address names a lesson, that lesson's alone.
Styles choose by the address without a script, for the first MOST lessons.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.words import N_, _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.handouts.handed_out import (
    CardView,
    GivenOut,
    LookFor,
    PictureView,
    StripView,
    TextView,
)
from build_tools.pages.handouts.of_lessons import HandedOut, handed_out
from build_tools.pages.handouts.shown_for import Shown, once_each
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.picture import Picture
from build_tools.views.diagrams.body_sprite import sprite

PATH = "to-print.html"
_TELLS_NOBODY = N_(
    "No pupil is named here and nothing is kept by the bank. Keep what you write as your school’s "
    "policy says."
)


@dataclass(frozen=True, slots=True)
class OneView:
    """What one lesson shows of the page, or all of them."""

    name: str
    """The lesson's number, or all."""
    place: str
    """Its place on the page, which an address names."""
    heading: str
    """To print for which lesson, or for all."""
    title: str
    """The page's title in this view."""
    lesson: Link | None
    """The way to the lesson; None for all lessons."""
    groupings: str
    """How the lesson's steps are grouped, for scripts; empty for all lessons."""


@dataclass(frozen=True, slots=True)
class CardsView:
    """Cards of one kind, for whichever lessons."""

    anchor: str
    """Its place on the page, as a lesson's list leads to it."""
    place: str
    """The same where another set has that already."""
    heading: str
    """What they are: Letter cards."""
    size: str
    """How large they are printed."""
    grouping: str | None
    """The grouping of which each group has a set; None where one set is for the class."""
    said: str | None
    """How many sets there are, in words."""
    in_a_row: str | None
    """The same where it goes on from the heading."""
    views: str
    """The views that show any of them."""
    cards: tuple[Shown[CardView], ...]
    """Each card once."""
    odd: tuple[str, ...]
    """For each card, the views in which it is the last of an odd number."""
    by_hand: tuple[Shown[str], ...]
    """How often to print the side where no script makes the copies."""


@dataclass(frozen=True, slots=True)
class StripsView:
    """A strip, for whichever lessons."""

    name: str
    """What stands on each strip."""
    how: str | None
    """How it is made from another; None for a motif as first made."""
    picture: Picture
    """The strip, with its place in its drawing."""
    choices: tuple[str, ...]
    """What pupils choose, each with a line to write it on."""
    views: str
    """The views that show it."""
    given: tuple[Shown[GivenOut], ...]
    """To whom it is given."""


@dataclass(frozen=True, slots=True)
class SheetView:
    """A sheet to look with, for the lessons that look for equally many things."""

    views: str
    """The lessons that have it."""
    place: str
    """Its place on the page."""
    which: tuple[Shown[str], ...]
    """The lesson's name."""
    looking_at: tuple[Shown[str], ...]
    """The one thing looked for today."""
    columns: tuple[tuple[Shown[LookFor], ...], ...]
    """What is looked for, a column each: of whichever lessons."""


@dataclass(frozen=True, slots=True)
class HandoutsView:
    """What to print for a unit and for each of its lessons."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way to the unit."""
    all: Link
    """The way to everything of the unit."""
    one_by_one: tuple[OneView, ...]
    """All lessons, then each."""
    every: str
    """All the views."""
    lessons: str
    """The views of lessons."""
    planned: str
    """For how many pupils it is planned."""
    pictures: tuple[Shown[PictureView], ...]
    """The pictures that are shown."""
    pictures_for: str
    """The views that show any."""
    texts: tuple[Shown[TextView], ...]
    """The poem, story or rhythm that is used."""
    texts_for: str
    """The views that show any."""
    card_sets: tuple[CardsView, ...]
    """Letters, numbers, signs and words to cut out."""
    bodies: Markup
    """The bodies that pictures point to, drawn once."""
    strips: tuple[StripsView, ...]
    """What pupils dance, move by move, one for each group to hold."""
    strips_for: str
    """The views that show any."""
    strips_asked: str
    """The views whose "What to get" asks for strips."""
    strips_not_asked: str
    """The others, where they are printed for who wants them."""
    words: tuple[Shown[Labelled], ...]
    """The words with their plain meanings."""
    words_for: str
    """The views that show any."""
    sheets: tuple[SheetView, ...]
    """Sheets to look with."""
    rows: tuple[int, ...]
    """The numbers of the rows, a row for each pupil."""
    tells_nobody: str
    """That no pupil's name is printed or kept."""


def handouts_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/to-print.html: what every lesson hands out, each thing once."""
    views = (handed_out(bank, unit), *(handed_out(bank, unit, one) for one in unit.lessons))
    path = f"units/{unit.slug}/{PATH}"
    about = _("Pictures, texts, cards and strips, and a sheet to look with.")
    view = HandoutsView(
        frame=frame(bank, path, views[0].title, about, "handouts.js"),
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        all=Link(_("Everything for this unit, each thing once"), PATH),
        one_by_one=tuple(
            OneView(one.name, _place(one), one.heading, one.title, one.lesson, one.groupings)
            for one in views
        ),
        every=_those(views, bool),
        lessons=_those(views, lambda one: one.lesson is not None),
        planned=_(
            "Counted for {pupils} pupils. Print only the sides you need.", pupils=USUAL_CLASS
        ),
        pictures=once_each((one.name, one.pictures) for one in views),
        pictures_for=_those(views, lambda one: bool(one.pictures)),
        texts=once_each((one.name, one.texts) for one in views),
        texts_for=_those(views, lambda one: bool(one.texts)),
        card_sets=tuple(_cards(views, place) for place in range(len(views[0].card_sets))),
        bodies=Markup(sprite(body for one in views for body in one.bodies)),
        strips=tuple(_strip(views, one, n) for n, one in enumerate(views[0].strips, start=1)),
        strips_for=_those(views, lambda one: bool(one.strips)),
        strips_asked=_those(views, lambda one: one.strips_asked),
        strips_not_asked=_those(views, lambda one: not one.strips_asked),
        words=once_each((one.name, one.words) for one in views),
        words_for=_those(views, lambda one: bool(one.words)),
        sheets=tuple(_sheets(views)),
        rows=tuple(range(1, USUAL_CLASS + 1)),
        tells_nobody=_(_TELLS_NOBODY),
    )
    return Page(path, "handouts/handouts.html", view.frame.title, view)


def _place(one: HandedOut) -> str:
    return f"lesson-{one.name}" if one.lesson else "at-all"


def _those(views: Sequence[HandedOut], wanted: Callable[[HandedOut], bool]) -> str:
    return " ".join(one.name for one in views if wanted(one))


def _cards(views: Sequence[HandedOut], place: int) -> CardsView:
    """The cards of one kind for one size of groups, in whichever views they are."""
    of_unit = views[0].card_sets
    whole = of_unit[place]
    sets = [
        (view.name, one)
        for view in views
        for one in view.card_sets
        if (one.anchor, one.grouping) == (whole.anchor, whole.grouping)
    ]
    cards = once_each((name, one.cards) for name, one in sets)
    last: dict[int, list[str]] = {}
    for name, one in sets:
        if len(one.cards) % 2:
            shown = [n for n, card in enumerate(cards) if name in card.views.split()]
            last.setdefault(shown[-1], []).append(name)
    again = sum(one.anchor == whole.anchor for one in of_unit[:place])
    return CardsView(
        anchor=whole.anchor,
        heading=whole.heading,
        size=whole.size,
        grouping=whole.grouping,
        said=whole.said,
        in_a_row=whole.in_a_row,
        place=f"{whole.anchor}-{again + 1}" if again else whole.anchor,
        views=" ".join(name for name, _one in sets),
        cards=cards,
        odd=tuple(" ".join(last.get(n, ())) for n in range(len(cards))),
        by_hand=once_each((name, (one.by_hand,)) for name, one in sets if one.by_hand),
    )


def _strip(views: Sequence[HandedOut], whole: StripView, place: int) -> StripsView:
    named = str(whole.picture.svg).replace("<svg ", f'<svg id="at-drawing-{place}" ', 1)
    found = [
        (view.name, (one.given,)) for view in views for one in view.strips if one.name == whole.name
    ]
    return StripsView(
        name=whole.name,
        how=whole.how,
        picture=replace(whole.picture, svg=Markup(named)),
        choices=whole.choices,
        views=" ".join(name for name, _given in found),
        given=once_each(found),
    )


def _sheets(views: Sequence[HandedOut]) -> list[SheetView]:
    lessons = [one for one in views if one.looking]
    sheets = []
    for n, many in enumerate(dict.fromkeys(len(one.looking) for one in lessons), start=1):
        having = [one for one in lessons if len(one.looking) == many]
        sheets.append(
            SheetView(
                views=_those(having, bool),
                place=f"at-sheet-{n}",
                which=once_each((one.name, (one.lesson.words,)) for one in having if one.lesson),
                looking_at=once_each(
                    (one.name, (one.looking_at,)) for one in having if one.looking_at
                ),
                columns=tuple(
                    once_each((one.name, (one.looking[n],)) for one in having) for n in range(many)
                ),
            )
        )
    return sheets
