"""Sections, joins and motifs on the page of counts: what is read, and what is played."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Section, Transition
from build_tools.model.unit import Unit
from build_tools.movement.sounding import FOLLOWS_THE_DANCERS
from build_tools.page_words.words import _
from build_tools.pages.counts.sounded import (
    SaidView,
    SoundView,
    counts_read,
    not_said,
    said_read,
    sounds_read,
)
from build_tools.pages.pieces.heard_data import heard_data
from build_tools.views.dance.parts_over_counts import who_in_words
from build_tools.views.dance.score import Move, ScoreMotif, ScoreStretch
from build_tools.views.dance.timeline import span_seconds
from build_tools.views.words.doing import doing_in_words
from build_tools.views.words.made_from import made_from_in_words
from build_tools.views.words.plain_words import (
    action_in_words,
    action_label,
    counts_in_words,
    danced_in_words,
    name_in_words,
    seconds_in_words,
    transition_in_words,
)
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.sections_called import title_of


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
    caption: str
    """What its table shows."""
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
    heard: str
    """Every stroke and word of it for scripts; empty where nothing sounds that is known."""
    lasts: str | None
    """The seconds of what is not counted in a saved sound; None where it is counted."""
    sounds: tuple[SoundView, ...]
    """What sounds, piece after piece, as read."""
    not_said: str | None
    """That what sounds is not said, where it is not."""
    said: tuple[SaidView, ...]
    """The words said on counts, a phrase at a time."""


def stretch_played(dance: Dance, s: ScoreStretch, place: int) -> PlayedView:
    """A section or a join of the whole dance, at its place from 1."""
    name, length, lines = _section(s.section, dance.sides) if s.section else _join(s.join)
    if s.section is not None and s.counts is not None:
        length = capital(counts_in_words(s.counts)) + (
            f", {seconds_in_words(s.seconds)}" if s.seconds else ""
        )
    counted = s.counts is not None
    return PlayedView(
        anchor=f"at-stretch-{place}",
        letter=s.section.letter if s.section else "",
        caption=_caption(s.section, name),
        name=name,
        length=length,
        counts=number_read(s.counts) if s.counts is not None else None,
        least=number_read(s.seconds.least) if s.seconds and not counted else None,
        most=number_read(s.seconds.most) if s.seconds and not counted else None,
        join=s.join is not None,
        cue=sentence(s.cue) if s.cue else None,
        lines=lines,
        rows=tuple(
            RowView(
                counts=counts_read(span.start, span.end),
                who=who_in_words(span, s.rows),
                what=doing_in_words(span),
                more="",
                start=number_read(span.start),
                end=number_read(span.end),
            )
            for span in s.everything
        ),
        heard=heard_data(s.sounding),
        lasts=_lasts(s),
        sounds=sounds_read(s.sounding, dance.phrase, counted=counted, follows=_follows(s)),
        not_said=None if s.sounding.known else not_said(s),
        said=said_read(s.sounding, dance.phrase) if counted else (),
    )


def _follows(s: ScoreStretch) -> bool:
    """Whether what sounds in a section that nobody counts follows those who dance it."""
    if s.section is None or s.counts is not None:
        return False
    return s.section.sound.follows == FOLLOWS_THE_DANCERS


def _caption(section: Section | None, name: str) -> str:
    if section is not None:
        return title_of(section, _("who dances what, when"))
    return _("{how} What is said, count by count", how=name)


def _lasts(s: ScoreStretch) -> str | None:
    if s.section is None or s.counts is not None:
        return None
    return number_read(span_seconds(s.section, s.sounding))


def _section(section: Section, sides: Mapping[str, str]) -> tuple[str, str, tuple[str, ...]]:
    length = _("Not counted")
    if section.seconds:
        length = _("Not counted, {length}", length=seconds_in_words(section.seconds))
    start = (_("Start: {what}", what=section.improvised_from),) if section.improvised_from else ()
    danced = tuple(capital(danced_in_words(one, sides)) for one in section.danced)
    # the name is short enough to be read out; what it is about is then a line below
    name, idea = (capital(section.name), (section.idea,)) if section.name else (section.idea, ())
    return name, length, (*idea, *start, *section.improvised_rules, *danced)


def _join(join: Transition | None) -> tuple[str, str, tuple[str, ...]]:
    if join is None:
        return "", "", ()
    return sentence(join.how), capital(transition_in_words(join)), ()


def motif_played(unit: Unit, motif: ScoreMotif, place: int) -> PlayedView:
    """A motif or what is made from one, at its place from 1."""
    made = unit.dance.developments.get(motif.name)
    return PlayedView(
        anchor=f"at-motif-{place}",
        letter="",
        caption=_("{name}, move by move", name=name_in_words(motif.name)),
        name=name_in_words(motif.name),
        length=capital(counts_in_words(motif.counts)),
        counts=number_read(motif.counts),
        least=None,
        most=None,
        join=False,
        cue=None,
        lines=(sentence(made_from_in_words(unit.dance, made)),) if made else (),
        rows=tuple(_move(move) for move in motif.moves),
        heard=heard_data(motif.sounding),
        lasts=None,
        sounds=sounds_read(motif.sounding, unit.dance.phrase, counted=True),
        not_said=None,
        said=said_read(motif.sounding, unit.dance.phrase),
    )


def _move(move: Move) -> RowView:
    return RowView(
        counts=counts_read(move.start, move.end),
        who="",
        what=action_label(move.action) or _("as pupils choose"),
        more=action_in_words(move.action).removeprefix(f"{action_label(move.action)}: "),
        start=number_read(move.start),
        end=number_read(move.end),
    )


def number_read(value: Fraction) -> str:
    """A number as scripts read it: 8, 7.5."""
    return f"{float(value):g}"
