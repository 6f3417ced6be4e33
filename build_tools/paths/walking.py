"""One dancer doing one action: where it takes them, how they face after it, at which level."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from build_tools.body.ages import AtAge
from build_tools.model.dance import Action
from build_tools.paths.hall import Point, ahead, bearing, metres
from build_tools.paths.legs import BEND, LEVELS, MIDDLE, ZIG, Leg, Moment, during
from build_tools.paths.steps import way_long

Aim = Point | float | None
"""What a way goes towards: a point, a side of the hall in degrees, or only where one faces."""
_TURNS = {"quarter": 90.0, "half": 180.0, "three quarters": 270.0, "whole": 360.0}
_SLIGHT = 1e-6
_RELATIVE = {"forwards": 0.0, "backwards": 180.0}
_ASIDE = {"sideways": 90.0, "diagonal": 45.0}


@dataclass(slots=True)
class Dancer:
    """A dancer on the way: where they are after their last leg."""

    x: float
    y: float
    facing: float
    level: int = MIDDLE
    legs: list[Leg] = field(default_factory=list)
    busy_until: float = 0.0
    """The moment at which what they dance now is over."""

    def point_at(self, moment: float) -> Point:
        """Where they are at a moment that is not before their last leg."""
        if self.legs and moment < self.legs[-1].end:
            found = during(self.legs[-1], moment)
            return (found.x, found.y)
        return (self.x, self.y)

    def now(self) -> Moment:
        """Where they are when all is done."""
        return Moment(self.x, self.y, self.facing % 360, self.level)


@dataclass(frozen=True, slots=True)
class Move:
    """An action made ready: all of it that is the same for every dancer who does it."""

    action: Action
    start: float
    """Counts from the start of what is danced."""
    end: float
    long: float
    """Metres over the floor."""
    turns: float | None
    """Degrees clockwise, where it turns and does not say where it ends facing."""
    way: float | None
    """Degrees from where the dancer faces; None where it stays on the spot."""
    level: int | None
    bend: float
    keeps_facing: bool
    """Whether a dancer goes sideways, and so does not turn to where they go."""
    towards: str | None
    still: bool
    """Whether nothing of it is seen from above."""
    level_alone: bool
    """Whether nothing but the level may change."""


def made_ready(action: Action, start: float, end: float, body: AtAge, most: float) -> Move:
    """An action of which the counts from `start` to `end` are danced, and `most` metres gone."""
    share = (end - start) / float(action.counts)
    long = min(way_long(action, body) * share, most)
    side = -1.0 if action.side == "left" else 1.0
    turns = None
    if "turn" in action.kinds:
        turns = side * share * _TURNS.get(action.turn_by or "whole", 0.0)
    direction = "sideways" if action.step == "side-step" and not action.direction else None
    direction = direction or action.direction or "forwards"
    way = _RELATIVE.get(direction, side * _ASIDE.get(direction, 0.0)) if long else None
    if long and action.goes_round:
        way = side * _ASIDE["sideways"]  # as who looks in sees it, whichever way they face then
    part = BEND if action.pathway == "curved" else ZIG if action.pathway == "zigzag" else 0.0
    if direction in _ASIDE:
        part *= side  # to the side the dancer faces
    elif (action.side == "right") != (direction == "backwards") and action.side:
        part = -part
    level = LEVELS.get((action.level or "").split(" ")[-1])
    on_the_spot = not long and turns is None and action.facing is None
    return Move(
        action=action,
        start=start,
        end=end,
        long=long,
        turns=turns,
        way=way,
        level=level,
        bend=long * part,
        keeps_facing=direction in _ASIDE,
        towards=action.towards,
        still=on_the_spot and level is None,
        level_alone=on_the_spot,
    )


def do(dancer: Dancer, move: Move, begins: float, aim: Aim, faced: float | None) -> None:
    """Let `dancer` do `move` of what begins at the moment `begins`.

    `aim` is what it goes towards; `faced` is the facing that it asks for, in degrees.
    """
    if move.level_alone:
        _rise_or_sink(dancer, move, begins)
        return
    if isinstance(aim, tuple) and move.action.goes_round:
        _round(dancer, move, begins, aim)
        return
    face0 = dancer.facing
    face1, way = _turned(dancer, move, aim, faced)
    x1, y1 = dancer.x, dancer.y
    bend = 0.0
    if way is not None:
        long = move.long
        if isinstance(aim, tuple):
            long = min(long, metres((dancer.x, dancer.y), aim))
        dx, dy = ahead(way)
        x1, y1 = dancer.x + dx * long, dancer.y + dy * long
        bend = move.bend * long / move.long
    level = dancer.level if move.level is None else move.level
    leg = Leg(
        begins + move.start,
        begins + move.end,
        dancer.x,
        dancer.y,
        x1,
        y1,
        face0,
        face1,
        dancer.level,
        level,
        bend,
        move.action.pathway == "zigzag",
    )
    dancer.legs.append(leg)
    dancer.x, dancer.y, dancer.facing, dancer.level = x1, y1, face1 % 360, level


def _round(dancer: Dancer, move: Move, begins: float, centre: Point) -> None:
    """Along the ring about `centre`: all the way, or as far as the steps reach.

    Sideways one looks in; forwards one looks along the ring, and in again on the last count. With
    `turn_by: whole` the steps are as long as it takes to come back to one's place. The ring is
    walked along its chords, one for each count.
    """
    x, y = dancer.x - centre[0], dancer.y - centre[1]
    wide = math.hypot(x, y)
    whole = whole_round(move)
    right = move.action.side != "left"
    angle = math.radians(whole) if whole else move.long / wide
    chords = max(1, math.floor(move.end - move.start + 0.5))
    level = dancer.level if move.level is None else move.level
    step = (move.end - move.start) / chords
    for n in range(1, chords + 1):
        turned = angle * n / chords * (-1 if right else 1)
        x1 = centre[0] + x * math.cos(turned) - y * math.sin(turned)
        y1 = centre[1] + x * math.sin(turned) + y * math.cos(turned)
        along = 0.0 if move.keeps_facing or n == chords else 90.0 if right else -90.0
        face1 = nearest_turn(dancer.facing, bearing((x1, y1), centre) + along)
        start = begins + move.start + step * (n - 1)
        dancer.legs.append(
            Leg(
                start,
                start + step,
                dancer.x,
                dancer.y,
                x1,
                y1,
                dancer.facing,
                face1,
                dancer.level,
                level,
            )
        )
        dancer.x, dancer.y, dancer.facing, dancer.level = x1, y1, face1 % 360, level


def whole_round(move: Move) -> float:
    """How far round its ring a move says that it goes, in degrees; 0 where its steps say it."""
    return _TURNS.get(move.action.turn_by or "", 0.0)


def _rise_or_sink(dancer: Dancer, move: Move, begins: float) -> None:
    """What changes the level and nothing else, as most moves on the spot do."""
    level = dancer.level if move.level is None else move.level
    if level != dancer.level:
        x, y, facing = dancer.x, dancer.y, dancer.facing
        dancer.legs.append(
            Leg(
                begins + move.start,
                begins + move.end,
                x,
                y,
                x,
                y,
                facing,
                facing,
                dancer.level,
                level,
            )
        )
        dancer.level = level


def _turned(
    dancer: Dancer, move: Move, aim: Aim, asked: float | None
) -> tuple[float, float | None]:
    """Which way the dancer faces after it, and which way they go; None where they stay."""
    face0 = dancer.facing
    if asked is None:
        face1 = face0 + (move.turns or 0.0)
    elif move.turns is None:
        face1 = nearest_turn(face0, asked)
    else:
        face1 = face0 + _less(asked - face0) if move.turns > 0 else face0 - _less(face0 - asked)
    if move.way is None:
        return face1, None
    if aim is None:
        from_ = face1 if asked is not None and move.turns is None else face0
        return face1, from_ + move.way
    if isinstance(aim, tuple) and metres((dancer.x, dancer.y), aim) < _SLIGHT:
        return face1, None
    way = aim if isinstance(aim, float) else bearing((dancer.x, dancer.y), aim)
    if asked is None and move.turns is None and not move.keeps_facing:
        face1 = nearest_turn(face0, way - move.way)
    return face1, way


def _less(turn: float) -> float:
    """A turn as degrees from 0 up to 360; what is 360 but for the last places of a sum is 0."""
    found = turn % 360
    return 0.0 if found > 360 - _SLIGHT else found


def nearest_turn(now: float, wanted: float) -> float:
    """The facing `wanted`, as the shorter turn from `now` reaches it; half a turn goes right."""
    turn = (wanted - now) % 360
    return now + (turn if turn <= 180 + 1e-9 else turn - 360)


def go_to(
    dancer: Dancer,
    place: Point,
    facing: float,
    start: float,
    end: float,
    most: float,
    bend: float = BEND / 2,
) -> None:
    """Let `dancer` go to `place` along a slight curve, `most` metres at most, and face so there."""
    here = (dancer.x, dancer.y)
    long = metres(here, place)
    part = min(1.0, most / long) if long else 1.0
    x1, y1 = here[0] + (place[0] - here[0]) * part, here[1] + (place[1] - here[1]) * part
    face1 = nearest_turn(dancer.facing, facing)
    if metres((x1, y1), here) < _SLIGHT and abs(face1 - dancer.facing) < _SLIGHT:
        return
    dancer.legs.append(
        Leg(
            start,
            end,
            *here,
            x1,
            y1,
            dancer.facing,
            face1,
            dancer.level,
            dancer.level,
            bend * long * part,
        )
    )
    dancer.x, dancer.y, dancer.facing = x1, y1, face1 % 360
