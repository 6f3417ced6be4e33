"""How many actions, over how many counts, one pupil keeps in mind.

The figures for each age are common practice. Ages are in years, as pupils turn them in the oldest
school year of the unit, so that a unit for two years is judged by the older pupils.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Action, Dance
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.views.dance.when_made import progress


@dataclass(frozen=True, slots=True)
class Load:
    """Different actions and their counts; an action danced twice is kept in mind once."""

    actions: int
    counts: Fraction


@dataclass(frozen=True, slots=True)
class Age:
    """An age in words, and the largest motif it usually keeps."""

    said: str
    largest: Load


@dataclass(frozen=True, slots=True)
class NewInLesson:
    """What is new to one pupil in one lesson, and the motifs and developments that bring it."""

    lesson: int
    names: tuple[str, ...]
    load: Load


_AGES = (
    (7, Age("up to 7", Load(4, Fraction(8)))),
    (9, Age("7 to 9", Load(6, Fraction(12)))),
    (11, Age("9 to 11", Load(8, Fraction(16)))),
    (99, Age("11 and over", Load(10, Fraction(32)))),
)
_APART = ("question and answer", "side by side")


def age_of(unit: Unit) -> Age | None:
    """The age of the unit's oldest pupils; None if none of its years is known."""
    known = ages(unit.years)
    return next(age for oldest, age in _AGES if known[1] <= oldest) if known else None


def load_of(actions: Iterable[Action]) -> Load:
    """What there is to keep in mind in `actions`."""
    different = {_move(action): action.counts for action in actions}
    return Load(len(different), sum(different.values(), Fraction(0)))


def new_by_lesson(unit: Unit) -> tuple[NewInLesson, ...]:
    """What is new to one pupil in each lesson that brings anything new, in order.

    A move that an earlier lesson has is not new. Of motifs that different parts dance against
    each other, each pupil makes one: the largest counts.
    """
    dance, made, known = unit.dance, progress(unit), set[object]()
    found = []
    for number in dict.fromkeys(lesson.number for lesson in unit.lessons):
        names = [
            name
            for name in (*dance.motifs, *dance.developments)
            if (places := made[name].made) and places[0].lesson == number
        ]
        apart = _made_by_others(dance, {n for n in names if n in dance.motifs})
        new: dict[object, Fraction] = {}
        bringing = []
        for name in names:
            brought = {_move(action): action.counts for action in _brought(dance, name)}
            if name not in apart and not brought.keys() <= known | new.keys():
                bringing.append(name)
                new |= {move: n for move, n in brought.items() if move not in known}
        known.update(new)
        if new:
            load = Load(len(new), sum(new.values(), Fraction(0)))
            found.append(NewInLesson(number, tuple(bringing), load))
    return tuple(found)


def _brought(dance: Dance, name: str) -> tuple[Action, ...]:
    """The actions that a motif or development brings; most devices bring none."""
    if name in dance.motifs:
        return dance.motifs[name].actions
    d = dance.developments[name]
    return (*((d.replacement,) if d.replacement else ()), *(a.action for a in d.added))


def _made_by_others(dance: Dance, new: set[str]) -> set[str]:
    """Of `new` motifs danced against each other by different parts, all but the largest."""
    others: set[str] = set()
    for section in dance.sections.values():
        for passage in section.danced:
            if passage.fit not in _APART:
                continue
            among = {m for name in passage.what for m in roots(dance, name) if m in new}
            if len(among) > 1:
                largest = max(sorted(among), key=lambda m: load_of(dance.motifs[m].actions).actions)
                others |= among - {largest}
    return others


def _move(action: Action) -> object:
    """What makes an action one move: its word, or else what it is and where it goes."""
    if action.word:
        return action.word.casefold()
    return (action.kinds, action.direction, action.side, action.level, action.body_part)
