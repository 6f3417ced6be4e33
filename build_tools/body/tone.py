"""How the feel of an action shows in the body: its poses, its timing and the way between.

Weight, time, space and flow as in Laban and Lawrence, Effort, 1947; how each is drawn is ours.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from build_tools.body.pose import Arm, Pose, both_arms, both_feet

Feel = Iterable[str]
_EARLY = 0.35
"""A sudden move is over by this part of its time, and is then held."""


def toned(pose: Pose, feel: Feel) -> Pose:
    """The pose as that feel has it."""
    felt = set(feel)
    if "strong" in felt:
        pose = _strong(pose)
    if "light" in felt:
        pose = _light(pose)
    if "bound" in felt:
        pose = both_arms(pose, lambda arm: _elbow(arm, 14))
        pose = replace(pose, trunk=replace(pose.trunk, shrug=pose.trunk.shrug + 0.02))
    if "free" in felt:
        pose = both_arms(
            pose, lambda arm: replace(arm, raised=min(178, arm.raised + 9)) if _far(arm) else arm
        )
        pose = replace(pose, trunk=replace(pose.trunk, nod=max(-44, pose.trunk.nod - 12)))
    if "direct" in felt:
        pose = both_arms(pose, lambda arm: replace(arm, elbow=arm.elbow * 0.6))
    if "indirect" in felt:
        twist = min(44.0, pose.trunk.twist + 14)
        pose = replace(pose, trunk=replace(pose.trunk, twist=twist, cock=pose.trunk.cock + 8))
        pose = replace(
            pose,
            right_arm=_elbow(pose.right_arm, 18),
            left_arm=replace(pose.left_arm, raised=max(0, pose.left_arm.raised - 14)),
        )
    return pose


def _floating(arm: Arm) -> Arm:
    return replace(arm, raised=min(178, arm.raised + 9)) if _far(arm) else arm


def _far(arm: Arm) -> bool:
    return arm.plane >= 0


def _elbow(arm: Arm, more: float) -> Arm:
    return replace(arm, elbow=min(148, arm.elbow + more))


def _strong(pose: Pose) -> Pose:
    spread = pose.spread or -1.0
    if pose.base != "feet" or pose.hips < 0.6:
        return replace(pose, spread=spread)
    planted = pose.right_foot.up == pose.left_foot.up == 0
    if planted:
        pose = both_feet(
            pose, lambda foot: replace(foot, across=max(foot.across, min(0.15, foot.across + 0.03)))
        )
    return replace(pose, spread=spread, hips=pose.hips - 0.05)


def _light(pose: Pose) -> Pose:
    """Arms that float, and the head up. The feet stay as they are: heels off the floor are for who
    goes on tiptoe, or a reader can't tell the two apart."""
    pose = both_arms(pose, lambda arm: _floating(_elbow(arm, 10)))
    return replace(pose, trunk=replace(pose.trunk, nod=max(-44, pose.trunk.nod - 8)))


def eased(time: float, feel: Feel) -> float:
    """How much of a move is done when `time` of it is over; both 0 to 1, never going back."""
    felt = set(feel)
    if "sudden" in felt:
        quick = min(1.0, time / _EARLY)
        done = 1 - (1 - quick) ** 3
    elif "sustained" in felt:
        done = time
    else:
        done = time * time * (3 - 2 * time)
    if "strong" in felt:
        done = done**1.5
    if "light" in felt:
        done = done**0.75
    if "bound" in felt:
        done += 0.035 * math.sin(4 * math.pi * (1 - done))
    if "free" in felt:
        done = 1 - (1 - done) ** 1.4
    return min(1.0, max(0.0, done))


def wound(pose: Pose, part: float, feel: Feel) -> Pose:
    """The pose `part` of the way between two others, off the straight way where the feel is
    winding: nothing at either end."""
    if "indirect" not in set(feel):
        return pose
    wave = math.sin(2 * math.pi * part)
    arch = math.sin(math.pi * part) ** 2
    trunk = replace(
        pose.trunk,
        twist=_held(pose.trunk.twist + 16 * wave, 44),
        lean=_held(pose.trunk.lean + 9 * wave, 34),
    )
    return replace(
        pose,
        trunk=trunk,
        right_arm=_winding(pose.right_arm, wave, arch),
        left_arm=_winding(pose.left_arm, -wave, arch),
    )


def _winding(arm: Arm, wave: float, arch: float) -> Arm:
    plane = arm.plane if arm.plane < -20 else _held(arm.plane + 28 * wave, 134, 0)
    return replace(arm, plane=plane, elbow=min(148, arm.elbow + 34 * arch))


def _held(value: float, most: float, least: float | None = None) -> float:
    return max(-most if least is None else least, min(most, value))
