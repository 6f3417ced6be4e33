"""What one dancer does through a section: thing after thing, with the passages they stand in."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Action, Dance, Section
from build_tools.movement.canon_and_unison import part_spans
from build_tools.movement.development import actions_of
from build_tools.movement.roles import Places, part_places
from build_tools.movement.whole import lengths
from build_tools.paths.group_sizes import groups_of


@dataclass(frozen=True, slots=True)
class Thing:
    """A motif or development that one dancer dances, from count to count of the section."""

    passage: int
    """The passage's number, from 0."""
    what: str
    start: Fraction
    end: Fraction


def things_of(dance: Dance, section: Section, place: int) -> tuple[Thing, ...]:
    """What the dancer at `place` of a group dances, in order."""
    return tuple(
        thing
        for thing, places in _things(dance, section.letter)
        if places is None or place in places
    )


def everyones_things(dance: Dance, section: Section) -> tuple[tuple[int, tuple[Thing, ...]], ...]:
    """Each place of a group with what its dancer dances; what two dance alike comes once."""
    return _by_place(dance, section.letter)


@lru_cache(maxsize=32)
def _by_place(dance: Dance, letter: str) -> tuple[tuple[int, tuple[Thing, ...]], ...]:
    section = dance.sections[letter]
    found: dict[tuple[Thing, ...], int] = {}
    for place in range(1, groups_of(section).size + 1):
        found.setdefault(things_of(dance, section, place), place)
    return tuple((place, things) for things, place in found.items())


@lru_cache(maxsize=32)
def _things(dance: Dance, letter: str) -> tuple[tuple[Thing, Places | None], ...]:
    """All that is danced in a section, in order, each with the places that dance it.

    None stands for a part that is more than one place: anybody may be in it.
    """
    section, known, start = dance.sections[letter], lengths(dance), Fraction(0)
    groups = groups_of(section)
    found: list[tuple[Thing, Places | None]] = []
    for n, passage in enumerate(section.danced):
        at = part_places(groups, passage)
        spans = part_spans(passage, known)
        for span in spans:
            thing = Thing(n, span.what, start + span.start, start + span.end)
            # of more things than parts, the last have nobody to dance them
            found.append((thing, None if at is None else _places_of(at, span.part)))
        start += max((span.end for span in spans), default=Fraction(0))
    return tuple(sorted(found, key=lambda one: one[0].start))


def _places_of(parts: tuple[Places, ...], part: int) -> Places:
    return parts[part - 1] if part <= len(parts) else ()


def with_counts(dance: Dance, thing: Thing) -> Iterator[tuple[Action, Fraction]]:
    """The actions of a thing, each with the count of the section before which it starts."""
    start = thing.start
    for action in actions_of(dance, thing.what):
        if start >= thing.end:
            return
        yield action, start
        start += action.counts
