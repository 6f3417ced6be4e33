"""How much floor each pupil has, beside what is recommended, and what to change for less."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from build_tools.model.unit import SchoolYears
from build_tools.views.lesson.groups_in_words import number_in_words

PRIMARY, SECONDARY = 3, 5
SOURCE = "One Dance UK, as restated in print: at least 3 m² a pupil in primary, 5 m² in secondary"
HALLS_SOURCE = (
    "a hall of 140 m² and a classroom of 54 m² are those of one county’s brief for a primary "
    "school (Oxfordshire County Council, 2007)"
)
HALLS = {"full": 140, "half": 70, "classroom": 54}
"""Square metres; half is half of the full hall."""
_MEASURED = re.compile(r"([1-9][0-9]?)x([1-9][0-9]?)[ms]")


@dataclass(frozen=True, slots=True)
class FloorSpace:
    """The floor for each pupil."""

    tenths: int
    """Tenths of a square metre for each pupil, rounded down."""
    each: str
    """The same as it is read: 2.5 m²."""
    least: int
    """The square metres recommended for each pupil."""
    enough: bool
    """Whether each has at least that."""
    holds: int
    """How many pupils have that at the same time."""
    changes: tuple[str, ...]
    """What to change; empty where there is enough."""


def recommended_least(years: Iterable[SchoolYears]) -> int:
    """The square metres a pupil recommended for these years: 5 if any is in secondary school."""
    secondary = any(_secondary(one.nation, year) for one in years for year in one.years)
    return SECONDARY if secondary else PRIMARY


def _secondary(nation: str, year: str) -> bool:
    if nation == "Scotland":
        return year.startswith("S")
    return year.isdigit() and int(year) >= (8 if nation == "Northern Ireland" else 7)


def square_metres(space: str) -> int | None:
    """The floor named full, half or classroom, or 12x8m in metres, or 14x9s in big steps.

    A big step is about 1 metre (common practice, no source). None where it is not known.
    """
    measured = _MEASURED.fullmatch(space)
    if measured:
        return int(measured.group(1)) * int(measured.group(2))
    return HALLS.get(space)


def floor_space(pupils: int, metres: int, least: int) -> FloorSpace:
    """What `pupils` dancing at once have on `metres` square metres of floor.

    `least` is the square metres recommended for each, 3 or 5.
    """
    dancing = max(1, pupils)
    tenths = 10 * metres // dancing
    enough = metres >= least * dancing
    return FloorSpace(
        tenths=tenths,
        each=_metres(tenths),
        least=least,
        enough=enough,
        holds=metres // least,
        changes=() if enough else _changes(dancing, metres, least),
    )


def _changes(pupils: int, metres: int, least: int) -> tuple[str, ...]:
    smaller = "Keep travelling small, and dance more of it on the spot."
    holds = metres // least
    if holds == 0:
        return (smaller, "Look for a larger floor: a hall, or the playground when it is dry.")
    turns = -(-pupils // holds)
    dancing = -(-pupils // turns)
    each = _metres(10 * metres // dancing)
    if turns == 2:
        return (f"Let half dance while half watch, then swap: {each} each.", smaller)
    if turns <= 4:
        return (
            f"Dance in {number_in_words(turns)} parts of the class, turn about: {each} each.",
            smaller,
        )
    return (
        smaller,
        f"Let {number_in_words(holds)} at a time travel, while the others dance on the spot.",
    )


def _metres(tenths: int) -> str:
    whole, part = divmod(tenths, 10)
    return f"{whole}.{part} m²" if part else f"{whole} m²"
