"""The dance from above: where everybody is at every count, to watch and to read part by part."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from markupsafe import Markup, escape

from build_tools.body.holding import carried
from build_tools.model.bank import Bank
from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import MOVES
from build_tools.pages.pieces.heard_data import heard_pieces
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.paths.model import Paths
from build_tools.views.dance.floor_data import floor_data
from build_tools.views.dance.left_open import OPEN
from build_tools.views.dance.moves_before import shown
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.dance.room_to_dance import as_drawn, unit_room
from build_tools.views.dance.score import Score, ScoreMotif, ScoreStretch, score
from build_tools.views.dance.timeline import span_seconds
from build_tools.views.diagrams.body_figure import body_figure
from build_tools.views.diagrams.body_frames import body_form
from build_tools.views.diagrams.floor_plan import unit_floor_plan
from build_tools.views.words.plain_words import action_label, name_in_words
from build_tools.views.words.room_said import room_in_words
from build_tools.views.words.sections_called import called, heading_of
from build_tools.views.words.standing_said import sit_to_sound_in_words

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

    data: Markup
    """Parts, moves and paths, as JSON for an attribute in single quotes."""
    choices: tuple[PartChoice, ...]
    """The sections that can be watched by themselves."""
    room: str
    """How the class that it is drawn for dances in that hall."""
    as_drawn: bool
    """Whether that is as it is drawn, all at once."""


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
    how: str
    """What is to be seen: count by count, or part by part where nobody counts."""
    who: str
    """For how many dancers and in which hall it is drawn."""
    besides: tuple[str, ...]
    """That what the unit leaves open is drawn in the usual way, and who sits though drawn."""
    playing: WatchedView | None
    """What can be watched; None where the dance has no beat."""
    stills: tuple[StillView, ...]
    """The sections, one after another."""
    onward: tuple[Link, ...]
    """Where every move stands drawn, and where the sound is."""


@dataclass(frozen=True, slots=True)
class _Move:
    """One move as it is shown beside the floor; alike ones are the same."""

    number: int
    """By which the page's script finds it, from 0."""
    word: str
    """What the class calls it; empty where pupils decide."""
    told: str
    """What a body does in it; empty where pupils decide."""
    action: Action
    """The move."""
    before: Action | None
    """The move whose end it starts from."""


_Moves = Mapping[str, tuple[_Move, ...]]
"""The moves of each motif, by its name."""


