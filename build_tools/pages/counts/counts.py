"""Counts for the hall: the unit's dance as a score to read, to play and to save."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.bank import Bank
from build_tools.model.dance import Section, Transition
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.dance.parts_over_counts import who_in_words
from build_tools.views.dance.score import Move, Score, ScoreMotif, ScoreStretch, score
from build_tools.views.dance.tempo_for_age import tempo_for_age
from build_tools.views.words.plain_words import (
    action_in_words,
    action_label,
    counts_in_words,
    danced_in_words,
    development_in_words,
    name_in_words,
    seconds_in_words,
    transition_in_words,
)
from build_tools.views.words.punctuation import capital, sentence

FILE = "counts.html"


@dataclass(frozen=True, slots=True)
class RowView:
    """What one part, or everyone, does over some counts."""

    counts: str
    """Which counts, as read: 1 to 8."""
    who: str
    """Who dances it; empty in a motif."""
    what: str
    """What is danced, in a word or two."""
    more: str
    """The same in full; empty where there is no more to say."""
    start: str
    """Counts before it, as a number for scripts."""
    end: str
    """Counts till its end, as a number for scripts."""


@dataclass(frozen=True, slots=True)
class PlayedView:
    """A section, a join or a motif: what is read, and what is played."""

    anchor: str
    """Its place on the page."""
    letter: str
    """A section's letter; empty for a join or a motif."""
    name: str
    """What it is called, alone and in a list."""
    length: str
    """Its counts, or its seconds."""
    counts: str | None
    """Its counts as a number for scripts, under 0 for an overlap; None where it is not counted."""
    least: str | None
    """The least seconds of what is not counted."""
    most: str | None
    """The most seconds of what is not counted."""
    join: bool
    """Whether it leads from one section to the next."""
    cue: str | None
    """What it ends on, or what tells dancers to go on."""
    lines: tuple[str, ...]
    """How it is danced, line by line."""
    rows: tuple[RowView, ...]
    """Who dances what, when; empty where it is not counted."""


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
    title = f"Counts for the hall: {unit.title}"
    about = f"The dance of {unit.title} as counts: to read, to play in the hall, and to save."
    around = frame(bank, path, title, about, "counts.js" if found.can_be_played else None)
    stretches = tuple(_stretch(s, n) for n, s in enumerate(found.stretches, start=1))
    motifs = tuple(_motif(unit, m, n) for n, m in enumerate(found.motifs, start=1))
    view = CountsView(
        frame=around,
        style=f"{around.to_root}assets/css/counts.css",
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        slug=unit.slug,
        length=whole_dance_in_words(dance),
        beat=_beat(found),
        order=_ORDER if dance.order_choice else None,
        playing=_playing(unit, found),
        choices=_choices(stretches, motifs),
        stretches=stretches,
        motifs=motifs,
    )
    return Page(path, "counts/counts.html", view.frame.title, view)


_ORDER = "Pupils choose the order of the sections. Here they stand in the order they are written."


def _beat(found: Score) -> str:
    if found.tempo is None:
        return "This dance has no beat to count: it goes by cues, which are written below."
    return f"{found.tempo} beats a minute, the beat you clap, in phrases of {found.phrase}."


def _playing(unit: Unit, found: Score) -> PlayingView | None:
    if not found.can_be_played or found.tempo is None:
        return None
    can = tempo_for_age(unit)
    return PlayingView(
        tempo=found.tempo,
        phrase=found.phrase,
        counts=_number(found.counts),
        least=_number(found.spans.least),
        most=_number(found.spans.most),
        slowest=can.slowest if can else None,
        fastest=can.fastest if can else None,
        age=can.age if can else None,
    )


def _choices(
    stretches: tuple[PlayedView, ...], motifs: tuple[PlayedView, ...]
) -> tuple[ChoiceEntry, ...]:
    sections: dict[str, ChoiceEntry] = {}
    for s in stretches:
        if s.letter and s.counts is not None:
            sections.setdefault(s.letter, ChoiceEntry(s.anchor, f"Section {s.letter}"))
    return (*sections.values(), *(ChoiceEntry(m.anchor, capital(m.name)) for m in motifs))


def _stretch(s: ScoreStretch, place: int) -> PlayedView:
    name, length, lines = _section(s.section) if s.section else _join(s.join)
    if s.section is not None and s.counts is not None:
        length = capital(counts_in_words(s.counts)) + (
            f", {seconds_in_words(s.seconds)}" if s.seconds else ""
        )
    counted = s.counts is not None
    return PlayedView(
        anchor=f"at-stretch-{place}",
        letter=s.section.letter if s.section else "",
        name=name,
        length=length,
        counts=_number(s.counts) if s.counts is not None else None,
        least=_number(s.seconds.least) if s.seconds and not counted else None,
        most=_number(s.seconds.most) if s.seconds and not counted else None,
        join=s.join is not None,
        cue=sentence(s.cue) if s.cue else None,
        lines=lines,
        rows=tuple(
            RowView(
                counts=_range(span.start, span.end),
                who=who_in_words(span, s.rows),
                what=name_in_words(span.what),
                more="",
                start=_number(span.start),
                end=_number(span.end),
            )
            for span in s.danced
        ),
    )


def _section(section: Section) -> tuple[str, str, tuple[str, ...]]:
    lasts = f", {seconds_in_words(section.seconds)}" if section.seconds else ""
    start = (f"Start: {section.improvised_from}",) if section.improvised_from else ()
    danced = tuple(capital(danced_in_words(one)) for one in section.danced)
    return section.idea, f"Not counted{lasts}", (*start, *section.improvised_rules, *danced)


def _join(join: Transition | None) -> tuple[str, str, tuple[str, ...]]:
    if join is None:
        return "", "", ()
    return sentence(join.how), capital(transition_in_words(join)), ()


def _motif(unit: Unit, motif: ScoreMotif, place: int) -> PlayedView:
    made = unit.dance.developments.get(motif.name)
    return PlayedView(
        anchor=f"at-motif-{place}",
        letter="",
        name=name_in_words(motif.name),
        length=capital(counts_in_words(motif.counts)),
        counts=_number(motif.counts),
        least=None,
        most=None,
        join=False,
        cue=None,
        lines=(sentence(development_in_words(made)),) if made else (),
        rows=tuple(_move(move) for move in motif.moves),
    )


def _move(move: Move) -> RowView:
    return RowView(
        counts=_range(move.start, move.end),
        who="",
        what=action_label(move.action),
        more=action_in_words(move.action).removeprefix(f"{move.action.word}: "),
        start=_number(move.start),
        end=_number(move.end),
    )


def _range(start: Fraction, end: Fraction) -> str:
    """Which counts something takes: 3, 1 to 8. A part of a count takes the count it falls in."""
    first, last = start // 1 + 1, -(-end // 1)
    return figures(Fraction(first)) if first >= last else f"{first} to {last}"


def _number(value: Fraction) -> str:
    """A number as scripts read it: 8, 7.5."""
    return f"{float(value):g}"
