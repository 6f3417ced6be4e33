"""Paths as data for a page: small, and the same bytes for the same dance.

Lengths are in millimetres, directions in tenths of degrees, moments in thousandths of a count (or
of a second where nothing is counted). Dancers who do the same share it: `moves` are all different
moves, `ways` all different rows of moves, and each dancer has a place to begin and a way.
"""

from __future__ import annotations

import json
from typing import Any

from build_tools.movement.roles import rows_of
from build_tools.movement.watchers import watchers
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.legs import Leg
from build_tools.paths.model import Paths, StretchPaths

_FINE, _TENTHS = 1000, 10


def paths_for_page(paths: Paths) -> str:
    """The paths as JSON. `site_overrides/playing/paths.js` reads it."""
    return json.dumps(page_data(paths), separators=(",", ":"), ensure_ascii=False)


def page_data(paths: Paths) -> dict[str, Any]:
    """The same as plain values, by short names.

    hall: width and depth; names: the sides' own names; parts: sections and joins in order;
    moves: start, lasts, right, back, turn, level, bend, 1 for a zigzag, later zeros left out;
    ways: numbers of moves; dancers: x, y, facing, level, way.
    """
    moves: dict[tuple[int, ...], int] = {}
    ways: dict[tuple[int, ...], int] = {}
    dancers = []
    for first, legs in zip(paths.at_first, paths.legs, strict=True):
        way = tuple(moves.setdefault(_move(leg), len(moves)) for leg in legs)
        dancers.append(
            [
                _thousandths(first.x),
                _thousandths(first.y),
                round(first.facing * _TENTHS) % 3600,
                round(first.level),
                ways.setdefault(way, len(ways)),
            ]
        )
    return {
        "hall": [paths.hall.width, paths.hall.depth],
        "names": dict(paths.dance.sides),
        "watchers": watchers(paths.dance),
        "parts": [_part(one) for one in paths.stretches],
        "moves": [list(move) for move in moves],
        "ways": [list(way) for way in ways],
        "dancers": dancers,
    }


def _move(leg: Leg) -> tuple[int, ...]:
    found = [
        _thousandths(leg.start),
        _thousandths(leg.end - leg.start),
        _thousandths(leg.x1 - leg.x0),
        _thousandths(leg.y1 - leg.y0),
        round((leg.face1 - leg.face0) * _TENTHS),
        leg.level1,
        _thousandths(leg.bend),
        int(leg.zigzag and bool(leg.bend)),
    ]
    while len(found) > 3 and not found[-1]:
        found.pop()
    return tuple(found)


def _part(one: StretchPaths) -> dict[str, Any]:
    """A section or a join: when it begins and how long it lasts, and for a section who is who.

    roles: their names; who: each dancer's role by its number in them, -1 for none.
    """
    found: dict[str, Any] = {
        "begins": _thousandths(one.begins),
        "lasts": _thousandths(one.lasts),
        "counted": one.counted,
    }
    if one.section is None:
        return found
    names = [name for name, _ in rows_of(one.section)]
    found |= {"letter": one.section.letter, "example": not one.counted}
    if one.section.name:
        found["name"] = one.section.name
    if names:
        found |= {"roles": names, "who": list(roles_in(one))}
    return found


def roles_in(stretch: StretchPaths) -> tuple[int, ...]:
    """The row of each dancer in a section, by its number in `rows_of`; -1 for none."""
    if stretch.section is None:
        return ()
    rows, size = rows_of(stretch.section), groups_of(stretch.section).size
    found: dict[int, int] = {}
    for group in stretch.together:
        for n, dancer in enumerate(group):
            place = n % size + 1
            found[dancer] = next((r for r, (_, at) in enumerate(rows) if place in at), -1)
    return tuple(found[dancer] for dancer in range(len(found)))


def _thousandths(value: float) -> int:
    return round(value * _FINE)
