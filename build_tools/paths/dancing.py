"""A counted section danced: every dancer through what their part dances, from count to count."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from build_tools.body.ages import AtAge
from build_tools.model.dance import Dance, Passage, Section
from build_tools.movement.canon_and_unison import (
    latest,
    left_unsaid,
    part_spans,
    parts_in,
)
from build_tools.movement.development import actions_of
from build_tools.movement.roles import part_places, place_danced
from build_tools.movement.whole import lengths
from build_tools.paths.class_in_groups import Together
from build_tools.paths.facings import Three, in_threes, looked_at, partners
from build_tools.paths.going_round import passing
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import SIDES, Point, bearing, side_named
from build_tools.paths.walking import Aim, Dancer, Move, do, made_ready

Told = tuple[Move, str | None, tuple[int, ...]]
"""A move, what it goes towards, and the dancers who do it, by number."""
_SOON = 1e-9


@dataclass(frozen=True, slots=True)
class Room:
    """What dancers of a section need to know of those around them."""

    partner: dict[int, int]
    threes: dict[int, Three]
    """Two who share a partner, and that partner, by each of them."""
    mates: dict[int, tuple[int, ...]]
    """Everybody in a dancer's group, themselves too."""
    middle: Point
    """The middle of the floor, the centre of those who dance alone."""
    home: tuple[Point, ...]
    """Where everybody is as the section begins: their own mark, by number."""


def room_of(together: Together, pairs: Together, middle: Point, home: tuple[Point, ...]) -> Room:
    """Who is whose partner, by `pairs`, and in whose group, and where everybody begins."""
    mates = {dancer: group for group in together for dancer in group}
    return Room(partners(pairs), in_threes(pairs), mates, middle, home)


def dance_section(
    dancers: Sequence[Dancer],
    dance: Dance,
    section: Section,
    together: Together,
    begins: float,
    room: Room,
    body: AtAge,
    seconds: float | None,
) -> None:
    """Move `dancers` through the counts of `section`; a count lasts `seconds`, if that is known.

    Who still dances something else when their part begins comes in with the next action.
    """
    waiting = _in_turn(dance, section.letter, together, body, seconds)
    at = 0
    while at < len(waiting):
        start = waiting[at][0].start
        now = at
        while now < len(waiting) and waiting[now][0].start - start < _SOON:
            now += 1
        moment = begins + start
        ready = [
            (
                one,
                move,
                *_seen_before(dancers, one, move, towards, moment, room, dance),
                dancers[room.partner[one]].point_at(moment),
            )
            for move, towards, who in waiting[at:now]
            for one in who
            if dancers[one].busy_until <= moment + _SOON
        ]
        for one, move, aim, faced, partner in ready:
            dancers[one].busy_until = begins + move.end
            if not move.still:
                do(dancers[one], move, begins, aim, faced)
                if _curves_aside(move) and one != room.partner[one]:
                    last = dancers[one].legs[-1]
                    dancers[one].legs[-1] = passing(last, partner, body.arm)
        at = now


@lru_cache(maxsize=64)
def _in_turn(
    dance: Dance, letter: str, together: Together, body: AtAge, seconds: float | None
) -> tuple[Told, ...]:
    """What each is told to do in a section, by when it starts: the same in every hall."""
    told = _moves(dance, dance.sections[letter], together, body, seconds)
    return tuple(sorted(told, key=lambda row: row[0].start))


def _moves(
    dance: Dance, section: Section, together: Together, body: AtAge, seconds: float | None
) -> Iterator[Told]:
    """Each move, what it goes towards, and the dancers who do it."""
    known, start = lengths(dance), 0.0
    for passage in section.danced:
        if left_unsaid(passage):
            continue
        of_part = part_dancers(section, passage, together)
        spans = part_spans(passage, known)
        for span in spans:
            begins, ends = start + float(span.start), start + float(span.end)
            ready = made_ready_of(dance, section, span.what, begins, ends, body, seconds)
            # of more things than parts, the last have nobody to dance them
            for part in of_part[span.part - 1 : span.part]:
                for move in ready:
                    yield move, move.towards or passage.towards, part
        start += float(latest(spans))


