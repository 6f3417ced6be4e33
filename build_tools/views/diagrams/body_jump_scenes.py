"""A jump as a picture: bent knees, the body in the air, bent knees again."""

from __future__ import annotations

from build_tools.body.moves import Move, slashes
from build_tools.body.poses import Moved
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import TALL, Point, View, body_lines, width_of
from build_tools.views.diagrams.body_room import EDGE, GAP, LOW_VIEW, Scene
from build_tools.views.diagrams.body_views import leftwards, view_of

_OVER = ("forwards", "backwards", "sideways")
"""Ways of a jump that goes from one place to another."""


def jump_scene(done: Moved) -> Scene:
    """Bent knees, the body in the air, bent knees again; seated, a fold and a throw."""
    view, moments = view_of(done), done.keys.moments
    first, peak = skeleton(moments[0].pose), skeleton(moments[done.keys.shown].pose)
    if done.body != "standing":
        return _throw(done, first, peak)
    bent_view = view if done.move.direction in _OVER else LOW_VIEW
    shown = [(first, bent_view), (peak, view), (skeleton(moments[-2].pose), bent_view)]
    if leftwards(done):
        shown.reverse()
    edge, places = EDGE, []
    for body, seen in shown:
        least, most = width_of(body, View(seen))
        places.append(edge - least)
        edge += most - least + 3
    pieces = [
        body_lines(body, View(seen, x), pale=n != 1, hands=n == 1)
        for n, ((body, seen), x) in enumerate(zip(shown, places, strict=True))
    ]
    bodies = [one for one, _ in shown]
    over = done.move.direction in _OVER
    pieces.append(_over(done, bodies, places) if over else _up(done, bodies[1], places[1]))
    return Scene(edge - 3 + EDGE, tuple(pieces))


def _up(done: Moved, peak: Skeleton, place: float) -> str:
    """Up from the floor, and over the body as its arms slash."""
    wide = abs(peak.right_leg.ankle.x - peak.left_leg.ankle.x) > 0.3
    x = place if wide else place + 14
    shafts = [arrows.along([(x, -1), (x, -26)])]
    if slashes(done.move):
        shafts.append(_slash(View(view_of(done), place), peak))
    return arrows.arrow(shafts, done.move.feel)


def _over(done: Moved, bodies: list[Skeleton], places: list[float]) -> str:
    """From one place to the other; a small jump aside stays near the floor."""
    move = done.move
    if move.direction == "sideways" and (move.size == "small" or move.manner == "small"):
        ends, top = [(places[0] + 8, -3.0), (places[2] - 8, -3.0)], -11.0
    else:
        tops = [-TALL * body.crown.y - 7 for body in bodies]
        ends = [(places[0], tops[0]), (places[2], tops[2])]
        top = max(-138.0, min(tops[1] - 2, tops[0] - 12))
    if leftwards(done):
        ends.reverse()
    if move.times > 1:
        return _hops(ends[0], ends[1], top, move)
    return arrows.arch(ends[0], (places[1], top), ends[1], move.feel)


def _slash(seen: View, peak: Skeleton) -> arrows.Shaft:
    """From under the lower hand, across the body, to beyond the higher one."""
    tips = sorted(
        (seen.at(arm.tip) for arm in (peak.right_arm, peak.left_arm)), key=lambda at: at[1]
    )
    (x1, y1), (x0, _) = tips
    aside = 12.0 if x1 > x0 else -12.0
    start = (x0 - aside, seen.at(peak.pelvis)[1] + 6)
    return arrows.along([start, (x1 + aside, y1 + 14)], winding=True)


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
    (a0, a1), (b0, b1) = width_of(fold, View(LOW_VIEW)), width_of(up, View(view))
    x0 = EDGE - a0
    x1 = x0 + a1 + GAP - b0
    middle = x0 + a1 + GAP / 2
    pieces = (
        body_lines(fold, View(LOW_VIEW, x0), pale=True, hands=False),
        body_lines(up, View(view, x1)),
        arrows.stroke([(middle, -38), (middle, -TALL * up.crown.y)], done.move.feel),
    )
    return Scene(x1 + b1 + EDGE, pieces)
