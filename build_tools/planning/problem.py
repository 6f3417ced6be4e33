"""A year plan as numbers: units and slots by their places, words as sets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.school_years import youngest
from build_tools.planning.asked import Asked, Wish
from build_tools.rules.bank.stage_does_not_fit_nation import STAGES
from build_tools.views.teaching.chains import named_pairs, without_circles
from build_tools.views.teaching.covers import Covers, Link, YearOf

Word = tuple[str, str]
"""A heading and a word under it; published texts stand under `LINKS`."""
LINKS = "links"

Pair = tuple[int, int]
"""The earlier unit and the later one, by their places."""


@dataclass(frozen=True, slots=True)
class Problem:
    """What a plan has to hold to. Units and slots are numbered from 0."""

    slots: int
    words: tuple[frozenset[Word], ...]
    """What each unit covers."""
    fits: tuple[frozenset[int], ...]
    """The slots that are long enough for each unit."""
    before: frozenset[Pair]
    """Where both are planned, the first comes before the second."""
    needs: frozenset[Pair]
    """Those of `before` of which the second is only planned where the first is."""
    pins: tuple[tuple[int | None, frozenset[int]], ...] = ()
    """One of these units has to come, in that slot or anywhere."""


def words_of(unit: Covers, year: YearOf) -> frozenset[Word]:
    """What `unit` covers for a class of that `year`: of published texts those for its stage."""
    danced = {(heading, word) for heading, words in unit.words.items() for word in words}
    links = {(LINKS, f"{one.stage}: {one.says}") for one in unit.links if _is_for(one, year)}
    return frozenset(danced | links)


def _is_for(link: Link, year: YearOf) -> bool:
    named = [years for stage, years in STAGES[link.nation].items() if stage in link.stage.lower()]
    tied = {one for years in named for one in years}
    return link.nation == year[0] and (not tied or year[1] in tied)


def candidates(units: Sequence[Covers], asked: Asked) -> tuple[Covers, ...]:
    """The units for the year that the class has not had, those for the youngest first."""

    def place(unit: Covers) -> tuple[int, str, str]:
        ages = [youngest(nation, year) or 0 for nation, year in unit.years]
        return min(ages), unit.title.lower(), unit.slug

    found = (unit for unit in units if asked.year in unit.years and unit.slug not in asked.done)
    return tuple(sorted(found, key=place))


def problem_of(units: Sequence[Covers], asked: Asked, wishes: Sequence[Wish]) -> Problem:
    """The problem over `units`, which are the candidates in their order."""
    place = {unit.slug: n for n, unit in enumerate(units)}
    pairs = without_circles(named_pairs(units))
    before = frozenset((place[a], place[b]) for a, b in pairs)
    return Problem(
        slots=len(asked.slots),
        words=tuple(words_of(unit, asked.year) for unit in units),
        fits=tuple(
            frozenset(n for n, slot in enumerate(asked.slots) if unit.lessons <= slot.lessons)
            for unit in units
        ),
        before=before,
        needs=frozenset(
            (a, b) for a, b in before if units[a].slug in units[b].builds_on
        ),
        pins=tuple(
            (
                wish.slot,
                frozenset(
                    n
                    for n, unit in enumerate(units)
                    if (wish.topic in unit.topics if wish.topic else unit.slug == wish.unit)
                ),
            )
            for wish in wishes
        ),
    )  # fmt: skip
