"""Whether every joint of a body is within the range that joints move."""

from __future__ import annotations

from build_tools.body.pose import Arm
from build_tools.body.segments import RANGES
from build_tools.body.skeleton import Skeleton

BEHIND = -45.0
"""An arm in a plane further back than this is raised no further than behind the body."""


def beyond(body: Skeleton) -> tuple[str, ...]:
    """Each joint that is bent further than its range, with by how many degrees; mostly none."""
    pose, trunk = body.pose, body.pose.trunk
    found = [
        ("spine_bend", trunk.bend),
        ("spine_lean", trunk.lean),
        ("spine_twist", trunk.twist),
        ("neck_nod", trunk.nod),
        ("neck_cock", trunk.cock),
        ("neck_look", trunk.look),
    ]
    for side, arm in (("right", pose.right_arm), ("left", pose.left_arm)):
        found += [(f"{side} {name}", value) for name, value in _arm(arm)]
    legs = (("right", body.right_leg, pose.right_foot), ("left", body.left_leg, pose.left_foot))
    for side, leg, foot in legs:
        found += [
            (f"{side} hip_flexion", leg.flexion),
            (f"{side} hip_abduction", leg.abduction),
            (f"{side} knee", leg.knee_bend),
            (f"{side} ankle", leg.ankle_bend - foot.pressed),
            (f"{side} ankle_pressed", foot.pressed),
        ]
    return tuple(
        f"{name} {value:.0f}" for name, value in found if not _within(name.split()[-1], value)
    )


def _arm(arm: Arm) -> list[tuple[str, float]]:
    raised = "shoulder_raise_behind" if arm.plane < BEHIND else "shoulder_raise"
    return [
        (raised, arm.raised),
        ("shoulder_plane", arm.plane),
        ("shoulder_roll", arm.roll),
        ("elbow", arm.elbow),
        ("wrist", arm.wrist),
    ]


def _within(name: str, value: float) -> bool:
    least, most = RANGES[name]
    return least - 0.5 <= value <= most + 0.5
