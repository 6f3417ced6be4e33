"""The dance from above: where everybody is at every count, to watch and to read part by part."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from build_tools.model.bank import Bank
from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.heard_data import heard_pieces
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.paths.for_pages import page_data
from build_tools.paths.model import Paths
from build_tools.views.dance.left_open import OPEN
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.dance.score import Score, ScoreMotif, ScoreStretch, score
from build_tools.views.dance.timeline import span_seconds
from build_tools.views.diagrams.body_figure import body_figure
from build_tools.views.diagrams.body_frames import body_form
from build_tools.views.diagrams.floor_plan import unit_floor_plan
from build_tools.views.words.plain_words import action_label, name_in_words
from build_tools.views.words.sections_called import called, heading_of

FILE = "dance.html"


@dataclass(frozen=True, slots=True)
class PartChoice:
    """A part of the dance that can be watched by itself."""

    place: int
    """Its place among the parts of the dance, from 0."""
    words: str
    """What the list says."""


@dataclass(frozen=True, slots=True)
class WatchedView:
    """What the page's script has to know."""

    data: str
    """Parts, moves and paths, as JSON."""
    choices: tuple[PartChoice, ...]
    """The sections that can be watched by themselves."""


@dataclass(frozen=True, slots=True)
class StillView:
    """One part of the dance as it is printed."""

    anchor: str
    """Its place on the page."""
    title: str
    """The section's letter and name."""
    picture: Picture
    """The floor from above, and the same in words."""


@dataclass(frozen=True, slots=True)
class MoveView:
    """One move as a picture."""

    number: int
    """By which the page's script finds it."""
    word: str
    """What the class calls it."""
    picture: Picture
    """The picture; its title says the same in words."""


@dataclass(frozen=True, slots=True)
class MovesView:
    """The pictures of one motif or development that none before it has."""

    anchor: str
    """Its place on the page."""
    name: str
    """What it is called."""
    moves: tuple[MoveView, ...]
    """Its moves in order."""


@dataclass(frozen=True, slots=True)
class DanceView:
    """The page of the dance from above."""

    frame: Frame
    """What stands around the content."""
    style: str
    """The page's own styles."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    who: str
    """For how many dancers and in which hall it is drawn."""
    asked: str | None
    """That what the unit leaves open is drawn in the usual way; None where all is said."""
    playing: WatchedView | None
    """What can be watched; None where the dance has no beat."""
    stills: tuple[StillView, ...]
    """The sections, one after another."""
    moves: tuple[MovesView, ...]
    """Every move as a picture, once."""


Drawn = Mapping[str, tuple[MoveView, ...]]
"""The pictures of each motif's moves, by its name."""


