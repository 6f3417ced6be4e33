"""Counts for the hall: the unit's dance as a score to read, to play and to save."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.pages.counts.played import (
    PlayedView,
    motif_played,
    number_read,
    stretch_played,
)
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.music import Music, music
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.dance.score import Score, score
from build_tools.views.dance.tempo_for_age import tempo_for_age
from build_tools.views.words.punctuation import capital
from build_tools.views.words.sections_called import heading_of

FILE = "counts.html"


@dataclass(frozen=True, slots=True)
class PlayingView:
    """What the player has to know of the whole dance; there is none without a tempo."""

    tempo: int
    """In beats a minute."""
    phrase: int
    """In counts."""
    counts: str
    """All the counts, as a number for scripts."""
    least: str
    """The least seconds of what is not counted."""
    most: str
    """The most seconds of what is not counted."""
    slowest: int | None
    """The slowest tempo that the youngest can keep; None where no age is known."""
    fastest: int | None
    """The most beats a minute that the player takes."""
    age: int | None
    """The age of the youngest."""


@dataclass(frozen=True, slots=True)
class ChoiceEntry:
    """Something that can be chosen to play."""

    anchor: str
    """Its place on the page."""
    words: str
    """What the list says."""


@dataclass(frozen=True, slots=True)
class CountsView:
    """The page of counts."""

    frame: Frame
    """What stands around the content."""
    style: str
    """The page's own styles."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    slug: str
    """The unit's folder, for the names of saved files."""
    length: str
    """How long the dance is and how its sections follow one another."""
    beat: str
    """How fast the beat is, or plainly that there is none."""
    music: Music | None
    """The recording that travels with the unit."""
    order: str | None
    """Who decides the order, where pupils do."""
    playing: PlayingView | None
    """What can be played; None where nothing can."""
    choices: tuple[ChoiceEntry, ...]
    """What can be chosen to play besides the whole dance."""
    stretches: tuple[PlayedView, ...]
    """The whole dance in order."""
    motifs: tuple[PlayedView, ...]
    """The motifs and what is made from them."""


def counts_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/counts.html."""
    path, dance, found = f"units/{unit.slug}/{FILE}", unit.dance, score(unit.dance)
    title = _("Counts for the hall: {unit}", unit=unit.title)
    about = _(
        "The dance of {unit} as counts: to read, to play in the hall, and to save.", unit=unit.title
    )
    around = frame(bank, path, title, about, "counts.js" if found.can_be_played else None)
    stretches = tuple(stretch_played(dance, s, n) for n, s in enumerate(found.stretches, start=1))
    motifs = tuple(motif_played(unit, m, n) for n, m in enumerate(found.motifs, start=1))
    view = CountsView(
        frame=around,
        style=f"{around.to_root}assets/css/counts.css",
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        slug=unit.slug,
        length=whole_dance_in_words(dance),
        beat=_beat(found),
        music=music(unit),
        order=_(_ORDER) if dance.order_choice else None,
        playing=_playing(unit, found),
        choices=_choices(dance, stretches, motifs),
        stretches=stretches,
        motifs=motifs,
    )
    return Page(path, "counts/counts.html", view.frame.title, view)


_ORDER = N_(
    "Pupils choose the order of the sections. Here they stand in the order they are written."
)


def _beat(found: Score) -> str:
    if found.tempo is None:
        return _("This dance has no beat to count: it goes by cues, which are written below.")
    return _(
        "{tempo} beats a minute, the beat you clap, in phrases of {phrase}.",
        tempo=found.tempo,
        phrase=found.phrase,
    )


def _playing(unit: Unit, found: Score) -> PlayingView | None:
    if not found.can_be_played or found.tempo is None:
        return None
    can = tempo_for_age(unit)
    return PlayingView(
        tempo=found.tempo,
        phrase=found.phrase,
        counts=number_read(found.counts),
        least=number_read(found.spans.least),
        most=number_read(found.spans.most),
        slowest=can.slowest if can else None,
        fastest=can.fastest if can else None,
        age=can.age if can else None,
    )


def _choices(
    dance: Dance, stretches: tuple[PlayedView, ...], motifs: tuple[PlayedView, ...]
) -> tuple[ChoiceEntry, ...]:
    sections: dict[str, ChoiceEntry] = {}
    for s in stretches:
        if s.letter and s.counts is not None:
            words = heading_of(dance.sections[s.letter])
            sections.setdefault(s.letter, ChoiceEntry(s.anchor, words))
    return (*sections.values(), *(ChoiceEntry(m.anchor, capital(m.name)) for m in motifs))
