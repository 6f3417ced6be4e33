"""The strokes at a hand or the head that moves while the feet stand."""

from __future__ import annotations

import math
from dataclasses import replace

from build_tools.body.balance import inside
from build_tools.body.gesturing import points_aside, pulled_away
from build_tools.body.hands import knocks_twice, struck
from build_tools.body.moves import Move, rises
from build_tools.body.poses import Moved, pose_at
from build_tools.body.skeleton import ArmJoints, Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import HEAD, PALE, Point, View, torso, track, whole
from build_tools.views.diagrams.body_views import SIDE
from build_tools.views.diagrams.body_ways import number
from build_tools.views.diagrams.svg import el

AGAIN = ("clap", "snap", "ripple", "knock", "pat", "flick")
"""What hands do from where they are drawn back to, there and maybe back again, so that its start
and its end are no way."""
_TICKED = ("clap", "ripple", "knock", "pat")
_THROWN = ("snap", "flick")
_SURFACE = 13.0
"""Half the length of what hands knock or pat on."""
_LEANS = ("lean", "bow")
_LEAST, FREE = 22.0, 26.0
"""How long, in units, the arrow of a lean is at least, and that of a hand that goes on."""
_REACH = 34.0
"""How far in front, on the page, a hand is that is about to be pulled back."""
SQUEEZE = 11.0
"""How long the arrows are that press a body together."""
_ROPE = 16.0
"""How long the line is by which a hand is pulled."""
_WAYS = {"forwards": (1.0, 0.0), "backwards": (-1.0, 0.0), "up": (0.0, -1.0), "down": (0.0, 1.0)}
"""As they are seen from the side."""


def part_ways(done: Moved, seen: View, start: Skeleton, end: Skeleton) -> list[str]:
    """What is drawn at the part that moves most."""
    move = done.move
    pairs = [(start.right_arm, end.right_arm), (start.left_arm, end.left_arm)]
    if struck(move):
        return _on_something(done, seen, start, end)
    if move.manner in _THROWN and end.pose.spread:
        return _both_hands(done, seen, pairs)
    if move.manner in _TICKED:
        return _ticks(done, seen, end)
    if move.manner in _LEANS:
        return [leant(done, seen, start, end)]
    if move.part == "head":
        return head_turned(done, seen, end)
    if move.manner == "point":
        return _pointed(done, seen, end)
    if goes_on(done):
        return _away(done, [seen.at(arm.tip) for _, arm in pairs])
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
    return el("path", d=f"M{whole(x):g} {whole(y) + 2:g}v-13", stroke_width=2.5)


def _ticks(done: Moved, seen: View, end: Skeleton) -> list[str]:
    """At each hand, or once where both do one thing."""
    move = done.move
    hands = []
    for arm in (end.right_arm, end.left_arm):
        (x, y), (rx, ry) = seen.at(arm.tip), seen.at(arm.wrist)
        hands.append(((x, y), math.degrees(math.atan2(y - ry, x - rx))))
    if move.manner == "ripple":
        return [arrows.ticks(*hand) for hand in hands]
    (x, y), out = max(hands, key=lambda hand: hand[0][0])
    return [arrows.ticks((x, y), out, 3, 7)]


def _on_something(done: Moved, seen: View, start: Skeleton, end: Skeleton) -> list[str]:
    """What hands knock or pat on, the way there, and how often where it is more than once.

    The hands of a knock are before the body, those that go low or pat are above what they touch.
    """
    move = done.move
    (_, y0), (x, y) = (
        max((seen.at(arm.tip) for arm in (body.right_arm, body.left_arm)), key=lambda at: at[0])
        for body in (start, end)
    )
    down = move.manner == "pat" or move.direction == "down"
    feel = move.feel - {"indirect", "bound"}
    if down:
        surface = track([(x - _SURFACE, y + 6), (x + _SURFACE, y + 6)])
        way = [(x + 9, min(y0, y - 24)), (x + 9, y - 2)]
    else:
        surface = track([(x + 7, y - 2 * _SURFACE), (x + 7, y + _SURFACE)])
        way = [(x - 18, y - 16), (x + 1, y - 16)]
    pieces = [thought_of(surface), arrows.stroke(way, feel)]
    if knocks_twice(move):
        pieces.append(number("2×", x + (32 if down else 20) + FREE, y + 14))
    return pieces


