"""How near partners come: steps apart at the start against steps taken.

Six steps apart, and three each towards one another, leave nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from build_tools.paths.facings import partners
from build_tools.paths.hall import metres
from build_tools.paths.model import Paths, StretchPaths

_SLIGHT = 0.01


@dataclass(frozen=True, slots=True)
class Meeting:
    """Where two partners are nearest to one another in a section."""

    stretch: int
    """The number of the section in the paths, from 0."""
    letter: str
    dancers: tuple[int, int]
    """By number, from 0."""
    apart: float
    """Steps between them at its start; a step is a walking step of that age."""
    taken: tuple[float, float]
    """Steps that each has gone, by then, towards where the other began."""
    left: float
    """Steps between them when they are nearest."""
    count: float
    """Counts from the start of the section to that moment."""


@lru_cache(maxsize=16)
def meetings(paths: Paths) -> tuple[Meeting, ...]:
    """The nearest meeting of each pair of partners in each counted section in which they move."""
    return tuple(
        meeting
        for n, one in enumerate(paths.stretches)
        if one.section is not None and one.counted and max(map(len, one.together)) > 1
        for meeting in _in_section(paths, n, one)
    )


def _in_section(paths: Paths, number: int, one: StretchPaths) -> list[Meeting]:
    found = []
    step = paths.body.step
    for first, second in partners(one.together).items():
        if first > second:
            continue
        pair = (first, second)
        moments = sorted(
            {one.begins}
            | {
                leg.end
                for dancer in pair
                for leg in paths.legs[dancer]
                if one.begins <= leg.start < one.ends and (leg.x0, leg.y0) != (leg.x1, leg.y1)
            }
        )
        gaps = [(_gap(paths, pair, moment), moment) for moment in moments]
        left, moment = min(gaps)
        apart = gaps[0][0]
        if apart - left < _SLIGHT:
            continue
        taken = tuple(
            _towards(paths, a, b, one.begins, moment) / step for a, b in (pair, pair[::-1])
        )
        found.append(
            Meeting(
                stretch=number,
                letter=one.section.letter if one.section else "",
                dancers=pair,
                apart=apart / step,
                taken=(taken[0], taken[1]),
                left=left / step,
                count=moment - one.begins,
            )
        )
    return found


def _gap(paths: Paths, pair: tuple[int, int], moment: float) -> float:
    one, other = (paths.at(dancer, moment) for dancer in pair)
    return metres((one.x, one.y), (other.x, other.y))


def _towards(paths: Paths, dancer: int, other: int, begins: float, moment: float) -> float:
    """Metres that `dancer` has come nearer to where `other` began."""
    there = paths.at(other, begins)
    before, after = paths.at(dancer, begins), paths.at(dancer, moment)
    return metres((before.x, before.y), (there.x, there.y)) - metres(
        (after.x, after.y), (there.x, there.y)
    )
