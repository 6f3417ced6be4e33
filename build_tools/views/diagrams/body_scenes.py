"""Where the bodies of a picture stand beside each other, and which stroke joins them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from build_tools.body.gesturing import slants
from build_tools.body.moves import Move, rises, weight_aside
from build_tools.body.poses import Moved
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import TALL, Point, View, body_lines, width_of
from build_tools.views.diagrams.body_part_ways import (
    AGAIN,
    FREE,
    finger,
    goes_on,
    head_turned,
    part_ways,
)
from build_tools.views.diagrams.body_turns import SPIRAL, eyes, ring, spiral
from build_tools.views.diagrams.body_views import SIDE, leftwards, view_of
from build_tools.views.diagrams.body_ways import over_floor, room_for

_EDGE, _GAP, _BESIDE = 6.0, 26.0, 8.0
_LOW_VIEW, _LOW_HEAD, _CURLED = 40.0, 0.62, 0.36
"""What is low is seen at least so far from the side, or its shape is hidden."""
_TWIST = 120.0
"""The most, in degrees, that the arrow of somebody says who turns on a chair and back."""


@dataclass(frozen=True, slots=True)
class Scene:
    """A picture's bodies and strokes, its floor at 0, `width` units wide."""

    width: float
    pieces: tuple[str, ...]


def scene(done: Moved) -> Scene:
    """The picture of an action."""
    move = done.move
    if move.kind == "stillness":
        return _held(done)
    if "jump" in move.kinds:
        return _jump(done)
    if move.kind == "turn":
        return _turn(done)
    start, end = skeleton(done.start), skeleton(done.shown)
    if move.kind == "travel" and done.body == "chair":
        return _on_the_spot(done)
    if move.kind == "gesture" and (move.manner in AGAIN or move.start == move.end):
        return _in_place(done, start, end)
    return _beside(done, start, end)


def _held(done: Moved) -> Scene:
    view = view_of(done)
    body = skeleton(done.shown)
    least, most = width_of(body, View(view))
    x = _EDGE - least
    pieces = [
        body_lines(body, View(view, x)),
        arrows.hold(x + most + 3, -TALL * body.crown.y * 0.5 - 6),
    ]
    if done.move.part == "lips" and not done.held:
        pieces.insert(1, finger(View(view, x), body))
    return Scene(x + most + 16, tuple(pieces))


