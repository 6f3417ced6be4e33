"""Each motif's way through the unit: in which lesson it is made, changed, danced and shown."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.when_made import Progress, progress, sources, step_at
from build_tools.views.words.plain_words import action_label

DEEDS = ("made", "changed", "in part", "danced", "shown")
"""Where only a piece of it is taken out, it is danced in part: nothing of it is changed."""


@dataclass(frozen=True, slots=True)
class Stop:
    """What is done with a motif in one lesson, in the order of `DEEDS`."""

    lesson: int
    deeds: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Journey:
    """One motif and its stops, in the order of the lessons."""

    motif: str
    stops: tuple[Stop, ...]


def journeys(unit: Unit) -> tuple[Journey, ...]:
    """The journey of every motif. What is made from a motif counts as the motif changed."""
    found = progress(unit)
    return tuple(
        Journey(
            motif,
            tuple(
                Stop(number, deeds)
                for number in dict.fromkeys(lesson.number for lesson in unit.lessons)
                if (deeds := _deeds(unit, found[motif], number))
            ),
        )
        for motif in unit.dance.motifs
    )


def piece_danced_alone(unit: Unit, motif: str, lesson: int) -> tuple[str, ...]:
    """The words of a motif's moves that a lesson takes out of it, where it changes none of it.

    Empty where the lesson changes how a move is done, or their order, or makes nothing of it.
    """
    made = _made_from(unit, motif, lesson)
    if not made or not all(_is_piece(unit.dance, name) for name in made):
        return ()
    words = [action_label(one) for name in made for one in drawn_actions(unit.dance, name)]
    # which moves are taken out may be pupils' to choose
    return tuple(dict.fromkeys(words)) if all(words) else ()


def _made_from(unit: Unit, motif: str, lesson: int) -> list[str]:
    """What a lesson develops of a motif, in its order."""
    places = (place for place in progress(unit)[motif].developed if place.lesson == lesson)
    named = (name for place in places for name in step_at(unit, place)[1].develops)
    return [name for name in named if motif in sources(unit.dance, name)]


def _is_piece(dance: Dance, name: str) -> bool:
    """Whether it is some of a motif's moves as they are: a fragment, or one of a fragment."""
    development = dance.developments.get(name)
    if development is None:
        return True
    return development.device == "fragmentation" and _is_piece(dance, development.of)


def _deeds(unit: Unit, way: Progress, lesson: int) -> tuple[str, ...]:
    in_part = bool(piece_danced_alone(unit, way.name, lesson))
    changed, taken = ((), way.developed) if in_part else (way.developed, ())
    places = (way.made, changed, taken, way.danced, way.shown)
    return tuple(
        deed
        for deed, steps in zip(DEEDS, places, strict=True)
        if any(place.lesson == lesson for place in steps)
    )
