"""The dance as bodies in a room: what is known of every dancer at every moment."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from fractions import Fraction

from build_tools.body.ages import AtAge
from build_tools.model.dance import Dance, Section, Transition
from build_tools.paths.class_in_groups import Together
from build_tools.paths.hall import Area, Hall, Point
from build_tools.paths.legs import Leg, Moment, during
from build_tools.paths.unsaid import Unsaid


@dataclass(frozen=True, slots=True)
class Start:
    """How the dancers come to the start of a section."""

    spot: str
    """where they are, first place or new place."""
    come_from: tuple[Point, ...]
    """Where each dancer was at the end before; the places themselves at the very start."""
    wanted: tuple[Point, ...]
    """The place of each dancer as the section says."""
    by: str | None
    """move, hold, overlap, cut or straight on; None at the very start."""
    seconds: float | None
    """How long they have to get there; None where it is not known."""
    drawn_closer: float
    """1, or by how much the places are drawn together to fit the hall."""


@dataclass(frozen=True, slots=True)
class StretchPaths:
    """A section or a transition as it is danced. Moments count from the start of the dance."""

    section: Section | None
    transition: Transition | None
    begins: float
    lasts: float
    """In counts, or in seconds where nothing is counted."""
    counted: bool
    seconds: float | None
    """How many seconds one of `lasts` is; None where there is no tempo."""
    together: Together
    """Who is with whom in a section; empty in a transition."""
    start: Start | None
    """How a section is come to; None in a transition."""
    most_seconds: Fraction | None = None
    """How long a section that is not counted may last."""

    @property
    def ends(self) -> float:
        """The moment of its end."""
        return self.begins + self.lasts


@dataclass(frozen=True, slots=True, eq=False)
class Paths:
    """Where everybody is in a whole dance. Paths equal only themselves."""

    dance: Dance
    hall: Hall
    area: Area
    """Where dancers are put down at the start."""
    body: AtAge
    sizes: tuple[int, ...]
    """The groups that the dance and its lessons have, 1 for alone."""
    stretches: tuple[StretchPaths, ...]
    at_first: tuple[Moment, ...]
    """Each dancer at the very start."""
    legs: tuple[tuple[Leg, ...], ...]
    """Each dancer's legs, by number."""
    unsaid: tuple[Unsaid, ...]

    @property
    def dancers(self) -> int:
        """How many dance."""
        return len(self.at_first)

    @property
    def lasts(self) -> float:
        """The moment at which the dance is over."""
        return max((one.ends for one in self.stretches), default=0.0)

    def first_of(self, letter: str) -> StretchPaths:
        """The stretch in which a section first comes."""
        return next(one for one in self.stretches if one.section and one.section.letter == letter)

    def at(self, dancer: int, moment: float) -> Moment:
        """Where a dancer is at a moment of the dance, from 0 to `lasts`."""
        legs = self.legs[dancer]
        n = bisect_right(legs, moment, key=_starts)
        return during(legs[n - 1], moment) if n else self.at_first[dancer]

    def everybody(self, moment: float) -> tuple[Moment, ...]:
        """Where all are at a moment."""
        return tuple(self.at(dancer, moment) for dancer in range(self.dancers))


def _starts(leg: Leg) -> float:
    return leg.start
