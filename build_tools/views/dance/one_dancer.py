"""What one dancer does through a section: thing after thing, with the passages they stand in."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Action, Dance, Section
from build_tools.movement.canon_and_unison import part_spans, passage_counts
from build_tools.movement.development import actions_of
from build_tools.movement.roles import part_places
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
    known, start = lengths(dance), Fraction(0)
    groups = groups_of(section)
    found = []
    for n, passage in enumerate(section.danced):
        at = part_places(groups, passage)
        for span in part_spans(passage, known):
            if at is None or place in at[span.part - 1]:
                found.append(Thing(n, span.what, start + span.start, start + span.end))
        start += passage_counts(passage, known)
    return tuple(sorted(found, key=lambda thing: thing.start))


def everyones_things(dance: Dance, section: Section) -> Iterator[tuple[int, tuple[Thing, ...]]]:
    """Each place of a group with what its dancer dances; what two dance alike comes once."""
    told = set()
    for place in range(1, groups_of(section).size + 1):
        things = things_of(dance, section, place)
        if things not in told:
            told.add(things)
            yield place, things


def with_counts(dance: Dance, thing: Thing) -> Iterator[tuple[Action, Fraction]]:
    """The actions of a thing, each with the count of the section before which it starts."""
    start = thing.start
    for action in actions_of(dance, thing.what):
        if start >= thing.end:
            return
        yield action, start
        start += action.counts
