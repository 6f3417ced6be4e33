"""The same action by one who sits on a chair, or wheels: arms, trunk and head do it.

A low level folds forwards, a high one reaches up, a jump is a throw of arms and chest, a rock
goes to one hip. A chair's steps are feet that march where they are; wheels go by hand.
"""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.keys import Key, Keys, again
from build_tools.body.moves import Move, shares_weight, stays_tall
from build_tools.body.pose import Foot, Pose, Trunk
from build_tools.body.seats import FOOTREST
from build_tools.body.shapes import shape, with_arms

_KNEES_AT = 0.24
_LIFTED = 0.03
_LOW_HIPS = 0.62
"""A standing pose with its hips lower than this is low."""


def seated(pose: Pose, base: str) -> Pose:
    """The pose as one has it who sits on a `chair` or in a chair on `wheels`."""
    low = max(0.0, min(1.0, (1.0 - pose.hips) / (1.0 - _LOW_HIPS)))
    trunk = pose.trunk
    fold = min(40.0, 24.0 * low + max(0.0, trunk.bend) * 0.35)
    bend = fold if trunk.bend >= 0 else trunk.bend
    tip = max(-6.0, min(24.0, trunk.tip * 0.2 + 10 * low))
    up = FOOTREST if base == "wheels" else 0.0
    if base == "chair" and max(pose.right_foot.up, pose.left_foot.up) > _LIFTED:
        tip = min(tip, 3.0)
    return replace(
        pose,
        trunk=Trunk(
            tip=tip,
            tilt=max(-6.0, min(6.0, trunk.tilt * 0.6)),
            bend=bend,
            lean=max(-30.0, min(30.0, trunk.lean + trunk.tilt)),
            twist=trunk.twist,
            nod=trunk.nod,
            cock=trunk.cock,
            look=trunk.look,
            shrug=trunk.shrug,
        ),
        right_foot=_seated_foot(pose.right_foot, base, up),
        left_foot=_seated_foot(pose.left_foot, base, up),
        hips=1.0,
        shift=0.0,
        drift=0.0,
        turned=pose.turned if base == "wheels" else 0.0,
        base=base,
    )


def _seated_foot(foot: Foot, base: str, up: float) -> Foot:
    lifted = base == "chair" and foot.up > _LIFTED
    return Foot(
        across=0.07,
        along=_KNEES_AT + (0.1 if lifted else 0.0),
        up=up + (0.08 if lifted else 0.0),
        out=4,
        heel=8 if lifted else 0,
    )


def seated_keys(keys: Keys, move: Move, base: str) -> Keys:
    """An action's moments by one who sits."""
    sitting = keys.changed(lambda pose: seated(_grounded(pose), base))
    if move.kind == "jump":
        once = _shrugged(sitting) if small_jump(move) else _thrown(sitting)
        return again(once, move.times)
    if "travel" in move.kinds:
        return _wheeled(sitting, move) if base == "wheels" else _marched(sitting, move)
    if move.kind == "turn" and base == "chair":
        return _twisted(sitting, move)
    if move.kind == "turn":
        return sitting.changed(lambda pose: with_arms(pose, _round(move)))
    if move.kind == "transfer" and move.manner != "rock" and stays_tall(move):
        return sitting
    if move.kind == "transfer" and (move.manner == "rock" or move.end == move.start):
        return sitting.changed(_swayed if move.size == "small" else _leant)
    if shares_weight(move):
        return sitting.changed(lambda pose: replace(pose, trunk=Trunk(tip=-4.5)))
    if base == "wheels" and move.part in ("foot", "leg", "knee"):
        return sitting.changed(lambda pose: with_arms(pose, "point-low"))
    return sitting


def _grounded(pose: Pose) -> Pose:
    """What is up because of a jump is not up in a chair."""
    if pose.base != "air":
        return pose
    return replace(
        pose,
        base="feet",
        right_foot=replace(pose.right_foot, up=0.0),
        left_foot=replace(pose.left_foot, up=0.0),
    )


def small_jump(move: Move) -> bool:
    """Whether a jump is so small that who sits lifts no more than the shoulders for it."""
    return move.size == "small" or (move.manner == "small" and move.size != "big")


