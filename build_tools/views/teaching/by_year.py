"""What each school year of a nation meets in a bank, counted, and what nobody there meets."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from build_tools.model.school_years import youngest
from build_tools.views.teaching.covers import HEADINGS, Covers, Link, YearOf


@dataclass(frozen=True, slots=True)
class Counted:
    """One word and, for each school year, how many units of that year cover it."""

    word: str
    units: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class LinkCounted:
    """One published text and, for each school year, how many units of that year meet it."""

    link: Link
    units: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class NationCovers:
    """One nation: its school years from the youngest, and what each of them meets."""

    nation: str
    years: tuple[YearOf, ...]
    units: tuple[int, ...]
    """How many units each year has."""
    headings: Mapping[str, tuple[Counted, ...]]
    links: tuple[LinkCounted, ...]

    def missing(self, place: int) -> Mapping[str, tuple[str, ...]]:
        """Under each heading the words that no unit of the year at `place` covers."""
        return {
            heading: tuple(row.word for row in rows if not row.units[place])
            for heading, rows in self.headings.items()
        }


def by_year(units: Sequence[Covers]) -> tuple[NationCovers, ...]:
    """What each school year meets in `units`, a nation at a time.

    Years between two that have units are there too, so that a year without any is seen.
    """
    nations = sorted({nation for unit in units for nation, _ in unit.years})
    return tuple(_of_nation(nation, units) for nation in nations)


def years_between(nation: str, found: Iterable[str]) -> tuple[YearOf, ...]:
    """The school years of `nation` from the youngest to the oldest of those `found`."""
    by_age = {youngest(nation, year) or 0: year for year in found}
    known = {age: year for year in _every_year(nation) if (age := youngest(nation, year))}
    first, last = min(by_age), max(by_age)
    ages = sorted({*by_age, *(age for age in known if first < age < last)})
    return tuple((nation, by_age.get(age) or known[age]) for age in ages)


def _every_year(nation: str) -> tuple[str, ...]:
    if nation == "Scotland":
        return tuple(f"P{n}" for n in range(1, 8)) + tuple(f"S{n}" for n in range(1, 7))
    return ("R", *(str(n) for n in range(1, 14)))


def _of_nation(nation: str, units: Sequence[Covers]) -> NationCovers:
    years = years_between(nation, {y for unit in units for n, y in unit.years if n == nation})
    counts: dict[tuple[str, str], Counter[YearOf]] = defaultdict(Counter)
    links: dict[Link, Counter[YearOf]] = defaultdict(Counter)
    each: Counter[YearOf] = Counter()
    for unit in units:
        here = [year for year in unit.years if year[0] == nation]
        each.update(here)
        for heading, words in unit.words.items():
            for word in words:
                counts[heading, word].update(here)
        for link in unit.links:
            if link.nation == nation:
                links[link].update(here)
    return NationCovers(
        nation,
        years,
        tuple(each[year] for year in years),
        {
            heading: tuple(
                Counted(word, tuple(counts[heading, word][year] for year in years))
                for word in known
            )
            for heading, known in HEADINGS.items()
        },
        tuple(
            LinkCounted(link, tuple(found[year] for year in years))
            for link, found in sorted(links.items(), key=lambda one: (one[0].stage, one[0].says))
        ),
    )