def dance_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/dance.html."""
    path, dance = f"units/{unit.slug}/{FILE}", unit.dance
    paths, found = in_a_hall(unit), score(dance)
    title = _("The dance from above: {unit}", unit=unit.title)
    if dance.tempo:
        how = _("Where everybody is, count by count, seen from above with the front at the top.")
        about = _("Where everybody is in the dance of {unit}, count by count.", unit=unit.title)
    else:
        how = _("Where everybody is, part by part, seen from above with the front at the top.")
        about = _("Where everybody is in the dance of {unit}, part by part.", unit=unit.title)
    around = frame(bank, path, title, about, "dance_from_above.js" if dance.tempo else None)
    view = DanceView(
        frame=around,
        style=f"{around.to_root}assets/css/dance_from_above.css",
        language=unit.language,
        unit=Link(unit.title, "index.html"),
        how=how,
        who=_who(paths),
        besides=(
            *((_(_ASKED),) if paths.unsaid else ()),
            *sit_to_sound_in_words(dance),
        ),
        playing=_watched(unit, paths, found) if dance.tempo else None,
        stills=tuple(_still(unit, letter) for letter in dict.fromkeys(dance.form)),
        onward=_onward(unit),
    )
    return Page(path, "dance_from_above/dance_from_above.html", view.frame.title, view)


def _still(unit: Unit, letter: str) -> StillView:
    section = unit.dance.sections[letter]
    return StillView(
        f"at-{_anchor(letter)}", heading_of(section), picture(unit_floor_plan(unit, section))
    )


_ASKED = N_(
    "The unit leaves some places open. They are drawn in the usual way, and yours may differ."
)


def _onward(unit: Unit) -> tuple[Link, ...]:
    moves = Link(_("Every move, drawn one by one"), MOVES.href)
    heard = (
        _("Counts for the hall: play the sound, or save it")
        if unit.dance.tempo
        else _("The cues, and who gives them")
    )
    counts = Link(heard, "counts.html")
    return (moves, counts) if unit.dance.motifs else (counts,)


def _who(paths: Paths) -> str:
    return _(
        "Drawn for {pupils} pupils in a hall {wide} metres wide and {deep} deep, with the front "
        "at the top.",
        pupils=paths.dancers,
        wide=f"{paths.hall.width:g}",
        deep=f"{paths.hall.depth:g}",
    )


def _anchor(letter: str) -> str:
    return letter.lower().replace("'", "-changed")


def _watched(unit: Unit, paths: Paths, found: Score) -> WatchedView:
    dance, known = unit.dance, _known(found)
    alike = {one.number: one for moves in known.values() for one in moves}
    names = [motif.name for motif in found.motifs]
    data = {
        "tempo": dance.tempo,
        "phrase": dance.phrase,
        "title": unit.title,
        "parts": [_part(one, names) for one in found.stretches],
        "sets": [_moves(one, known[one.name]) for one in found.motifs],
        "paths": floor_data(unit, paths),
        "bodies": body_form([(one.action, one.before) for one in alike.values()]),
        "told": [one.told for one in alike.values()],
    }
    sections = [
        PartChoice(n, heading_of(one.section))
        for n, one in enumerate(found.stretches)
        if one.section is not None
    ]
    room = unit_room(unit, paths.dancers, paths.hall)
    return WatchedView(
        _in_single_quotes(data), tuple(sections), room_in_words(room), as_drawn(room)
    )


def _in_single_quotes(data: dict[str, Any]) -> Markup:
    """As JSON whose many double quotes stand as they are: a quarter less than written out.

    Those within its texts are written so that a reader of tags still finds them two by two.
    """
    text = json.dumps(data, separators=(",", ":"), ensure_ascii=False).replace('\\"', "\\u0022")
    return Markup(str(escape(text)).replace("&#34;", '"'))


def _part(one: ScoreStretch, names: list[str]) -> dict[str, Any]:
    """A section or a join for the page's script; rows count from 0 there."""
    found: dict[str, Any] = {"join": one.join is not None, "cue": one.cue or ""}
    if one.section is not None:
        found["name"] = one.section.idea
        found["short"] = called(one.section)
    elif one.join is not None:
        found["name"], found["short"] = one.join.how, _("On the way")
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


def _known(found: Score) -> _Moves:
    """The moves of each motif, numbered as they first come."""
    alike: dict[str, _Move] = {}
    known: dict[str, tuple[_Move, ...]] = {}
    for motif in found.motifs:
        before: Action | None = None
        moves = []
        for move in motif.moves:
            seen = shown(move.action) or move.action
            figure, word = body_figure(seen, before), action_label(move.action)
            told = "" if seen.kind == OPEN else figure.title
            one = _Move(len(alike), word, told, seen, before)
            moves.append(alike.setdefault(f"{word} {figure.svg}", one))
            before = carried(seen, before)
        known[motif.name] = tuple(moves)
    return known


def _moves(motif: ScoreMotif, known: tuple[_Move, ...]) -> dict[str, Any]:
    """A motif's moves for the page's script: from, to, the word, and which body."""
    return {
        "name": name_in_words(motif.name),
        "moves": [
            [_number(move.start), _number(move.end), drawn.word, drawn.number]
            for move, drawn in zip(motif.moves, known, strict=True)
        ],
    }


def _number(value: Fraction) -> int | float:
    return int(value) if value.denominator == 1 else float(value)