def _shrugged(keys: Keys) -> Keys:
    """The shoulders up, and down again softly."""
    trunk = replace(keys.end.trunk, tip=0, bend=-4, nod=-6, shrug=0.05)
    up = with_arms(replace(keys.end, trunk=trunk), "ready")
    return Keys((Key(0.5, up), Key(1.0, keys.end)), 0)


def _thrown(keys: Keys) -> Keys:
    """A fold, then arms, chest and shoulders thrown up, then a soft fold."""
    peak = keys.moments[keys.shown].pose
    up = replace(peak, trunk=replace(peak.trunk, tip=0, bend=-10, nod=-14, shrug=0.035))
    if max(up.right_arm.raised, up.left_arm.raised) < 90:
        up = with_arms(up, "up-small")
    fold = with_arms(seated(shape("crouch"), peak.base), "back")
    soft = with_arms(seated(shape("half"), peak.base), "ready")
    return Keys(
        (Key(0.3, fold), Key(0.5, up), Key(0.75, soft), Key(1.0, keys.end)),
        1,
    )


def _marched(keys: Keys, move: Move) -> Keys:
    """Feet lifted by turns."""
    moments, steps = [], move.steps
    pose = keys.moments[keys.shown].pose
    tip = {"forwards": 5.0, "backwards": -6.0}.get(move.direction or "", 0.0)
    lean = (12.0 if not move.left else -12.0) if move.direction == "sideways" else 0.0
    for n in range(steps):
        right = n % 2 == 0
        marching = replace(
            pose,
            right_foot=_lifted(right),
            left_foot=_lifted(not right),
            trunk=replace(pose.trunk, lean=lean, tip=tip),
        )
        moments.append(Key((n + 0.5) / steps, marching))
    return Keys((*moments, Key(1.0, keys.end)), 0)


def _lifted(up: bool) -> Foot:
    return Foot(0.07, _KNEES_AT + (0.03 if up else 0.0), 0.11 if up else 0.0, 4, 12 if up else 0)


def _wheeled(keys: Keys, move: Move) -> Keys:
    """A push of the wheels for each two steps, hands on the rims."""
    base = replace(keys.moments[keys.shown].pose, spread=0.0)
    back = with_arms(replace(base, trunk=Trunk(tip=4, bend=8)), "wheel")
    push = with_arms(replace(base, trunk=Trunk(tip=10, bend=20, nod=-12)), "wheel-push")
    if move.direction == "backwards":
        back, push = push, back
    pushes = max(1, round(move.steps / 2))
    moments = []
    for n in range(pushes):
        moments += [Key((n + 0.3) / pushes, back), Key((n + 0.75) / pushes, push)]
    turned = move.turn if move.kind == "turn" else 0.0
    spun = [Key(one.at, replace(one.pose, turned=turned * one.at)) for one in moments]
    end = replace(keys.end, turned=turned)
    return Keys((*spun, Key(1.0, end)), 1)


def _twisted(keys: Keys, move: Move) -> Keys:
    """As far round as the trunk goes, and back to the front."""
    way = -1.0 if move.left else 1.0
    peak = keys.moments[keys.shown].pose
    round_ = replace(peak, trunk=replace(peak.trunk, twist=40 * way, look=35 * way))
    return Keys((Key(0.5, round_), Key(1.0, keys.end)), 0)


def _round(move: Move) -> str:
    return "wheel-round" if not move.left else "wheel-round-left"


def _swayed(pose: Pose) -> Pose:
    """A little weight on one hip, the arms as they hang."""
    trunk = _leant(pose).trunk
    half = replace(trunk, tilt=trunk.tilt / 2, lean=trunk.lean / 2, cock=trunk.cock / 2)
    return replace(with_arms(pose, "rest"), trunk=half)


def _leant(pose: Pose) -> Pose:
    """Weight on one hip."""
    trunk = pose.trunk
    if not trunk.lean:
        return pose
    way = 1.0 if trunk.lean > 0 else -1.0
    return replace(pose, trunk=replace(trunk, tilt=6 * way, lean=26 * way, cock=10 * way))
