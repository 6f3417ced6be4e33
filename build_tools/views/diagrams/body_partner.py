"""Two who lean away from each other, face to face, each arm as long as the other's.

One alone, tipped back by a hand's width, looks like standing; and who copies a lean drawn alone
leans on nobody. The partner does the same from the other side, so it is the same pose.
"""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.moves import shares_weight
from build_tools.body.pose import mirrored
from build_tools.body.poses import Moved
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import TALL, View, body_lines, width_of
from build_tools.views.diagrams.body_part_ways import head_way
from build_tools.views.diagrams.body_room import EDGE, Scene
from build_tools.views.diagrams.body_views import view_of

_SHORT = 14.0
"""How long the arrows are at least: a longer one would say a longer way."""


def shared(done: Moved) -> bool:
    """Whether the picture has a partner: of a lean that shares weight, and while it is held."""
    return done.body == "standing" and shares_weight(done.holding or done.move)


def lean_with_partner(done: Moved, start: Skeleton, end: Skeleton) -> Scene:
    """Both upright, pale, and both leaning."""
    here, there = _places(done, end)
    first, last = _facing(start), _facing(end)
    ways = [
        head_way(done, seen, *bodies, _SHORT, bends=2)
        for seen, bodies in ((here, (start, end)), (there, (first, last)))
    ]
    away = arrows.strokes(ways, done.move.feel - {"indirect"})
    pale = (body_lines(start, here, pale=True), body_lines(first, there, pale=True))
    full = (body_lines(end, here), body_lines(last, there))
    return Scene(_width(there, (first, last)), (*pale, *full, away))


def held_with_partner(done: Moved, body: Skeleton) -> Scene:
    """Both as they lean, and two bars beside them."""
    here, there = _places(done, body)
    facing = _facing(body)
    wide = _width(there, (facing,))
    held = arrows.hold(wide, -TALL * body.crown.y * 0.5 - 6)
    return Scene(wide + 13, (body_lines(body, here), body_lines(facing, there), held))


def _facing(body: Skeleton) -> Skeleton:
    """The partner: the same pose, held out with the other arm, the one nearer to whoever looks."""
    return skeleton(replace(mirrored(body.pose), turned=body.pose.turned + 180.0))


def _places(done: Moved, end: Skeleton) -> tuple[View, View]:
    """Where the two stand: as far apart as their arms are long, a hand closed round a wrist."""
    view = view_of(done)
    starts = skeleton(done.start)
    x = EDGE - min(width_of(one, View(view))[0] for one in (starts, end))
    here = View(view, x)
    facing, left = _facing(end), (done.holding or done.move).left
    arm, other = (end.right_arm, facing.left_arm) if not left else (end.left_arm, facing.right_arm)
    tip, wrist = here.at(arm.tip)[0], View(view).at(other.wrist)[0]
    return here, View(view, tip - wrist)


def _width(there: View, facing: tuple[Skeleton, ...]) -> float:
    return there.x + max(width_of(one, View(there.degrees))[1] for one in facing) + EDGE
