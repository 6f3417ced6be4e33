"""Where every joint of a pose is, and the angle of each; the hips come down as far as they must."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from build_tools.body.legs import Leg, leg
from build_tools.body.pose import Arm, Pose
from build_tools.body.seats import seated_hips
from build_tools.body.segments import LENGTHS
from build_tools.body.space import ROOM, UP, Frame, Vector

SEATED = ("chair", "wheels")
_DOWN, _TRIES, _FOLDED = 0.0005, 40, 148.0
"""By how much further than they must the hips come down at a time, how often anything is tried
again at most, and how far an elbow folds."""


@dataclass(frozen=True, slots=True)
class ArmJoints:
    """One arm's joints, from the shoulder to the fingertips."""

    shoulder: Vector
    elbow: Vector
    wrist: Vector
    tip: Vector


@dataclass(frozen=True, slots=True)
class Skeleton:
    """Every joint of a body in a pose; heights above the floor, in parts of standing height."""

    pose: Pose
    pelvis: Vector
    """Midway between the hip joints."""
    loin: Vector
    breast: Vector
    neck: Vector
    chin: Vector
    crown: Vector
    right_arm: ArmJoints
    left_arm: ArmJoints
    right_leg: Leg
    left_leg: Leg
    facing: Frame
    chest: Frame

    @property
    def head(self) -> Vector:
        """The middle of the head."""
        return self.chin.plus(self.crown).times(0.5)


@lru_cache(maxsize=2048)
def skeleton(pose: Pose) -> Skeleton:
    """The joints of `pose`. Where a foot that stands is too far away, the hips come down.

    Moves share poses: one ends where the next begins, and frames are looked at from both sides.
    """
    facing = ROOM.bent(turned=pose.turned)
    pelvis = facing.bent(forwards=pose.trunk.tip, right=pose.trunk.tilt)
    height = _height(pose)
    if pose.base in SEATED:
        return _built(pose, facing, pelvis, height, _legs(pose, facing, pelvis, height))
    for _ in range(_TRIES):
        legs, at = _legs(pose, facing, pelvis, height), height
        both = zip(legs, (pose.right_foot, pose.left_foot), strict=True)
        short = max(one.short for one, foot in both if foot.up == 0) if _stands(pose) else 0.0
        if not short:
            break
        height -= short + _DOWN
    return _built(pose, facing, pelvis, at, legs)


def _stands(pose: Pose) -> bool:
    return pose.right_foot.up == 0 or pose.left_foot.up == 0


def _height(pose: Pose) -> float:
    if pose.base in SEATED:
        return seated_hips(pose.base)
    return LENGTHS.leg * pose.hips


def _middle(pose: Pose, facing: Frame, height: float) -> Vector:
    """Midway between the hip joints."""
    shifted = facing.right.times(pose.shift).plus(facing.forwards, pose.drift)
    return Vector(shifted.x, height, shifted.z)


def _legs(pose: Pose, facing: Frame, pelvis: Frame, height: float) -> tuple[Leg, Leg]:
    """The right leg and the left one, with the hips so high."""
    middle, floor = _middle(pose, facing, height), Vector(0, 0, 0)
    right, left = (
        leg(middle.plus(pelvis.right, side * LENGTHS.hip), pelvis, facing, floor, foot, side)
        for side, foot in ((1, pose.right_foot), (-1, pose.left_foot))
    )
    return right, left


def _built(
    pose: Pose, facing: Frame, pelvis: Frame, height: float, legs: tuple[Leg, Leg]
) -> Skeleton:
    middle = _middle(pose, facing, height)
    trunk = pose.trunk
    half = pelvis.bent(trunk.bend / 2, trunk.lean / 2, trunk.twist / 2)
    chest = half.bent(trunk.bend / 2, trunk.lean / 2, trunk.twist / 2)
    loin = middle.plus(pelvis.up, LENGTHS.pelvis)
    breast = loin.plus(half.up, LENGTHS.waist)
    neck = breast.plus(chest.up, LENGTHS.chest)
    skull = chest.bent(trunk.nod, trunk.cock, trunk.look)
    throat = chest.bent(trunk.nod / 2, trunk.cock / 2)
    chin = neck.plus(throat.up, LENGTHS.neck)
    return Skeleton(
        pose=pose,
        pelvis=middle,
        loin=loin,
        breast=breast,
        neck=neck,
        chin=chin,
        crown=chin.plus(skull.up, LENGTHS.head),
        right_arm=_arm(neck, chest, pose.right_arm, 1, trunk.shrug),
        left_arm=_arm(neck, chest, pose.left_arm, -1, trunk.shrug),
        right_leg=legs[0],
        left_leg=legs[1],
        facing=facing,
        chest=chest,
    )


def _arm(neck: Vector, chest: Frame, arm: Arm, side: int, shrug: float) -> ArmJoints:
    """An arm as it is asked, its elbow bent further where the hand would be below the floor."""
    joints = _straight_arm(neck, chest, arm, side, shrug)
    for _ in range(_TRIES):
        if min(joints.wrist.y, joints.tip.y) >= 0 or arm.elbow >= _FOLDED:
            break
        arm = replace(arm, elbow=min(_FOLDED, arm.elbow + 4))
        joints = _straight_arm(neck, chest, arm, side, shrug)
    return joints


def _straight_arm(neck: Vector, chest: Frame, arm: Arm, side: int, shrug: float) -> ArmJoints:
    """An arm: its upper part by `raised` and `plane`, the forearm bent in the plane that `roll`
    turns. Worked out for a right arm in the chest's own directions, then mirrored for the left."""
    raised, plane, roll = (math.radians(one) for one in (arm.raised, arm.plane, arm.roll))
    up_d = Vector(math.cos(plane), 0, math.sin(plane))
    level = Vector(-math.sin(plane), 0, math.cos(plane))
    upper = up_d.times(math.sin(raised)).plus(UP, -math.cos(raised))
    front = (up_d.times(math.cos(raised)).plus(UP, math.sin(raised)).times(math.sin(plane))).plus(
        level, math.cos(plane)
    )
    outer = front.cross(upper)
    towards = front.times(math.cos(roll)).plus(outer, math.sin(roll))
    bend, more = math.radians(arm.elbow), math.radians(arm.elbow + arm.wrist)
    lower = upper.times(math.cos(bend)).plus(towards, math.sin(bend))
    hand = upper.times(math.cos(more)).plus(towards, math.sin(more))
    risen = shrug + 0.02 * max(0.0, -math.cos(raised))
    shoulder = neck.plus(chest.right, side * LENGTHS.shoulder).plus(chest.up, risen - 0.01)
    elbow = shoulder.plus(_sided(chest, upper, side), LENGTHS.upper_arm)
    wrist = elbow.plus(_sided(chest, lower, side), LENGTHS.forearm)
    return ArmJoints(shoulder, elbow, wrist, wrist.plus(_sided(chest, hand, side), LENGTHS.hand))


def _sided(chest: Frame, local: Vector, side: int) -> Vector:
    return chest.out(Vector(side * local.x, local.y, local.z))


def raised_off_floor(pose: Pose, by: float) -> Pose:
    """The pose in the air: hips and feet `by` higher."""
    return replace(
        pose,
        base="air",
        hips=pose.hips + by / LENGTHS.leg,
        right_foot=replace(pose.right_foot, up=pose.right_foot.up + by),
        left_foot=replace(pose.left_foot, up=pose.left_foot.up + by),
    )