def made_ready_of(
    dance: Dance,
    section: Section,
    what: str,
    start: float,
    end: float,
    body: AtAge,
    seconds: float | None,
) -> tuple[Move, ...]:
    """The actions of `what` from count `start` to `end`, as far as the section lasts."""
    found: list[Move] = []
    end = min(end, float(section.counts or 0))
    for action in actions_of(dance, what):
        last = min(start + float(action.counts), end)
        if last - start < _SOON:
            break
        limit = float("inf") if seconds is None else body.running * (last - start) * seconds
        found.append(_behind(found, made_ready(action, start, last, body, limit)))
        start = last
    return tuple(found)


def _behind(before: Sequence[Move], move: Move) -> Move:
    """A curved way to one side, bent behind the dancer where it brings home one that went in front.

    Out in front of somebody and home behind them is one round; bent twice the same way, nobody
    would have been gone round.
    """
    out = next((one for one in reversed(before) if _curves_aside(one)), None)
    if out is None or not _curves_aside(move) or out.way is None or move.way != -out.way:
        return move
    return replace(move, bend=-move.bend) if _in_front(out) else move


def _curves_aside(move: Move) -> bool:
    return move.keeps_facing and move.action.pathway == "curved" and not move.action.goes_round


def _in_front(move: Move) -> bool:
    """Whether it bends to the side that who goes it faces."""
    return move.way is not None and move.bend * move.way > 0


def part_dancers(
    section: Section, passage: Passage, together: Together
) -> tuple[tuple[int, ...], ...]:
    """The dancers of each part of a passage, by number.

    Where a part is more than one place, whole groups are dealt to the parts in turn.
    """
    groups = groups_of(section)
    places = part_places(groups, passage)
    if places is None:
        parts = parts_in(passage)
        return tuple(
            tuple(one for group in together[n::parts] for one in group) for n in range(parts)
        )
    return tuple(
        tuple(
            dancer
            for group in together
            for n, dancer in enumerate(group, start=1)
            if set(place_danced(n, groups, len(group))) & set(at)
        )
        for at in places
    )


def _seen_before(
    dancers: Sequence[Dancer],
    one: int,
    move: Move,
    towards: str | None,
    moment: float,
    room: Room,
    dance: Dance,
) -> tuple[Aim, float | None]:
    """What a dancer's move goes towards and faces; who only rises or sinks looks at nobody."""
    if move.level_alone:
        return None, None
    aim = _aim(dancers, one, move, towards, moment, room, dance)
    return aim, _faced(dancers, one, move.action.facing, moment, room)


def _aim(
    dancers: Sequence[Dancer],
    one: int,
    move: Move,
    towards: str | None,
    moment: float,
    room: Room,
    dance: Dance,
) -> Aim:
    """What a dancer's move goes towards, as it is when the move starts."""
    if towards is None or move.way is None:
        return None
    side = side_named(towards, dance.sides)
    if side is not None:
        return SIDES[side]
    return _seen(dancers, one, towards, moment, room)


def _seen(
    dancers: Sequence[Dancer], one: int, whom: str, moment: float, room: Room
) -> Point | None:
    """Where a dancer sees a partner, the centre or their own mark; None where they are there."""
    here = dancers[one].point_at(moment)
    if whom == "home":
        there = room.home[one]
    elif whom == "partner":
        there = looked_at(
            one,
            room.partner[one],
            room.threes.get(one),
            lambda mate: dancers[mate].point_at(moment),
        )
    elif whom in ("centre", "outwards"):
        mates = room.mates[one]
        points = [dancers[mate].point_at(moment) for mate in mates]
        there = room.middle
        if len(mates) > 1:
            there = (
                sum(x for x, _ in points) / len(mates),
                sum(y for _, y in points) / len(mates),
            )
    else:
        return None
    near = abs(there[0] - here[0]) < _SOON and abs(there[1] - here[1]) < _SOON
    return None if near and whom != "home" else there


def _faced(
    dancers: Sequence[Dancer], one: int, facing: str | None, moment: float, room: Room
) -> float | None:
    """The degrees of a facing by its name; None where a dancer keeps their own."""
    if facing is None:
        return None
    if facing in SIDES:
        return SIDES[facing]
    there = _seen(dancers, one, facing, moment, room)
    if there is None:
        return None
    return (bearing(dancers[one].point_at(moment), there) + 180 * (facing == "outwards")) % 360
