"""Every move: each motif drawn as bodies and counts, what pupils make from it, and when."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.dance import Action, Dance
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.page_words.words import N_, NN_, _, ngettext
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import MOVES, Door, doors, said, to_unit
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.pieces.strip import strip_of
from build_tools.views.dance.journey import Journey, journeys
from build_tools.views.dance.moves_before import moves_before
from build_tools.views.dance.not_danced import not_danced
from build_tools.views.diagrams.body_figure import body_figure
from build_tools.views.diagrams.figure_key import figure_key
from build_tools.views.words.made_from import made_from_in_words
from build_tools.views.words.plain_words import (
    action_label,
    counts_in_words,
    listed,
    name_in_words,
)
from build_tools.views.words.punctuation import sentence

_MADE_BY = {
    "pupils": N_("Pupils make it up."),
    "teacher": N_("You give it to pupils."),
    "teacher then pupils": N_("You give it to pupils, and they make a part of it their own."),
}
_DEEDS = {
    "made": NN_("made in lesson {lessons}", "made in lessons {lessons}"),
    "changed": NN_("changed in lesson {lessons}", "changed in lessons {lessons}"),
    "in part": NN_("danced in part in lesson {lessons}", "danced in part in lessons {lessons}"),
    "danced": NN_("danced in lesson {lessons}", "danced in lessons {lessons}"),
    "shown": NN_("shown in lesson {lessons}", "shown in lessons {lessons}"),
}


@dataclass(frozen=True, slots=True)
class MoveView:
    """One move of a motif as a body does it."""

    word: str
    """What the class calls it."""
    counts: str
    """How many counts it takes."""
    picture: Picture
    """The body where it starts and where it ends; its title says the same in words."""


@dataclass(frozen=True, slots=True)
class ChangedView:
    """What is made from a motif."""

    name: str
    """Its name in words."""
    how: str
    """How it is made."""
    strip: Picture
    """Its order strip."""
    not_danced: str | None
    """That the dance has it nowhere, and what is made from it; None where it is danced."""


@dataclass(frozen=True, slots=True)
class MotifView:
    """One motif."""

    anchor: str
    """Its place on the page."""
    name: str
    """Its name in words."""
    idea: str
    """What it stands for."""
    made_by: str
    """Who makes it."""
    moves: tuple[MoveView, ...]
    """Its moves, drawn."""
    strip: Picture
    """Its order strip."""
    not_danced: str | None
    """That the dance has it nowhere, and what is made from it; None where it is danced."""
    when: str
    """In which lessons it is made, changed, danced and shown."""
    changed: tuple[ChangedView, ...]
    """What is made from it."""


@dataclass(frozen=True, slots=True)
class MovesPageView:
    """The page on every move."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What the page is called."""
    motifs: tuple[MotifView, ...]
    """The motifs."""
    key: tuple[Picture, ...]
    """How the figures are read."""
    doors: tuple[Door, ...]
    """The unit's other pages."""


def moves_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/moves.html."""
    path = f"units/{unit.slug}/{MOVES.href}"
    here = said(MOVES)
    view = MovesPageView(
        frame=frame(bank, path, f"{here.words}: {unit.title}", here.about),
        language=unit.language,
        unit=to_unit(unit),
        heading=here.words,
        motifs=motif_views(unit),
        key=tuple(picture(mark) for mark in figure_key()),
        doors=doors(unit, MOVES),
    )
    return Page(path, "moves/moves.html", view.frame.title, view)


def motif_views(unit: Unit) -> tuple[MotifView, ...]:
    """The motifs of the unit, each with what is made from it."""
    dance = unit.dance
    ways = {journey.motif: journey for journey in journeys(unit)}
    return tuple(
        MotifView(
            anchor=f"at-motif-{n}",
            name=name_in_words(name),
            idea=sentence(motif.idea),
            made_by=_(_MADE_BY[motif.made_by]),
            moves=_moves(motif.actions),
            strip=strip_of(dance, name),
            not_danced=not_danced(dance, name),
            when=_when(ways[name]),
            changed=tuple(_changed(dance, name)),
        )
        for n, (name, motif) in enumerate(dance.motifs.items(), start=1)
    )


def _moves(actions: tuple[Action, ...]) -> tuple[MoveView, ...]:
    return tuple(
        MoveView(
            action_label(action),
            counts_in_words(action.counts),
            picture(body_figure(action, earlier)),
        )
        for action, earlier in zip(actions, moves_before(actions), strict=True)
    )


def _changed(dance: Dance, motif: str) -> list[ChangedView]:
    return [
        ChangedView(
            name_in_words(d.name),
            sentence(made_from_in_words(dance, d)),
            strip_of(dance, d.name),
            not_danced(dance, d.name),
        )
        for d in dance.developments.values()
        if min(roots(dance, d.name), default="") == motif
    ]


def _when(journey: Journey) -> str:
    """It is made in lesson 1, changed in lessons 2 and 4, and shown in lesson 6."""
    lessons: dict[str, list[str]] = {}
    for stop in journey.stops:
        for deed in stop.deeds:
            lessons.setdefault(deed, []).append(str(stop.lesson))
    told = [
        ngettext(*_DEEDS[deed], len(numbers), lessons=listed(numbers))
        for deed, numbers in lessons.items()
    ]
    return _("It is {deeds}.", deeds=listed(told)) if told else ""
