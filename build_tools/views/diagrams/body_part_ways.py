"""The strokes at a hand or the head that moves while the feet stand."""

from __future__ import annotations

import math
from dataclasses import replace

from build_tools.body.gesturing import points_aside, pulled_away, there_and_agains
from build_tools.body.moves import rises
from build_tools.body.poses import Moved, pose_at
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import HEAD, Point, View, track, whole
from build_tools.views.diagrams.svg import el

AGAIN = ("clap", "snap", "ripple", "knock")
"""What hands do there and back again, so that its start and its end are no way."""
_TICKED = (*AGAIN, "flick", "pat")
_AT_BOTH = ("snap", "ripple", "flick")
_LEANS = ("lean", "bow")
_LEAST, FREE = 22.0, 26.0
"""How long, in units, the arrow of a lean is at least, and that of a hand that goes on."""
_WAYS = {"forwards": (1.0, 0.0), "backwards": (-1.0, 0.0), "up": (0.0, -1.0), "down": (0.0, 1.0)}
"""As they are seen from the side."""


def part_ways(done: Moved, seen: View, start: Skeleton, end: Skeleton) -> list[str]:
    """What is drawn at the part that moves most."""
    move = done.move
    pairs = [(start.right_arm, end.right_arm), (start.left_arm, end.left_arm)]
    if move.manner in _TICKED:
        return _ticks(done, seen, end)
    if move.manner in _LEANS:
        return [_lean(done, seen, start, end)]
    if move.part == "head":
        return head_turned(done, seen, end)
    if goes_on(done):
        return [_away(done, [seen.at(arm.tip) for _, arm in pairs])]
    moved_most = max(pairs, key=lambda pair: math.dist(seen.at(pair[0].tip), seen.at(pair[1].tip)))
    if move.kind == "gesture" and points_aside(move):
        # the other arm may fall further, but it is the one that points that is the move
        moved_most = max(
            pairs, key=lambda pair: seen.at(pair[1].shoulder)[1] - seen.at(pair[1].tip)[1]
        )
    side = pairs.index(moved_most)
    if math.dist(seen.at(moved_most[0].tip), seen.at(moved_most[1].tip)) < 8:
        return []
    return [_hand_arrow(done, seen, side)]


def head_turned(done: Moved, seen: View, end: Skeleton) -> list[str]:
    """A nose, and an arrow round the face the way that the head goes."""
    move = done.move
    (x, y), (cx, cy), (tx, ty) = seen.at(end.head), seen.at(end.chin), seen.at(end.crown)
    long = math.hypot(tx - cx, ty - cy) or 1.0
    ahead = math.atan2((tx - cx) / long, -(ty - cy) / long)
    c, s = math.cos(ahead), math.sin(ahead)
    nose = track([(x + HEAD * c, y + HEAD * s), (x + (HEAD + 4) * c, y + (HEAD + 4) * s)])
    turns = [math.radians(40 - 110 * n / 8) for n in range(9)]
    points = [(x + 20 * math.cos(a), y + 20 * math.sin(a)) for a in turns]
    if not (rises(move) or move.end == "high"):
        points.reverse()
    feel = move.feel - {"indirect"}
    return [el("path", d=nose, stroke_width=4), arrows.stroke(points, feel)]


def finger(seen: View, end: Skeleton) -> str:
    """One finger upright before the lips."""
    x, y = seen.at(end.right_arm.tip)
    x = max(x, seen.at(end.head)[0] + HEAD + 2.5)
    return el("path", d=f"M{whole(x):g} {whole(y) + 2:g}v-11", stroke_width=3)


def _ticks(done: Moved, seen: View, end: Skeleton) -> list[str]:
    """At each hand, or once where both do one thing."""
    move = done.move
    hands = []
    for arm in (end.right_arm, end.left_arm):
        (x, y), (rx, ry) = seen.at(arm.tip), seen.at(arm.wrist)
        hands.append(((x, y), math.degrees(math.atan2(y - ry, x - rx))))
    if move.manner in _AT_BOTH:
        return [arrows.ticks(*hand) for hand in hands]
    (x, y), out = max(hands, key=lambda hand: hand[0][0])
    if move.manner == "pat":
        return [arrows.ticks((x, y), 90.0, away=7)]
    count = there_and_agains(move) if move.manner == "knock" else 3
    return [arrows.ticks((x, y), 0.0 if move.manner == "knock" else out, count, 7)]


def _lean(done: Moved, seen: View, start: Skeleton, end: Skeleton) -> str:
    """Over the head, the way that it goes."""
    (x0, y0), (x1, y1) = seen.at(start.head), seen.at(end.head)
    base = seen.at(end.pelvis)
    first = math.atan2(y0 - base[1], x0 - base[0])
    last = math.atan2(y1 - base[1], x1 - base[0])
    high = math.hypot(x1 - base[0], y1 - base[1]) + 17
    if abs(last - first) * high < _LEAST:
        first = last - math.copysign(_LEAST / high, last - first)
    turns = [first + (last - first) * n / 6 for n in range(7)]
    points = [(base[0] + high * math.cos(a), base[1] + high * math.sin(a)) for a in turns]
    return arrows.stroke(points, done.move.feel - {"indirect"})


def goes_on(done: Moved) -> bool:
    """Whether the arrow goes straight on from the hand: what pulls it, or what it presses."""
    move = done.move
    return move.kind == "gesture" and (pulled_away(move) or move.manner == "press")


def _away(done: Moved, tips: list[Point]) -> str:
    """From the hand that is furthest on the way."""
    move = done.move
    right, down = _WAYS.get(move.direction or "forwards", _WAYS["forwards"])
    tip = max(tips, key=lambda at: at[0] * right + at[1] * down)
    if move.manner == "press" and right:
        down = -0.6 if rises(move) else 0.6
    points = [(tip[0] + far * right, tip[1] + far * down) for far in (8.0, 8.0 + FREE)]
    return arrows.stroke(points, move.feel - {"indirect"})


def _hand_arrow(done: Moved, seen: View, side: int) -> str:
    """Along the way of the hand that moves most, a little outside it."""
    points: list[Point] = []
    for n in range(7):
        body = skeleton(pose_at(replace(done, move=replace(done.move, feel=frozenset())), n / 6))
        arm = (body.right_arm, body.left_arm)[side]
        (x, y), (sx, sy) = seen.at(arm.tip), seen.at(arm.shoulder)
        long = math.hypot(x - sx, y - sy) or 1.0
        points.append((x + 9 * (x - sx) / long, y + 9 * (y - sy) / long))
    return arrows.stroke(points, done.move.feel - {"indirect"})