def _beside(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """The start and the end beside each other, as far as the way there is long."""
    view, left = view_of(done), leftwards(done)
    start_view, end_view = _seen(start, view), _seen(end, view)
    sizes = [width_of(start, View(start_view)), width_of(end, View(end_view))]
    (a0, a1), (b0, b1) = sizes[::-1] if left else sizes
    room = _GAP
    if done.move.kind == "travel":
        room = room_for(done.move, done.body == "standing")
    winds = done.move.kind == "transfer" and done.move.manner == "wind"
    if winds:
        # its spiral goes round the body, wider than the body may be; nothing stands between the two
        room = _BESIDE
        b0, a1 = min(b0, -SPIRAL), max(a1, SPIRAL)
        b1, a0 = max(b1, SPIRAL), min(a0, -SPIRAL)
    x0 = _EDGE - a0
    x1 = x0 + a1 + room - b0
    gap = (x0 + a1 + 2, x1 + b0 - 3)
    ex, sx = (x0, x1) if left else (x1, x0)
    ends = gap[::-1] if left else gap
    pieces = [
        body_lines(start, View(start_view, sx), pale=True),
        body_lines(end, View(end_view, ex)),
    ]
    if done.move.kind == "travel":
        pieces.append(over_floor(done.move, ends, done.body == "standing"))
    elif done.move.kind == "gesture" and done.move.part == "head":
        pieces += head_turned(done, View(end_view, ex), end)
    elif winds:
        behind, before = spiral(*View(end_view, ex).at(end.breast), left, done.move.feel)
        pieces = [behind, *pieces, before]
    else:
        pieces.append(_level_arrow(done, (start, end), ends))
    return Scene(x1 + b1 + _EDGE, tuple(pieces))


def _seen(body: Skeleton, view: float) -> float:
    """From where a body is seen: what is low, further from the side."""
    if view < 0 or body.head.y >= _LOW_HEAD:
        return view
    return max(view, _LOW_VIEW if body.head.y >= _CURLED else SIDE)


def _level_arrow(done: Moved, bodies: tuple[Skeleton, Skeleton], gap: Point) -> str:
    start, end = bodies
    move, middle = done.move, (gap[0] + gap[1]) / 2
    if move.kind == "transfer" and weight_aside(move):
        high = -TALL * end.head.y
        low = max(high + 12, min(high + 26, -TALL * start.crown.y - 6))
        return arrows.arch(
            (gap[0], low), ((gap[0] + gap[1]) / 2, high - 4), (gap[1], high + 6), move.feel
        )
    rising = end.head.y > start.head.y if move.start == move.end else rises(move)
    down = -TALL * min(start.head.y, end.head.y) + 4
    up = min(down - 24, -TALL * max(start.head.y, end.head.y) + 4)
    points = [(middle, down), (middle, up)]
    if slants(move):
        points = [(gap[0], down), (gap[1], up)]
    return arrows.stroke(points if rising else points[::-1], move.feel)


def _in_place(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """One over the other: only a part of the body moves."""
    view, move = view_of(done), done.move
    if move.manner in AGAIN:
        start = skeleton(done.keys.moments[0].pose)
    sizes = [width_of(one, View(view)) for one in (start, end)]
    x = _EDGE + 10 - min(least for least, _ in sizes)
    seen = View(view, x)
    pieces = [body_lines(start, seen, pale=True), body_lines(end, seen)]
    if move.manner == "knock":
        # so near to the end that it would only blur it
        pieces = pieces[1:]
    pieces += part_ways(done, seen, start, end)
    more = FREE if goes_on(done) else 10
    return Scene(x + max(most for _, most in sizes) + _EDGE + more, tuple(pieces))


def _turn(done: Moved) -> Scene:
    """Round the feet; round the waist on a chair, which stays where it is.

    Who has turned round to face the reader has eyes; who has turned a quarter is seen over the
    start from the side.
    """
    view, move = view_of(done), done.move
    body = skeleton(replace(done.shown, turned=0.0))
    chair = done.body == "chair"
    turned = skeleton(done.end) if not chair and not move.there_and_back else body
    sizes = [width_of(one, View(view)) for one in (body, turned)]
    wide = 40.0 if done.body == "wheels" else 30.0
    x = _EDGE - min(-wide - 6, *(least for least, _ in sizes))
    seen = View(view, x)
    aside = abs(move.turn) % 180 == 90 and turned is not body
    pieces = [body_lines(body, seen, pale=True)] if aside else []
    pieces.append(body_lines(turned, seen))
    if abs(move.turn) == 180 and turned is not body:
        pieces.append(eyes(seen.at(turned.head)))
    height = -TALL * body.pelvis.y - 12 if chair else -14.0
    far = max(-_TWIST, min(_TWIST, move.turn)) if chair else move.turn
    pieces.append(ring(x, height, wide, far, move.feel, move.there_and_back or chair))
    return Scene(x + max(wide + 6, *(most for _, most in sizes)) + _EDGE, tuple(pieces))


def _on_the_spot(done: Moved) -> Scene:
    """Feet lifted by turns on a chair, which stays where it is."""
    view = view_of(done)
    moments = done.keys.moments
    one, other = skeleton(moments[0].pose), skeleton(moments[min(1, len(moments) - 1)].pose)
    least, most = width_of(one, View(view))
    x = _EDGE - least
    toe = View(view, x).at(one.right_leg.toe)
    pieces = (
        body_lines(other, View(view, x), pale=True),
        body_lines(one, View(view, x)),
        arrows.stroke([(toe[0] + 12, -1), (toe[0] + 12, -26)], done.move.feel, both_ways=True),
    )
    return Scene(max(x + most, toe[0] + 18) + _EDGE, pieces)


def _jump(done: Moved) -> Scene:
    """Bent knees, the body in the air, bent knees again; seated, a fold and a throw."""
    view, moments = view_of(done), done.keys.moments
    first, peak = skeleton(moments[0].pose), skeleton(moments[done.keys.shown].pose)
    if done.body != "standing":
        return _throw(done, first, peak)
    bent_view = view if done.move.direction in ("forwards", "backwards") else _LOW_VIEW
    shown = [(first, bent_view), (peak, view), (skeleton(moments[-2].pose), bent_view)]
    if leftwards(done):
        shown.reverse()
    edge, places = _EDGE, []
    for body, seen in shown:
        least, most = width_of(body, View(seen))
        places.append(edge - least)
        edge += most - least + 3
    pieces = [
        body_lines(body, View(seen, x), pale=n != 1)
        for n, ((body, seen), x) in enumerate(zip(shown, places, strict=True))
    ]
    pieces.append(_jump_arrow(done, [one for one, _ in shown], places))
    return Scene(edge - 3 + _EDGE, tuple(pieces))


def _jump_arrow(done: Moved, bodies: list[Skeleton], places: list[float]) -> str:
    """Up from the floor, or over from one place to the other."""
    move = done.move
    if move.direction in ("forwards", "backwards", "sideways"):
        tops = [-TALL * body.crown.y - 7 for body in bodies]
        ends = [(places[0], tops[0]), (places[2], tops[2])]
        if leftwards(done):
            ends.reverse()
        top = max(-138.0, min(tops[1] - 2, tops[0] - 12))
        if move.times > 1:
            return _hops(ends[0], ends[1], top, move)
        return arrows.arch(ends[0], (places[1], top), ends[1], move.feel)
    legs = (bodies[1].right_leg, bodies[1].left_leg)
    wide = abs(legs[0].ankle.x - legs[1].ankle.x) > 0.3
    x = places[1] if wide else places[1] + 14
    return arrows.stroke([(x, -1), (x, -26)], move.feel)


def _hops(start: Point, end: Point, top: float, move: Move) -> str:
    """One stroke that goes up and down once a jump, over the bodies."""
    low, high = max(-126.0, top - 14), 12.0
    over = (0.0, 0.75, 1.0, 0.75)
    points = [
        (start[0] + (end[0] - start[0]) * n / (4 * move.times), low - high * over[n % 4])
        for n in range(4 * move.times + 1)
    ]
    return arrows.stroke(points, move.feel & {"strong", "light"})


def _throw(done: Moved, fold: Skeleton, up: Skeleton) -> Scene:
    view = view_of(done)
    (a0, a1), (b0, b1) = width_of(fold, View(_LOW_VIEW)), width_of(up, View(view))
    x0 = _EDGE - a0
    x1 = x0 + a1 + _GAP - b0
    middle = x0 + a1 + _GAP / 2
    pieces = (
        body_lines(fold, View(_LOW_VIEW, x0), pale=True),
        body_lines(up, View(view, x1)),
        arrows.stroke([(middle, -38), (middle, -TALL * up.crown.y)], done.move.feel),
    )
    return Scene(x1 + b1 + _EDGE, pieces)
