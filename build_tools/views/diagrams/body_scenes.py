"""Where the bodies of a picture stand beside each other, and which stroke joins them."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.gesturing import slants
from build_tools.body.moves import rises, stays_tall, weight_aside
from build_tools.body.poses import Moved
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_jump_scenes import jump_scene
from build_tools.views.diagrams.body_lines import TALL, Point, View, body_lines, width_of
from build_tools.views.diagrams.body_part_ways import (
    AGAIN,
    SQUEEZE,
    finger,
    head_turned,
    heel_lifted,
    leant,
    part_ways,
    pressed_in,
    pulled_to_hip,
    room_beside,
    squeezed,
)
from build_tools.views.diagrams.body_partner import (
    held_with_partner,
    lean_with_partner,
    shared,
)
from build_tools.views.diagrams.body_room import EDGE, GAP, LOW_VIEW, Scene
from build_tools.views.diagrams.body_turns import WOUND, eyes, ring, wound_back
from build_tools.views.diagrams.body_views import SIDE, leftwards, view_of
from build_tools.views.diagrams.body_ways import over_floor, room_for

_LOW_HEAD, _CURLED = 0.62, 0.36
"""What is low is seen at least so far from the side, or its shape is hidden."""
_TWIST = 120.0
"""The most, in degrees, that the arrow of somebody says who turns on a chair and back."""
_LOWER, _OF_RINGS = 0.025, frozenset({"free", "bound", "indirect", "sudden"})
"""By how much of its height a body is plainly lower, and what is told by the ring of a turn and
not by the arrow beside it."""


def scene(done: Moved) -> Scene:
    """The picture of an action."""
    move = done.move
    if move.kind == "stillness":
        return _held(done)
    if "jump" in move.kinds:
        return jump_scene(done)
    if move.kind == "turn":
        return _turn(done)
    start, end = skeleton(done.start), skeleton(done.shown)
    if move.kind == "travel" and done.body == "chair":
        return _on_the_spot(done)
    if move.kind == "transfer" and move.manner == "wind":
        return _wound(done, start, end)
    if shared(done):
        return lean_with_partner(done, start, end)
    here = move.kind == "gesture" and (move.manner in AGAIN or move.start == move.end)
    if here and not _shoots_up(done, start, end):
        return _in_place(done, start, end)
    if move.kind == "transfer" and done.body == "standing" and _sways(done):
        return _in_place(done, start, end)
    return _beside(done, start, end)


def _held(done: Moved) -> Scene:
    view = view_of(done)
    body = skeleton(done.shown)
    if shared(done):
        return held_with_partner(done, body)
    least, most = width_of(body, View(view))
    pressed = pressed_in(done.holding or done.move)
    x = EDGE - least + (SQUEEZE if pressed else 0.0)
    far, pieces = x + most, [body_lines(body, View(view, x))]
    if pressed:
        arrow, right = squeezed(done, View(view, x), body)
        pieces.append(arrow)
        far = max(far, right + 4)
    if done.move.part == "lips" and not done.held:
        pieces.append(finger(View(view, x), body))
    pieces.append(arrows.hold(far + 3, -TALL * body.crown.y * 0.5 - 6))
    return Scene(far + 16, tuple(pieces))


def _shoots_up(done: Moved, start: Skeleton, end: Skeleton) -> bool:
    """Whether both arms go up past the body, which would hide where they start."""
    if done.move.manner in AGAIN or done.move.one_side or done.move.part == "head":
        return False
    pairs = ((start.right_arm, end.right_arm), (start.left_arm, end.left_arm))
    return all(last.tip.y > max(end.crown.y, first.tip.y + 0.25) for first, last in pairs)


def _sways(done: Moved) -> bool:
    """Whether weight goes from foot to foot with both of them where they are."""
    return weight_aside(done.move) and done.move.size == "small" and done.move.manner != "wind"


def _wound(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """Where it stands: the arms and the body wind back round the far side."""
    view = view_of(done)
    sizes = [width_of(one, View(view)) for one in (start, end)]
    x = EDGE - min(-WOUND - 8, *(least for least, _ in sizes))
    seen = View(view, x)
    pieces = (
        body_lines(start, seen, pale=True),
        wound_back(*seen.at(end.breast), leftwards(done), done.move.feel),
        body_lines(end, seen),
    )
    return Scene(x + max(WOUND + 4, *(most for _, most in sizes)) + EDGE, pieces)


def _beside(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """The start and the end beside each other, as far as the way there is long."""
    view, left = view_of(done), leftwards(done)
    start_view, end_view = _seen(start, view), _seen(end, view)
    if done.move.kind == "gesture" and done.move.direction == "sideways":
        # from the side, aside would be behind
        start_view = end_view = view
    sizes = [width_of(start, View(start_view)), width_of(end, View(end_view))]
    (a0, a1), (b0, b1) = sizes[::-1] if left else sizes
    room = GAP
    if done.move.kind == "travel":
        room = room_for(done.move, done.body == "standing")
    tiptoe = done.move.manner == "tiptoe" and done.body == "standing"
    if tiptoe:
        b0 -= 12.0
    x0 = EDGE - a0
    x1 = x0 + a1 + room - b0
    gap = (x0 + a1 + 2, x1 + b0 - 3)
    ex, sx = (x0, x1) if left else (x1, x0)
    ends = gap[::-1] if left else gap
    pieces = [
        body_lines(start, View(start_view, sx), pale=True, hands=False),
        body_lines(end, View(end_view, ex)),
    ]
    if done.move.kind == "travel":
        pieces.append(over_floor(done.move, ends, done.body == "standing"))
        if tiptoe:
            pieces.append(heel_lifted(View(end_view, ex), end))
        if done.move.manner == "pull" and done.body == "standing":
            pulled, far = pulled_to_hip(done.move, View(end_view, ex), end)
            pieces += pulled
            x1 = max(x1, far - b1)
    elif done.move.kind == "gesture" and done.move.part == "head":
        pieces += head_turned(done, View(end_view, ex), end)
    else:
        pieces.append(_level_arrow(done, (start, end), ends))
    return Scene(x1 + b1 + EDGE, tuple(pieces))


def _seen(body: Skeleton, view: float) -> float:
    """From where a body is seen: what is low, further from the side."""
    if view < 0 or body.head.y >= _LOW_HEAD:
        return view
    return max(view, LOW_VIEW if body.head.y >= _CURLED else SIDE)


def _level_arrow(done: Moved, bodies: tuple[Skeleton, Skeleton], gap: Point) -> str:
    start, end = bodies
    move, middle = done.move, (gap[0] + gap[1]) / 2
    if move.kind == "transfer" and weight_aside(move):
        high = -TALL * end.head.y
        low = max(high + 12, min(high + 26, -TALL * start.crown.y - 6))
        return arrows.arch(
            (gap[0], low), ((gap[0] + gap[1]) / 2, high - 4), (gap[1], high + 6), move.feel
        )
    rising = rises(move)
    if move.start == move.end:
        higher = end.head.y > start.head.y
        rising = _hands(end) > _hands(start) if move.kind == "gesture" else higher
    if move.kind == "transfer" and stays_tall(move):
        # nobody goes down: the shoulders let go
        high = -TALL * end.neck.y
        return arrows.stroke([(middle, high - 12), (middle, high + 16)], move.feel)
    down = -TALL * min(start.head.y, end.head.y) + 4
    least = 44 if "indirect" in move.feel else 24
    up = min(down - least, -TALL * max(start.head.y, end.head.y) + 4)
    points = [(middle, down), (middle, up)]
    if slants(move) or (move.kind == "gesture" and move.direction == "sideways"):
        points = [(gap[0], down), (gap[1], up)]
        if not rising:
            points = [(gap[1], down), (gap[0], up)]
    return arrows.stroke(points if rising else points[::-1], move.feel)


def _hands(body: Skeleton) -> float:
    """How high both hands are, together."""
    return body.right_arm.tip.y + body.left_arm.tip.y


def _in_place(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """One over the other: only a part of the body moves."""
    view, move = view_of(done), done.move
    if move.manner in AGAIN:
        start = skeleton(done.keys.moments[0].pose)
    sizes = [width_of(one, View(view)) for one in (start, end)]
    x = EDGE + 10 - min(least for least, _ in sizes)
    seen = View(view, x)
    pieces = [body_lines(start, seen, pale=True), body_lines(end, seen)]
    if move.kind == "transfer":
        pieces.append(leant(done, seen, start, end))
    else:
        pieces += part_ways(done, seen, start, end)
    more = room_beside(done)
    return Scene(x + max(most for _, most in sizes) + EDGE + more, tuple(pieces))


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
    back = move.there_and_back and not chair
    wide = 40.0 if done.body == "wheels" or back else 30.0
    x = EDGE - min(-wide - 6, *(least for least, _ in sizes))
    seen = View(view, x)
    aside = abs(move.turn) % 180 == 90 and turned is not body
    start = skeleton(done.start)
    lower = not chair and start.head.y - body.head.y > _LOWER
    first = body if aside else start if lower else None
    if back:
        first = skeleton(done.shown)
    pieces = [body_lines(first, seen, pale=True)] if first else []
    pieces.append(body_lines(turned, seen))
    if lower:
        beside = seen.x + sizes[1][1] + 4
        high = -TALL * start.crown.y
        pieces.append(arrows.stroke([(beside, high), (beside, high + 26)], move.feel - _OF_RINGS))
    if abs(move.turn) == 180 and turned is not body:
        pieces.append(eyes(seen.at(turned.head)))
    height = -TALL * body.pelvis.y - 12 if chair else -14.0
    far = max(-_TWIST, min(_TWIST, move.turn)) if chair else move.turn
    pieces.append(ring(x, height, wide, far, move.feel, move.there_and_back or chair))
    return Scene(x + max(wide + 6, *(most for _, most in sizes)) + EDGE, tuple(pieces))


def _on_the_spot(done: Moved) -> Scene:
    """Feet lifted by turns on a chair, which stays where it is."""
    view = view_of(done)
    moments = done.keys.moments
    one, other = skeleton(moments[0].pose), skeleton(moments[min(1, len(moments) - 1)].pose)
    least, most = width_of(one, View(view))
    x = EDGE - least
    toe = View(view, x).at(one.right_leg.toe)
    pieces = (
        body_lines(other, View(view, x), pale=True),
        body_lines(one, View(view, x)),
        arrows.stroke([(toe[0] + 12, -1), (toe[0] + 12, -26)], done.move.feel, both_ways=True),
    )
    return Scene(max(x + most, toe[0] + 18) + EDGE, pieces)
