"""The whole dance laid end to end: sections and transitions as exact lengths or ranges."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Dance, Seconds, Section, Transition
from build_tools.movement.canon_and_unison import PartSpan, latest, part_spans, passage_counts
from build_tools.movement.counts import seconds
from build_tools.movement.development import actions_of, total


@dataclass(frozen=True, slots=True)
class Stretch:
    """A section, or a transition, in the whole dance.

    `counts` is None for an uncounted section and negative for an overlap; `seconds` is None
    where there are counts but no tempo.
    """

    section: Section | None
    transition: Transition | None
    counts: Fraction | None
    seconds: Seconds | None


@lru_cache(maxsize=8)
def lengths(dance: Dance) -> Mapping[str, Fraction]:
    """The counts of every motif and development, by name."""
    return {n: total(actions_of(dance, n)) for n in (*dance.motifs, *dance.developments)}


def danced_counts(dance: Dance, section: Section) -> Fraction:
    """How many counts the passages of `section` last, one after another."""
    known = lengths(dance)
    return sum((passage_counts(p, known) for p in section.danced), Fraction(0))


def section_spans(dance: Dance, section: Section) -> tuple[PartSpan, ...]:
    """Who dances what when in `section`, in counts from its start."""
    known, start, spans = lengths(dance), Fraction(0), []
    for passage in section.danced:
        own = part_spans(passage, known)
        spans += [PartSpan(s.part, s.what, start + s.start, start + s.end) for s in own]
        start += latest(own)
    return tuple(spans)


def transition_between(dance: Dance, first: str, second: str) -> Transition | None:
    """The transition from one section to the next; `any` stands for every letter."""
    for t in dance.transitions:
        if t.start in (first, "any") and t.end in (second, "any"):
            return t
    return None


def transition_counts(transition: Transition) -> Fraction:
    """How many counts a transition adds to the dance; an overlap takes some away."""
    own = transition.counts or Fraction(0)
    if transition.kind in ("cut", "straight on"):
        return Fraction(0)
    return -own if transition.kind == "overlap" else own


def stretches(dance: Dance, order: tuple[str, ...] | None = None) -> tuple[Stretch, ...]:
    """The dance in the order of its form, or in `order`, with the transitions between."""
    found: list[Stretch] = []
    form = dance.form if order is None else order
    for n, letter in enumerate(form):
        section = dance.sections[letter]
        between = transition_between(dance, form[n - 1], letter) if n else None
        if between is not None:
            own = transition_counts(between)
            found.append(Stretch(None, between, own, _exact(dance, own)))
        length = _exact(dance, section.counts) if section.counts else section.seconds
        found.append(Stretch(section, None, section.counts, length))
    return tuple(found)


def _exact(dance: Dance, counts: Fraction | None) -> Seconds | None:
    if counts is None:
        return None
    if not counts:
        return Seconds(Fraction(0), Fraction(0))
    if dance.tempo is None:
        return None
    length = seconds(counts, dance.tempo)
    return Seconds(length, length)


def counts_in_order(dance: Dance, order: tuple[str, ...] | None = None) -> Fraction:
    """The counted part of the dance in the order of its form, or in `order`, in counts."""
    return sum((s.counts for s in stretches(dance, order) if s.counts), Fraction(0))


def seconds_in_order(dance: Dance, order: tuple[str, ...] | None = None) -> Seconds | None:
    """How long the dance lasts in that order; None where counts have no tempo."""
    least = most = Fraction(0)
    for stretch in stretches(dance, order):
        if stretch.seconds is None:
            return None
        least += stretch.seconds.least
        most += stretch.seconds.most
    return Seconds(least, most)
