"""Which stretches of the unit's recording are played for a step: from which second to which.

A step plays what it dances where that lies in the recording; what it joins, or the whole, from its
first section to its last. A changed return whose music is its first's is learned to that.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.counts import seconds
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.places_in_recording import (
    Place,
    lead_in,
    places_in_recording,
    travels_with_recording,
)
from build_tools.views.dance.step_sounding import parts_named
from build_tools.views.lesson.beat_of_step import is_played
from build_tools.views.lesson.with_music import speaks_of_music, without_music
from build_tools.views.words.sections_called import called

_HEARD = {"heard", "counts", "seconds", "improvised", "sound"}
"""What a changed return may change, so that its music is no more its first's."""


@dataclass(frozen=True, slots=True)
class Played:
    """A stretch of the recording, in seconds from its beginning."""

    start: Fraction
    end: Fraction | None
    """None where it is played on to the end, or until somebody stops it."""
    later: str = ""
    """Of a start further on in what the step dances: the section from which that is."""


_ALL_OF_IT = Played(Fraction(0), None)
"""From the start till somebody stops it."""


def played_in_step(dance: Dance, step: Step) -> tuple[Played, ...]:
    """What is played for it; nothing where it goes without music, or the unit brings none.

    All of it can be had besides what the step dances; it is all there is where no place is known,
    and where a class only moves to it.
    """
    if not travels_with_recording(dance) or without_music(step):
        return ()
    names = (*parts_named(step), *step.develops)
    places = places_in_recording(dance)
    found = [one for order in _orders(dance, step) for one in _runs(dance, places, order)]
    if not found and not letters_in(dance, names):
        found = list(_of_moves(dance, places, names))
    played = is_played(dance, step) if names else speaks_of_music(step)
    if found and (found[0].start or found[0].end != dance.sound.lasts):
        found.append(_ALL_OF_IT)
    return tuple(dict.fromkeys(found)) or ((_ALL_OF_IT,) if played else ())


def _orders(dance: Dance, step: Step) -> Iterator[tuple[str, ...]]:
    """The sections that it dances one after another: what it joins, the whole, and the others."""
    names = parts_named(step)
    joined = tuple(name for name in step.joins if name in dance.sections)
    if joined:
        yield joined
    if WHOLE in names:
        yield dance.form
        return
    letters = letters_in(dance, names)
    yield tuple(dict.fromkeys(_learned_to(dance, one) for one in letters if one not in joined))


def _learned_to(dance: Dance, letter: str) -> str:
    """The section to whose music it is learned: its own, or that which it changes."""
    section = dance.sections[letter]
    return section.returns if section.returns and not _HEARD & set(section.changes) else letter


def _runs(dance: Dance, places: Sequence[Place | None], order: tuple[str, ...]) -> Iterator[Played]:
    """Sections as far as the dance has them in this order without a break, and so on."""
    while order:
        long = len(order)
        while long > 1 and _found(dance, order[:long]) is None:
            long -= 1
        at = _found(dance, order[:long])
        if at is not None:
            yield from _run(dance, places, at, at + long)
        order = order[long:]


def _found(dance: Dance, order: tuple[str, ...]) -> int | None:
    """Where the dance has these sections in a row, for the first time."""
    starts = range(len(dance.form) - len(order) + 1)
    return next((n for n in starts if dance.form[n : n + len(order)] == order), None)


def _run(dance: Dance, places: Sequence[Place | None], first: int, past: int) -> Iterator[Played]:
    run = [place for place in places[first:past] if place is not None]
    if len(run) < past - first:
        return
    # what sounds at the very end of the dance dies away
    to_the_end = past == len(places) and dance.sound.lasts is not None
    end = Fraction(dance.sound.lasts or 0) if to_the_end else run[-1].end
    yield Played(run[0].begins, end)
    for place, letter in list(zip(run, dance.form[first:past], strict=True))[1:]:
        yield Played(place.begins, end, called(dance.sections[letter]))


def _of_moves(
    dance: Dance, places: Sequence[Place | None], names: Sequence[str]
) -> Iterator[Played]:
    """The moves that it dances where they come first in the dance, if they have counts there."""
    for place, letter in zip(places, dance.form, strict=True):
        section = dance.sections[letter]
        if place is None or section.counts is None or dance.tempo is None:
            continue
        spans = [one for one in parts_over_counts(dance, section).spans if one.what in names]
        if not spans:
            continue
        firsts = {one.what: one for one in reversed(spans)}.values()
        starts = place.start + seconds(min(one.start for one in firsts), dance.tempo)
        end = place.start + seconds(max(one.end for one in firsts), dance.tempo)
        begins = place.begins if starts == place.start else lead_in(dance, starts)
        yield Played(begins, end)
        return
