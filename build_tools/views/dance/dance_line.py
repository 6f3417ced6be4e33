"""The whole dance on one line: each part with the counts that come before it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance, Seconds, Section, Transition
from build_tools.movement.counts import counts_in
from build_tools.movement.whole import counts_in_order, stretches

_USUAL_TEMPO = 100
"""Only to give an uncounted section a width where the dance has no tempo."""


@dataclass(frozen=True, slots=True)
class LinePart:
    """A section or a transition in its place.

    `counts` is None for an uncounted section and negative for an overlap; `before` is how many
    counts of the counted dance come before it.
    """

    section: Section | None
    transition: Transition | None
    counts: Fraction | None
    seconds: Seconds | None
    before: Fraction


@dataclass(frozen=True, slots=True)
class DanceLine:
    """The dance as it is written, from start to end. `counts` are all the counted parts."""

    parts: tuple[LinePart, ...]
    counts: Fraction
    phrase: int


def dance_line(dance: Dance) -> DanceLine:
    """The dance in the order of its form, with its transitions."""
    parts, before = [], Fraction(0)
    for s in stretches(dance):
        parts.append(LinePart(s.section, s.transition, s.counts, s.seconds, before))
        before += s.counts or Fraction(0)
    return DanceLine(tuple(parts), counts_in_order(dance), dance.phrase)


def width_in_counts(part: LinePart, tempo: int | None) -> Fraction:
    """How wide a part is drawn: its counts, or the middle of its seconds turned into counts."""
    if part.counts is not None:
        return max(part.counts, Fraction(0))
    if part.seconds is None:
        return Fraction(0)
    middle = (part.seconds.least + part.seconds.most) / 2
    return counts_in(middle, tempo or _USUAL_TEMPO)
