"""The key poses of `shapes.json`: a stance with arms."""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.body.balance import base_middle, body_centre, over_base, standing_on
from build_tools.body.pose import Arm, Foot, Pose, Trunk
from build_tools.body.skeleton import skeleton

STEADY = 0.014
"""How far inside its base a held body's weight is at least, in parts of height."""


@cache
def table() -> dict[str, Any]:
    """The stances and arms as they are written."""
    found: dict[str, Any] = json.loads(
        Path(__file__).with_name("shapes.json").read_text(encoding="utf-8")
    )
    return found


@cache
def shape(stance: str, arms: str = "rest") -> Pose:
    """A key pose by the names of its stance and its arms, balanced if it stands."""
    written, held = table()["stances"][stance], table()["arms"][arms]
    feet = written.get("feet", {})
    return Pose(
        right_arm=Arm(**held.get("both", held.get("right", {}))),
        left_arm=Arm(**held.get("both", held.get("left", {}))),
        right_foot=Foot(**(feet | written.get("right_foot", {}))),
        left_foot=Foot(**(feet | written.get("left_foot", {}))),
        trunk=Trunk(**written.get("trunk", {})),
        hips=written.get("hips", 0.99),
        shift=written.get("shift", 0.0),
        drift=written.get("drift", 0.0),
        base=written.get("base", "feet"),
    )


def with_arms(pose: Pose, arms: str) -> Pose:
    """The pose with the arms of that name."""
    held = shape("stand", arms)
    return replace(pose, right_arm=held.right_arm, left_arm=held.left_arm)


@cache
def balanced(pose: Pose) -> Pose:
    """The pose with its hips moved so that its weight is over what it stands on."""
    for _ in range(25):
        body = skeleton(pose)
        if over_base(body) >= STEADY:
            break
        middle = base_middle(standing_on(body))
        centre = body_centre(body)
        pose = replace(
            pose,
            shift=pose.shift + 0.7 * (middle[0] - centre.x),
            drift=pose.drift + 0.7 * (middle[1] - centre.z),
        )
    return pose