def _both_hands(done: Moved, seen: View, pairs: list[tuple[ArmJoints, ArmJoints]]) -> list[str]:
    """Beside each hand, from where it is drawn back to where it is thrown or shut; a flick ends
    in ticks beyond the fingers. One stroke for both, in small."""
    snaps = done.move.manner == "snap"
    feel = done.move.feel - ({"indirect"} if snaps else {"indirect", "sudden"})
    ways, more = [], ""
    for first, last in pairs:
        (x0, y0), (x1, y1) = seen.at(first.tip), seen.at(last.tip)
        if snaps:
            ways.append([(x0, y0 - 13), (x1 + (x0 - x1) * 0.2, y1 - 13)])
            continue
        aside, wrist = (10.0 if x1 > seen.x else -10.0), seen.at(last.wrist)
        ways.append([(x0 + aside, y0), (x1 + aside, y1 + 4)])
        more += arrows.tick_marks(
            (x1, y1), math.degrees(math.atan2(y1 - wrist[1], x1 - wrist[0])), 2, 11
        )
    return [arrows.strokes(ways, feel, more)]


def leant(done: Moved, seen: View, start: Skeleton, end: Skeleton) -> str:
    """Over the head, the way that it goes."""
    return arrows.stroke(head_way(done, seen, start, end), done.move.feel - {"indirect"})


def head_way(
    done: Moved, seen: View, start: Skeleton, end: Skeleton, least: float = _LEAST, bends: int = 6
) -> list[Point]:
    """The places of that, in so many pieces; no shorter than is plain to see."""
    (x0, y0), (x1, y1) = seen.at(start.head), seen.at(end.head)
    base = seen.at(end.pelvis)
    first = math.atan2(y0 - base[1], x0 - base[0])
    last = math.atan2(y1 - base[1], x1 - base[0])
    high = math.hypot(x1 - base[0], y1 - base[1]) + 17
    least *= 1.6 if {"sustained", "bound"} & done.move.feel else 1.0
    if abs(last - first) * high < least:
        # dots and a bar have no room on less
        first = last - math.copysign(least / high, last - first)
    turns = [first + (last - first) * n / bends for n in range(bends + 1)]
    return [(base[0] + high * math.cos(a), base[1] + high * math.sin(a)) for a in turns]


def goes_on(done: Moved) -> bool:
    """Whether the arrow goes straight on from the hand: what pulls it, or what it presses."""
    move = done.move
    onwards = pulled_away(move) or move.manner in ("press", "point")
    return move.kind == "gesture" and onwards


def _pointed(done: Moved, seen: View, end: Skeleton) -> list[str]:
    """One finger long, and the way that it shows."""
    arm = max((end.right_arm, end.left_arm), key=lambda arm: math.dist(arm.tip, end.pelvis))
    (x, y), (ex, ey) = seen.at(arm.tip), seen.at(arm.elbow)
    long = math.dist((x, y), (ex, ey)) or 1.0
    c, s = (x - ex) / long, (y - ey) / long
    finger_, first, last = ((x + far * c, y + far * s) for far in (9.0, 17.0, 17.0 + FREE))
    way = arrows.stroke([first, last], done.move.feel - {"indirect"})
    return [el("path", d=track([(x, y), finger_]), stroke_width=3), way]


def pulled_to_hip(move: Move, seen: View, end: Skeleton) -> tuple[list[str], float]:
    """The arm that steps pull back, pale where it reaches out in front, the way of its hand to the
    hip, and how far all that goes on the page: without the arm in front, a hand drawn back was
    read as a hand on the hip."""
    arm = min((end.right_arm, end.left_arm), key=lambda arm: arm.elbow.z)
    (sx, sy), (x, y) = seen.at(arm.shoulder), seen.at(arm.tip)
    reach = sx + _REACH
    before = el("path", d=track([(sx, sy), (reach, sy + 4)]), opacity=PALE)
    fist = el("path", d=f"M{whole(reach):g} {whole(sy + 4):g}h0", stroke_width=9.5, opacity=PALE)
    (x0, y0), (bx, by), (x1, y1) = (reach, sy + 15), (reach - 2, y + 2), (x + HEAD + 2, y)
    bow = [((1 - t) ** 2, 2 * t * (1 - t), t * t) for t in (n / 6 for n in range(7))]
    points = [(a * x0 + b * bx + c * x1, a * y0 + b * by + c * y1) for a, b, c in bow]
    feel = move.feel - {"indirect", "bound", "free", "sustained"}
    return [before, fist, arrows.stroke(points, feel)], reach + 6