def dance_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/dance.html."""
    path, dance = f"units/{unit.slug}/{FILE}", unit.dance
    paths, found = in_a_hall(unit), score(dance)
    drawn = _drawn(found)
    title = f"The dance from above: {unit.title}"
    about = f"Where everybody is in the dance of {unit.title}, count by count."
    around = frame(bank, path, title, about, "dance.js" if dance.tempo else None)
    view = DanceView(
        frame=around,
        style=f"{around.to_root}assets/css/dance.css",
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        who=_who(paths),
        asked=_ASKED if paths.unsaid else None,
        playing=_watched(unit, paths, found, drawn) if dance.tempo else None,
        stills=tuple(_still(unit, letter) for letter in dict.fromkeys(dance.form)),
        moves=tuple(_new_moves(found, drawn)),
    )
    return Page(path, "dance/dance.html", view.frame.title, view)


def _still(unit: Unit, letter: str) -> StillView:
    section = unit.dance.sections[letter]
    return StillView(
        f"at-{_anchor(letter)}", heading_of(section), picture(unit_floor_plan(unit, section))
    )


_ASKED = "The unit leaves some places open. They are drawn in the usual way, and yours may differ."


def _who(paths: Paths) -> str:
    return (
        f"Drawn for {paths.dancers} pupils in a hall {paths.hall.width:g} metres wide and "
        f"{paths.hall.depth:g} deep, with the front at the top."
    )


def _anchor(letter: str) -> str:
    return letter.lower().replace("'", "-changed")


def _watched(unit: Unit, paths: Paths, found: Score, drawn: Drawn) -> WatchedView:
    dance = unit.dance
    names = [motif.name for motif in found.motifs]
    data = {
        "tempo": dance.tempo,
        "phrase": dance.phrase,
        "title": unit.title,
        "parts": [_part(one, names) for one in found.stretches],
        "sets": [_moves(one, drawn) for one in found.motifs],
        "paths": page_data(paths),
        "bodies": body_form(_pairs(found, drawn)),
    }
    sections = [
        PartChoice(n, heading_of(one.section))
        for n, one in enumerate(found.stretches)
        if one.section is not None
    ]
    return WatchedView(json.dumps(data, separators=(",", ":"), ensure_ascii=False), tuple(sections))


def _part(one: ScoreStretch, names: list[str]) -> dict[str, Any]:
    """A section or a join for the page's script; rows count from 0 there."""
    found: dict[str, Any] = {"join": one.join is not None, "cue": one.cue or ""}
    if one.section is not None:
        found["name"] = one.section.idea
        found["short"] = called(one.section)
    elif one.join is not None:
        found["name"], found["short"] = one.join.how, "On the way"
    if one.counts is not None:
        found["counts"] = _number(one.counts)
    elif one.seconds is not None:
        found |= {"least": _number(one.seconds.least), "most": _number(one.seconds.most)}
        if one.section is not None:
            found["lasts"] = _number(span_seconds(one.section, one.sounding))
    if one.sounding.pieces:
        found["heard"] = heard_pieces(one.sounding)
    if one.danced:
        found["rows"] = list(one.rows)
        found["danced"] = [
            [_number(s.start), _number(s.end), s.first - 1, s.last - 1, names.index(s.what)]
            for s in one.danced
        ]
    return found


def _drawn(found: Score) -> Drawn:
    """The picture of each move of each motif, by the motif's name, alike ones the same."""
    known: dict[str, MoveView] = {}
    drawn: dict[str, tuple[MoveView, ...]] = {}
    for motif in found.motifs:
        before: Action | None = None
        moves = []
        for move in motif.moves:
            figure = body_figure(move.action, before)
            shown = MoveView(len(known), action_label(move.action), picture(figure))
            moves.append(known.setdefault(f"{shown.word} {figure.svg}", shown))
            before = move.action
        drawn[motif.name] = tuple(moves)
    return drawn


def _pairs(found: Score, drawn: Drawn) -> list[tuple[Action, Action | None]]:
    """The move of each picture, by its number, and the move before it."""
    known: dict[int, tuple[Action, Action | None]] = {}
    for motif in found.motifs:
        before: Action | None = None
        for move, shown in zip(motif.moves, drawn[motif.name], strict=True):
            known.setdefault(shown.number, (move.action, before))
            before = move.action
    return [known[number] for number in sorted(known)]


def _new_moves(found: Score, drawn: Drawn) -> Iterator[MovesView]:
    """Each motif with the pictures that none before it has; what pupils decide has none."""
    shown: set[int] = set()
    for n, motif in enumerate(found.motifs, start=1):
        new = {
            shape.number: shape
            for move, shape in zip(motif.moves, drawn[motif.name], strict=True)
            if shape.number not in shown and move.action.kind != OPEN
        }
        shown |= set(new)
        if new:
            yield MovesView(f"at-moves-{n}", name_in_words(motif.name), tuple(new.values()))


def _moves(motif: ScoreMotif, drawn: Drawn) -> dict[str, Any]:
    """A motif's moves for the page's script: from, to, the word, and which picture."""
    return {
        "name": name_in_words(motif.name),
        "moves": [
            [_number(move.start), _number(move.end), shown.word, shown.number]
            for move, shown in zip(motif.moves, drawn[motif.name], strict=True)
        ],
    }


def _number(value: Fraction) -> int | float:
    return int(value) if value.denominator == 1 else float(value)
