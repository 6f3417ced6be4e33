"""A section that is not counted: nobody knows the ways, so how far each may get, and an example.

The example is drawn, never judged: it is one way it may look.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.body.ages import AtAge
from build_tools.model.dance import Section
from build_tools.paths.class_in_groups import Together
from build_tools.paths.facings import facings_of
from build_tools.paths.hall import Area, Point
from build_tools.paths.starting import centres_of, shortest
from build_tools.paths.walking import Dancer, go_to

_PAUSE = 2.0
"""Seconds between one surge of the example and the next."""


def ends_how(section: Section) -> str:
    """Where dancers end a section that is not counted: first, here, or new places."""
    if section.end.spot == "first place":
        return "first"
    same = section.end.formation == section.start.formation
    return "here" if section.end.spot == "where they are" or same else "new"


def ends_at(
    section: Section,
    together: Together,
    here: tuple[Point, ...],
    first: tuple[Point, ...],
    area: Area,
    body: AtAge,
) -> tuple[Point, ...]:
    """Where each dancer of the example is at the end of a section that is not counted.

    Where they were, unless it ends in their first places or in another formation.
    """
    how = ends_how(section)
    if how == "first":
        return first
    if how == "here":
        return here
    return shortest(section.end, together, here, area, body)[0]


def improvise(
    dancers: Sequence[Dancer],
    section: Section,
    with_whom: tuple[Together, Together],
    begins: float,
    lasts: float,
    area: Area,
    body: AtAge,
    first: tuple[Point, ...],
) -> None:
    """Let `dancers` go through an example of a section that lasts so many seconds.

    `with_whom` are the groups, and those in which they have partners.
    Whoever still dances what was before, in an overlap, sets out when that is done.
    """
    together, pairs = with_whom
    here = tuple((dancer.x, dancer.y) for dancer in dancers)
    ends = ends_at(section, together, here, first, area, body)
    centres = centres_of(ends, together, area)
    faced = facings_of(section.end, ends, pairs, centres, area)
    until = begins + lasts
    for dancer, place, facing in zip(dancers, ends, faced, strict=True):
        sets_out = max(begins, dancer.busy_until)
        if sets_out < until:
            go_to(dancer, place, facing, sets_out, until, body.running * (until - sets_out))
