"""When each part of the dance is made, developed, joined, danced, shown and settled.

Everything here is read off what the steps say they do. A section holds what is danced in it, the
whole dance holds its sections, and a development holds what it was made from: showing one shows
the other.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.views.dance.parts_named import letters_in, motifs_in


@dataclass(frozen=True, slots=True, order=True)
class StepPlace:
    """One step: the lesson's number and the step's index from 0. Earlier is smaller."""

    lesson: int
    step: int

    def __str__(self) -> str:
        return f"lesson {self.lesson}, step {self.step + 1}"


StepPlaces = tuple[StepPlace, ...]
_GOES_OVER = frozenset({"recall", "rehearse", "show", "look and talk"})
"""Phases that go over what is there."""


@dataclass(frozen=True, slots=True)
class Progress:
    """The way of one motif, development or section through the unit, each in order."""

    name: str
    made: StepPlaces
    """Where a step makes it; for a development, where a step develops it. What comes ready, a
    motif from the teacher, is also made where it is first worked on. So is a section of motifs
    that are the teacher's alone, or one improvised within rules, where a step first dances it by
    its letter, other than to join it. Where a step says that it makes the section, going over it
    any earlier makes nothing. A section that comes back changed, but with the same danced in it, is
    made where the first is."""
    developed: StepPlaces
    """Where it is developed, or for a motif, where anything that comes from it is."""
    joined: StepPlaces
    """Where it is joined to a neighbour; sections only."""
    danced: StepPlaces
    """Where it is danced by itself or within something bigger, joins included."""
    shown: StepPlaces
    """Where it is shown by itself or within something bigger."""


@lru_cache(maxsize=4)
def steps_in_order(unit: Unit) -> tuple[tuple[StepPlace, Lesson, Step], ...]:
    """Every step of the unit with its place, in the order it is taught."""
    return tuple(
        (StepPlace(lesson.number, index), lesson, step)
        for lesson in unit.lessons
        for index, step in enumerate(lesson.steps)
    )


@lru_cache(maxsize=4)
def progress(unit: Unit) -> Mapping[str, Progress]:
    """The progress of every motif, development and section, by name or letter."""
    dance = unit.dance
    steps = [(place, step) for place, _, step in steps_in_order(unit)]

    def where(parts: Callable[[Step], Iterable[str]]) -> Mapping[str, StepPlaces]:
        found: dict[str, list[StepPlace]] = {}
        for place, step in steps:
            for name in dict.fromkeys(parts(step)):
                found.setdefault(name, []).append(place)
        return {name: tuple(places) for name, places in found.items()}

    makes = where(lambda s: s.makes)
    develops = where(lambda s: s.develops)
    joins = where(lambda s: s.joins)
    by_letter = where(_danced_alone)
    by_letter_taught = where(lambda s: () if s.phase in _GOES_OVER else _danced_alone(s))
    danced = where(lambda s: held(dance, (*s.dances, *s.joins)))
    shown = where(lambda s: held(dance, s.shows))
    found: dict[str, Progress] = {}
    for name in (*dance.motifs, *dance.developments, *dance.sections):
        changed = develops.get(name, ())
        made = makes.get(name, ()) or changed
        if name in dance.motifs:
            from_it = {d for d in develops if d != name and name in roots(dance, d)}
            changed = tuple(sorted({p for d in from_it for p in develops[d]}))
            made = makes.get(name, ())
            if comes_ready(dance, name):
                first = sorted((*made, *danced.get(name, ()), *changed))[:1]
                made = _with_first(made, first)
        elif name in dance.sections and made_by_dancing(dance, dance.sections[name]):
            made = _with_first(made, (by_letter_taught if made else by_letter).get(name, ()))
        elif name in dance.sections and not made:
            made = _of_the_first(dance.sections[name], makes)
        found[name] = Progress(
            name=name,
            made=made,
            developed=changed,
            joined=joins.get(name, ()),
            danced=danced.get(name, ()),
            shown=shown.get(name, ()),
        )
    return found


@lru_cache(maxsize=4)
def settled(unit: Unit) -> Mapping[str, StepPlaces]:
    """Where each choice is settled; an empty tuple where no step settles it."""
    return {
        name: tuple(place for place, _, step in steps_in_order(unit) if name in step.settles)
        for name in unit.dance.choices
    }


def inside(dance: Dance, parts: Iterable[str]) -> frozenset[str]:
    """The sections among `parts` and the motifs and developments danced as they stand there."""
    return _inside(dance, tuple(parts))


@lru_cache(maxsize=512)
def _inside(dance: Dance, parts: tuple[str, ...]) -> frozenset[str]:
    letters = {*letters_in(dance, parts), *(p for p in parts if p in dance.sections)}
    return frozenset(
        {
            *letters,
            *motifs_in(dance, parts),
            *(n for letter in letters for p in dance.sections[letter].danced for n in p.what),
        }
    )


def held(dance: Dance, parts: Iterable[str]) -> frozenset[str]:
    """What is `inside` the parts, and everything that comes from."""
    return _held(dance, tuple(parts))


@lru_cache(maxsize=512)
def _held(dance: Dance, parts: tuple[str, ...]) -> frozenset[str]:
    found = inside(dance, parts)
    return found | {source for name in found for source in sources(dance, name)}


@lru_cache(maxsize=256)
def sources(dance: Dance, name: str) -> frozenset[str]:
    """Everything that the development `name` comes from; nothing for a motif."""
    found: set[str] = set()
    waiting = [name]
    while waiting:
        development = dance.developments.get(waiting.pop())
        if development is None:
            continue
        for source in (development.of, development.joined_to):
            if source and source not in found:
                found.add(source)
                waiting.append(source)
    return frozenset(found)


def _of_the_first(section: Section, makes: Mapping[str, StepPlaces]) -> StepPlaces:
    """Where a changed return is made that is danced as the first is: where the first is made."""
    if section.returns is None or "danced" in section.changes:
        return ()
    return makes.get(section.returns, ())


def comes_ready(dance: Dance, motif: str) -> bool:
    """Whether the teacher brings the motif, all of it or to be altered."""
    return dance.motifs[motif].made_by.startswith("teacher")


def is_given(dance: Dance, motif: str) -> bool:
    """Whether the motif is the teacher's alone, and pupils learn it as it is."""
    return dance.motifs[motif].made_by == "teacher"


def made_by_dancing(dance: Dance, section: Section) -> bool:
    """Whether dancing a section is all the making it needs: improvised, or learned ready-made."""
    if section.kind == "improvised":
        return True
    motifs = {m for p in section.danced for name in p.what for m in roots(dance, name)}
    return bool(motifs) and all(is_given(dance, m) for m in motifs)


def step_at(unit: Unit, place: StepPlace) -> tuple[Lesson, Step]:
    """The step at `place`, with its lesson. Raises KeyError where there is none."""
    return _by_place(unit)[place]


@lru_cache(maxsize=4)
def _by_place(unit: Unit) -> Mapping[StepPlace, tuple[Lesson, Step]]:
    return {place: (lesson, step) for place, lesson, step in steps_in_order(unit)}


def names_in(step: Step) -> tuple[str, ...]:
    """Every part of the dance that a step names, whatever it does with it."""
    return (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)


def _danced_alone(step: Step) -> tuple[str, ...]:
    """What a step dances other than to practise the join that leads there."""
    if step.phase != "join":
        return step.dances
    return tuple(name for name in step.dances if name not in step.joins)


def _with_first(places: StepPlaces, others: Iterable[StepPlace]) -> StepPlaces:
    return tuple(sorted({*places, *sorted(others)[:1]}))
