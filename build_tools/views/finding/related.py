"""Which units go on from a unit, lead up to it, or are about the same, by what they teach.

A unit goes on from another where its pupils are older and do again what the other taught; what
counts is what is not in every unit: how dancers fit together and how moves are changed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

from build_tools.views.finding.choices import MOVEMENT
from build_tools.views.finding.findable import Findable

MOST = 6
"""How many are named of each kind."""
_IN_EVERY_UNIT = frozenset({"travel", "turn", "jump", "gesture", "stillness", "transfer", "unison"})


@dataclass(frozen=True, slots=True)
class Near:
    """A unit near another: what it has in common with it, and what it adds."""

    unit: Findable
    again: tuple[str, ...]
    """Words of `MOVEMENT` that both teach; for a unit about the same, the topics of both."""
    new: tuple[str, ...]
    """Words of `MOVEMENT` that only the later one teaches."""


@dataclass(frozen=True, slots=True)
class Related:
    """The units near one unit, the nearest first."""

    goes_on: tuple[Near, ...]
    comes_before: tuple[Near, ...]
    alike: tuple[Near, ...]


@dataclass(frozen=True)
class _Known:
    """What is asked of a unit again and again, worked out once."""

    unit: Findable

    @property
    def ages(self) -> tuple[int, int]:
        return self.unit.ages

    @cached_property
    def taught(self) -> int:
        return sum(1 << n for n, word in enumerate(_TELLING) if word in self.unit.taught)

    @cached_property
    def topics(self) -> frozenset[str]:
        return frozenset(self.unit.topics)


_TELLING = tuple(word for word in MOVEMENT if word not in _IN_EVERY_UNIT)


def related(units: Sequence[Findable]) -> dict[str, Related]:
    """What is near each of `units`, by its folder's name."""
    known = [_Known(unit) for unit in units]
    return {one.unit.slug: _near(one, known) for one in known}


def _near(one: _Known, known: Sequence[_Known]) -> Related:
    others = [other for other in known if other is not one]
    later = [other for other in others if _follows(one, other)]
    earlier = [other for other in others if _follows(other, one)]
    alike = [other for other in others if one.topics & other.topics and _same_ages(one, other)]
    return Related(
        goes_on=_best((_step(one, other), _named(one, other), other) for other in later),
        comes_before=_best((_step(other, one), _named(other, one), other) for other in earlier),
        alike=tuple(
            Near(other.unit, tuple(t for t in one.unit.topics if t in other.topics), ())
            for other in sorted(alike, key=lambda o: (-len(one.topics & o.topics), o.unit.slug))[
                :MOST
            ]
        ),
    )


def _follows(earlier: _Known, later: _Known) -> bool:
    """Whether pupils of the later unit are the older, by two years at most."""
    (young, old), (youngest, _) = earlier.ages, later.ages
    return young < youngest <= old + 1


def _same_ages(one: _Known, other: _Known) -> bool:
    return one.ages[0] < other.ages[1] and other.ages[0] < one.ages[1]


def _named(earlier: _Known, later: _Known) -> bool:
    """Whether one of the two says itself that it goes with the other."""
    says = later.unit.slug in earlier.unit.leads_to.units
    return says or earlier.unit.slug in later.unit.builds_on.units


def _step(earlier: _Known, later: _Known) -> tuple[int, int]:
    return earlier.taught & later.taught, later.taught & ~earlier.taught


def _best(found: Iterable[tuple[tuple[int, int], bool, _Known]]) -> tuple[Near, ...]:
    """Those that their authors name first, then those that do most again, then that add most."""
    ranked = sorted(
        ((both, new, named, other) for (both, new), named, other in found if both or named),
        key=lambda one: (
            not one[2],
            -one[0].bit_count(),
            -one[1].bit_count(),
            one[3].unit.slug,
        ),
    )
    return tuple(Near(o.unit, _words(both), _words(new)) for both, new, _, o in ranked[:MOST])


def _words(taught: int) -> tuple[str, ...]:
    return tuple(word for n, word in enumerate(_TELLING) if taught >> n & 1)