def pressed_in(move: Move) -> bool:
    """Whether a stillness is tall and narrow, and held together: it looks like standing."""
    return move.kind == "stillness" and move.manner == "tall" and "bound" in move.feel


def squeezed(done: Moved, seen: View, body: Skeleton) -> tuple[str, float]:
    """From both sides, in to the body; and how far to the right that goes on the page."""
    high = seen.at(body.breast)[1] - 2
    arms = [
        place
        for arm in (body.right_arm, body.left_arm)
        for place in (arm.elbow, arm.wrist, arm.tip)
    ]
    level = [(x, y) for x, y in (*torso(body, seen), *map(seen.at, arms)) if abs(y - high) < 16]
    left, right = min(x for x, _ in level) - 6, max(x for x, _ in level) + 6
    ways = [[(left - SQUEEZE, high), (left, high)], [(right + SQUEEZE, high), (right, high)]]
    return arrows.strokes(ways, {"light"} & done.move.feel), right + SQUEEZE


def thought_of(surface: str) -> str:
    """Something that is touched or struck, in dashes: nobody knocks on wood for it."""
    return el("path", d=surface, stroke_width=2.5, stroke_dasharray="4 5")


def heel_lifted(seen: View, end: Skeleton) -> str:
    """Under the heel that is further back, up: on tiptoe."""
    x = min(seen.at(leg.heel)[0] for leg in (end.right_leg, end.left_leg)) - 5
    return on_toes(x, -1.0)


def on_toes(x: float, y: float) -> str:
    """A small arrow up from the floor."""
    return arrows.stroke([(x, y), (x, y - 16.0)], frozenset({"light"}))


def room_beside(done: Moved) -> float:
    """How much room strokes take to the right of both bodies, in units."""
    move = done.move
    if struck(move):
        return 2 * FREE + 34 if knocks_twice(move) else 18
    if pulled_away(move) and move.kind == "gesture":
        return FREE + _ROPE
    return FREE if goes_on(done) else 10


def _away(done: Moved, tips: list[Point]) -> list[str]:
    """From the hand that is furthest on the way; what pulls it has it on a line."""
    move = done.move
    right, down = _WAYS.get(move.direction or "forwards", _WAYS["forwards"])
    tip = max(tips, key=lambda at: at[0] * right + at[1] * down)
    first, pieces = 8.0, []
    if move.manner == "press" and right:
        down = -0.6 if rises(move) else 0.6
    elif move.manner != "press":
        first = _ROPE
        ends = [tip, (tip[0] + _ROPE * right, tip[1] + _ROPE * down)]
        pieces.append(el("path", d=track(ends), stroke_width=1.5))
    points = [(tip[0] + far * right, tip[1] + far * down) for far in (first, first + FREE)]
    return [*pieces, arrows.stroke(points, move.feel - {"indirect"})]


def _hand_arrow(done: Moved, seen: View, side: int) -> str:
    """Along the way of the hand that moves most, a little outside it."""
    points: list[Point] = []
    for n in range(7):
        body = skeleton(pose_at(replace(done, move=replace(done.move, feel=frozenset())), n / 6))
        arm = (body.right_arm, body.left_arm)[side]
        (x, y), (sx, sy) = seen.at(arm.tip), seen.at(arm.shoulder)
        long = math.hypot(x - sx, y - sy) or 1.0
        points.append((x + 9 * (x - sx) / long, y + 9 * (y - sy) / long))
    body_at = seen.at(body.pelvis)[0] + 8 if seen.degrees >= SIDE else -math.inf
    clear = [at for at in points if at[0] > body_at and not _over(at, seen, body)]
    points = clear if len(clear) > 1 else points
    return arrows.stroke(points, done.move.feel - {"indirect"})


def _over(at: Point, seen: View, body: Skeleton) -> bool:
    """Whether a stroke there would lie on the trunk, where nobody sees it."""
    return inside(at, torso(body, seen)) > -5
