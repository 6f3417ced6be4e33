"""How a body looks that gives its weight to another foot, sinks, comes to rest or rises."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.keys import Keys, curled, lowered, one_key, sided, stance
from build_tools.body.moves import Move, held_out, rises, stays_tall, weight_aside
from build_tools.body.pose import Arm, Pose, both_feet, mirrored
from build_tools.body.shapes import balanced, shape, with_arms


def transfer(move: Move) -> Keys:
    """The weight goes to the other foot, lower or higher."""
    manner = move.manner
    if manner is None and not weight_aside(move):
        manner = "rise" if rises(move) else "sink"
    if manner in ("rock", None):
        return sided(one_key(_rock(move)), move)
    if manner == "wind":
        wound = lowered(shape("wound", "wound"), {"low": 0.66, "middle": 0.76}.get(move.end, 0.84))
        # Winding back goes to the left before it is let go to the right.
        return sided(one_key(balanced(mirrored(wound))), move)
    if manner == "fold" and move.end != "high":
        return one_key(balanced(curled(move.end)))
    if manner == "rise":
        pose = with_arms(stance(move.end), _risen(move))
        return sided(one_key(balanced(pose)), move) if held_out(move) else one_key(balanced(pose))
    return one_key(_come_to_rest(move) if manner == "settle" else _sunk(move))


def _risen(move: Move) -> str:
    """The arms in a rise: a little out for balance, and up only where it is told of them or big."""
    if move.end == "low":
        return "hands-low"
    if held_out(move):
        return "linked"
    up = move.end == "high" and (move.part in ("arm", "hand") or move.size == "big")
    return "up" if up else "low-side"


def _sunk(move: Move) -> Pose:
    """Lower; where it starts and ends on one level, a little lower, but tall stays tall."""
    if move.start == move.end:
        low, high = shape("crouch", "hands-low"), shape("stand", "hands-low")
        sunk = {"low": replace(low, hips=0.4), "middle": shape("half", "hands-low")}
        tall = high if stays_tall(move) else replace(high, hips=0.9)
        return balanced(sunk.get(move.end, tall))
    if move.end == "low":
        return balanced(shape("crouch", "hands-low"))
    if move.manner == "dip" or move.end == "middle":
        return balanced(shape("half", "ready"))
    return stance(move.end)


def _come_to_rest(move: Move) -> Pose:
    """Sunk, and then nothing is held any more: the arms hang and the head with them. A crouch that
    looks ahead was read as getting ready to jump."""
    pose = _sunk(move)
    trunk = pose.trunk
    if move.end == "low":
        trunk = replace(trunk, tip=22.0, bend=64.0, nod=44.0)
        return balanced(replace(_hanging(replace(pose, hips=0.42), 78.0), trunk=trunk))
    bend, nod = (10.0, 42.0) if move.end == "high" else (30.0, 40.0)
    trunk = replace(trunk, bend=bend, nod=nod)
    return balanced(replace(_hanging(pose, trunk.tip + bend), trunk=trunk))


def _hanging(pose: Pose, stooped: float) -> Pose:
    """The arms straight down in the room, of a chest that is bent forwards by so much."""
    hung = Arm(raised=4 + stooped * 0.92, plane=86, elbow=4)
    return replace(pose, right_arm=hung, left_arm=hung)


def _rock(move: Move) -> Pose:
    if move.size == "small":
        return _swayed(move)
    name = {"forwards": "rock-forwards", "backwards": "rock-backwards"}.get(
        move.direction or "", "rock"
    )
    pose = shape(name, "side" if name == "rock" else "low-side")
    if move.end == "low":
        pose = lowered(replace(pose, left_foot=replace(pose.left_foot, across=0.19)), 0.86)
    return balanced(pose)


def _swayed(move: Move) -> Pose:
    """The weight over one foot, both feet on the floor, the arms as they hang: it is small."""
    pose = with_arms(stance(move.end), "rest")
    pose = both_feet(pose, lambda foot: replace(foot, across=0.11))
    if move.direction in ("forwards", "backwards"):
        tip = 10.0 if move.direction == "forwards" else -6.0
        return balanced(replace(pose, trunk=replace(pose.trunk, tip=tip)))
    trunk = replace(pose.trunk, tilt=5.0, lean=10.0, cock=5.0)
    return balanced(replace(pose, shift=0.07, trunk=trunk))
