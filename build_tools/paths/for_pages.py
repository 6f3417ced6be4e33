"""A dance as data from which a page puts any class down in any hall: small, always the same bytes.

Everything that neither the class nor the hall changes is worked out here: when each part begins,
who dances which moves, how far they go at that age. `site_overrides/sums/floor-*.js` do the rest as
`whole.py` does it here, and tests hold the two together.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from build_tools.model.dance import Groups, Section, Standing
from build_tools.movement.canon_and_unison import (
    left_unsaid,
    part_spans,
    parts_in,
    passage_counts,
)
from build_tools.movement.counts import seconds as seconds_of
from build_tools.movement.roles import part_places, places_danced, rows_marked
from build_tools.movement.watchers import watchers
from build_tools.movement.whole import lengths
from build_tools.paths.column_by_column import keeps_columns
from build_tools.paths.dancing import made_ready_of
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import KNOWN_HALLS, LINED, SIDES, side_named
from build_tools.paths.improvising import ends_how
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.reached import ASKED_OF, steps_reach
from build_tools.paths.walking import Move, whole_round
from build_tools.paths.whole import paths_of

_BEND, _FLAGS = 5, 8
"""Of a move as it is written, the values of which a 0 says no more than their absence."""
_SEEN = ("partner", "centre", "outwards")
_ENDS = tuple(
    f"{end} end of the {row} row" for row in ("front", "back") for end in ("left", "right")
)
_AIMS = ("partner", "centre", "home")


def paths_for_page(paths: Paths) -> str:
    """The dance as JSON. `site_overrides/sums/floor-whole.js` reads it."""
    return json.dumps(page_data(paths), separators=(",", ":"), ensure_ascii=False)


def page_data(paths: Paths) -> dict[str, Any]:
    """The same as plain values, by short names.

    pupils and hall: for whom it is drawn; halls: those with a name; names: the sides' own names;
    columned: whether the groups of a column belong together, if so;
    lined: where watchers sit; sizes: the groups of the dance and of its lessons; step, running, arm
    and wide: metres, metres a second, metres, and metres from the middle to the fingertips; reach:
    whether its steps have to get somewhere; moves: all different moves, as `_written` has them;
    sections: by letter; parts: sections and joins in order.
    """
    moves: dict[tuple[Any, ...], int] = {}
    sections = {
        one.section.letter: _section(paths, one.section, moves)
        for one in paths.stretches
        if one.section is not None
    }
    columned = {"columned": 1} if keeps_columns(paths.dance) else {}
    return columned | {
        "pupils": paths.dancers,
        "hall": [paths.hall.width, paths.hall.depth],
        "halls": {name: [hall.width, hall.depth] for name, hall in KNOWN_HALLS.items()},
        "names": dict(paths.dance.sides),
        "lined": sorted(LINED[watchers(paths.dance)]),
        "sizes": list(paths.sizes),
        "step": paths.body.step,
        "running": paths.body.running,
        "arm": paths.body.arm,
        "wide": paths.body.reach,
        "reach": steps_reach(
            paths_of(paths.dance, *ASKED_OF, paths.body.age, joined=paths.sizes),
        ),
        "moves": [list(move) for move in moves],
        "sections": sections,
        "parts": list(_parts(paths)),
    }


def _section(paths: Paths, section: Section, moves: dict[tuple[Any, ...], int]) -> dict[str, Any]:
    """size: of its groups; start and end; rows: names and places of who dances; danced: see below.

    odd: for groups of other sizes the places danced, where those are not numbers counted round.
    ends: for a section that is not counted, where they end: first, here, or new.
    """
    found: dict[str, Any] = {
        "size": groups_of(section).size,
        "start": _standing(section.start),
    }
    rows = rows_marked(section)
    if odd := _odd(groups_of(section)):
        found["odd"] = odd
    if rows:
        found["rows"] = [[name, list(places)] for name, places in rows]
    if section.counts is not None:
        return found | {"danced": list(_danced(paths, section, moves))}
    return found | {"ends": ends_how(section), "end": _standing(section.end)}


def _odd(groups: Groups) -> list[list[int]]:
    """Whole groups are never made of more than twice as many."""
    danced = [places_danced(groups, dancers) for dancers in range(1, 2 * groups.size + 2)]
    return [
        list(one) for one in danced if one != tuple(n % groups.size + 1 for n in range(len(one)))
    ]


def _standing(one: Standing) -> list[Any]:
    """Formation, facing, within, apart, groups apart, columns, the side that nobody faces, where
    larger groups stand, by its number in `_ENDS`, steps free by side, where a third stands, in how
    many clusters, and 1 where each group faces one way; what is not said is None."""
    apart, between = one.apart, one.groups_apart
    found = [
        one.formation,
        one.facing,
        one.within,
        None if apart is None else float(apart),
        None if between is None else float(between),
        one.columns,
        one.nobody_faces,
        _ENDS.index(one.larger_groups) if one.larger_groups else None,
        {side: float(steps) for side, steps in one.free} or None,
        one.third,
        one.clusters,
        1 if one.each_group_one_way else None,
    ]
    while found[-1] is None:
        found.pop()
    return found


def _danced(
    paths: Paths, section: Section, moves: dict[tuple[Any, ...], int]
) -> Iterator[list[Any]]:
    """Each part of each passage: who, the count it starts on, and the numbers of its moves.

    Who is the places of a group, or, where whole groups take turns, [-1, which turn, of how many].
    """
    dance, known, start = paths.dance, lengths(paths.dance), 0.0
    seconds = float(seconds_of(1, dance.tempo)) if dance.tempo else None
    groups = groups_of(section)
    for passage in section.danced:
        if left_unsaid(passage):
            continue
        places = part_places(groups, passage)
        spans = part_spans(passage, known)
        turns = parts_in(passage)
        for span in spans:
            if places is not None and span.part > len(places):
                continue  # more things than parts, which a rule tells: nobody is free to dance it
            who = [-1, span.part - 1, turns] if places is None else list(places[span.part - 1])
            begins = start + float(span.start)
            ready = made_ready_of(
                dance, section, span.what, begins, start + float(span.end), paths.body, seconds
            )
            written = (_written(paths, move, passage.towards) for move in ready)
            yield [who, begins, [moves.setdefault(one, len(moves)) for one in written]]
        start += float(passage_counts(passage, known))


def _written(paths: Paths, move: Move, towards: str | None) -> tuple[Any, ...]:
    """counts, metres, turns, way, level, bend, aim, facing asked for, 1 keeps facing + 2 zigzag
    + 4 round a ring, and by how many degrees.

    What is None or 0 at its end is left out.
    """
    whom = move.towards or towards
    aim: Any = None
    if whom is not None and move.way is not None:
        side = side_named(whom, paths.dance.sides)
        aim = SIDES[side] if side is not None else whom if whom in _AIMS else None
    facing = move.action.facing
    faced: Any = SIDES.get(facing or "", facing if facing in _SEEN else None)
    flags = int(move.keeps_facing) + 2 * (move.action.pathway == "zigzag")
    if move.action.goes_round:
        flags += 4
    found = [move.end - move.start, move.long, move.turns, move.way, move.level, move.bend]
    if not move.long:
        flags = 0
    found += [aim, faced, flags]
    if move.action.goes_round and move.action.turn_by is not None:
        found.append(whole_round(move))
    while found[-1] is None or (len(found) - 1 in (_BEND, _FLAGS) and not found[-1]):
        found.pop()
    return tuple(_plain(value) for value in found)


def _plain(value: Any) -> Any:
    """A number without a needless point."""
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _parts(paths: Paths) -> Iterator[dict[str, Any]]:
    """A section or a join: when it begins and how long it lasts, and how a section is come to."""
    before: StretchPaths | None = None
    for one in paths.stretches:
        found: dict[str, Any] = {"begins": one.begins, "lasts": one.lasts}
        if one.section is not None and one.start is not None:
            found["letter"] = one.section.letter
            found["spot"] = one.start.spot
            join = before if before is not None and before.section is None else None
            found["from"] = join.begins if join is not None else one.begins
            if one.start.by == "move":
                found["goes"] = True
                if one.start.seconds is not None:
                    found["most"] = paths.body.running * one.start.seconds
        yield {name: _plain(value) for name, value in found.items()}
        before = one


def roles_in(stretch: StretchPaths) -> tuple[int, ...]:
    """The row of each dancer in a section, by its number in `rows_marked`; -1 for none."""
    if stretch.section is None:
        return ()
    rows, groups = rows_marked(stretch.section), groups_of(stretch.section)
    found: dict[int, int] = {}
    for group in stretch.together:
        for dancer, place in zip(group, places_danced(groups, len(group)), strict=True):
            found[dancer] = next((r for r, (_, at) in enumerate(rows) if place in at), -1)
    return tuple(found[dancer] for dancer in range(len(found)))
