"""How a body looks that moves a part, or is still."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.hands import by_hands, there_and_agains
from build_tools.body.keys import Keys, curled, one_key, sided, stance, there_and_again
from build_tools.body.moves import (
    Move,
    held_out,
    reaches,
    rises,
    shares_weight,
)
from build_tools.body.pose import Arm, Pose, both_arms, both_feet
from build_tools.body.shapes import balanced, shape, with_arms

_MIDDLE_HIPS = 0.86
AT_THE_HEAD = {"lips": "hush", "ear": "listen"}
"""A part of the head to which one hand goes, and the arms that it takes."""


def gesture(move: Move) -> Keys:
    """A move of a part of the body, standing at the level that it ends on."""
    if keys := by_hands(move, _arms(move)):
        return keys
    if shares_weight(move):
        return sided(one_key(balanced(_counterbalanced(move))), move)
    if reaches(move):
        return sided(one_key(balanced(shape("linked", "linked"))), move)
    if move.manner == "ripple":
        one = _part(move, _with(move, "ripple"))
        other = both_arms(one, lambda arm: replace(arm, raised=arm.raised + 22, wrist=40))
        return there_and_again((other, one), there_and_agains(move))
    pose = _part(move, _with(move, _arms(move)))
    return sided(one_key(_finished(move, pose)), move)


def _with(move: Move, arms: str) -> Pose:
    return with_arms(stance(move.end), arms)


def _arms(move: Move) -> str:
    by_manner = {
        "flick": "v" if move.end == "high" else "forwards-up" if move.end == "middle" else "ripple",
        "pat": "pat",
        "knock": "knock",
        "press": "forwards-up" if rises(move) else "pressed",
        "pull": "pulled",
        "wave": "wave",
        "point": "point",
        "stretch": {"high": "up", "middle": "forwards", "low": "forwards-up"}[move.end],
        "open": {"high": "spray", "middle": "side", "low": "low-side"}[move.end],
        "close": "hug",
        "swing": "one-up-one-down",
        "bow": "rest",
        "lean": "forwards" if held_out(move) else "low-side",
    }
    ahead = "forwards-up" if move.end == "high" else "forwards"
    by_way = {"up": "up", "down": "pressed", "forwards": ahead, "backwards": "back"}
    if pulled_away(move) or (move.manner == "open" and move.direction == "up"):
        return by_way[move.direction or ""]
    if points_aside(move):
        return "point-aside-up" if move.end == "high" else "point-aside"
    if move.direction == "sideways" and move.manner is None:
        return "aside-low" if move.end == "low" else "aside"
    if move.manner in by_manner:
        return by_manner[move.manner]
    if move.direction in by_way:
        return by_way[move.direction]
    if slants(move):
        return "slant"
    return {"high": "v", "middle": "side-soft", "low": "hands-low"}[move.end]


def pulled_away(move: Move) -> bool:
    """Whether something pulls the arm, so that it goes away from the body and not to it."""
    return move.manner == "pull" and move.direction in ("up", "down", "forwards")


def points_aside(move: Move) -> bool:
    """Whether one arm goes out to the side: it points there, or only goes that way."""
    one = move.manner == "point" or (move.manner is None and move.one_side)
    return move.direction == "sideways" and one


def slants(move: Move) -> bool:
    """Whether arms go up on a slant, to one side."""
    arms = move.manner is None and move.part in (None, "arm", "hand", "fingers")
    return arms and move.kind == "gesture" and move.direction == "diagonal" and move.end == "high"


def _part(move: Move, pose: Pose) -> Pose:
    """The pose with the leading part doing the most of it."""
    part, trunk, high = move.part, pose.trunk, move.end == "high"
    if part in AT_THE_HEAD:
        return at_the_head(pose, part)
    if part in ("hand", "arm", "elbow") and move.one_side:
        pose = replace(pose, left_arm=Arm())
    if part == "elbow":
        raised = {"high": 118, "middle": 90, "low": 50}[move.end]
        bent = both_arms(with_arms(pose, "elbows"), lambda arm: replace(arm, raised=raised))
        return replace(bent, left_arm=Arm()) if move.one_side else bent
    if part == "shoulder":
        return replace(with_arms(pose, "low-side"), trunk=replace(trunk, shrug=0.05, nod=-8))
    if part == "head":
        return balanced(
            replace(
                with_arms(pose, "rest"),
                trunk=replace(trunk, nod=-38 if high else 36, bend=-8 if high else 0),
            )
        )
    if part == "foot" or part == "leg":
        return _on_one_foot(move, "foot-out")
    if part == "knee":
        return _on_one_foot(move, "one-leg")
    if part == "hip":
        return balanced(
            replace(with_arms(pose, "hips"), shift=0.05, trunk=replace(trunk, tilt=14, lean=-20))
        )
    if part == "back":
        return balanced(replace(pose, trunk=replace(trunk, tip=22, bend=55, nod=25)))
    if part == "chest":
        return balanced(
            replace(with_arms(pose, "back"), trunk=replace(trunk, tip=0, bend=-22, nod=-18))
        )
    if slants(move):
        return balanced(replace(pose, trunk=replace(trunk, tilt=4, lean=12)))
    if pulled_away(move) and move.direction == "forwards":
        return _braced(pose)
    if move.manner == "bow":
        return balanced(replace(pose, trunk=replace(trunk, tip=40, bend=25, nod=20)))
    if move.manner == "lean":
        return balanced(replace(pose, trunk=replace(trunk, **_LEANT.get(move.direction or "", {}))))
    return pose


def _braced(pose: Pose) -> Pose:
    """One arm pulled forwards, the hand open, and the body leaning back against it."""
    return balanced(
        replace(
            pose,
            right_arm=replace(pose.right_arm, raised=88, elbow=2),
            left_arm=Arm(),
            right_foot=replace(pose.right_foot, along=0.17),
            left_foot=replace(pose.left_foot, along=-0.13),
            trunk=replace(pose.trunk, tip=-14.0, bend=-6.0, nod=8.0),
            hips=min(pose.hips, 0.86),
            spread=0.3,
        )
    )


_LEANT: dict[str, dict[str, float]] = {
    "forwards": {"tip": 38.0, "bend": 8.0, "nod": -8.0},
    "backwards": {"tip": -14.0, "bend": -14.0},
    "sideways": {"tilt": 10.0, "lean": 18.0},
}
"""How the trunk goes in a lean that moves no foot; sideways to the right."""


def _counterbalanced(move: Move) -> Pose:
    """Leaning back from an arm that a partner holds: the whole body tipped back from the ankles by
    a hand's width at the head, straight, the arm level in the room; lower is a little more bend in
    the knees, never a seat. More would be a fall if the other let go, and is copied (an adviser who
    teaches it to children)."""
    pose = shape("counterbalance-low" if move.end == "low" else "counterbalance", "counterbalanced")
    return replace(pose, hips=0.99) if move.end == "high" else pose


def at_the_head(pose: Pose, part: str) -> Pose:
    """One hand at a part of the head, which leans to the hand that is to hear for it."""
    pose = with_arms(pose, AT_THE_HEAD[part])
    return replace(pose, trunk=replace(pose.trunk, cock=14.0)) if part == "ear" else pose


def _on_one_foot(move: Move, name: str) -> Pose:
    pose = shape(name, "side" if move.end == "high" else "low-side")
    hips = {"high": pose.hips, "middle": 0.86, "low": 0.72}[move.end]
    return balanced(replace(pose, hips=hips))


def _finished(move: Move, pose: Pose) -> Pose:
    """Small or big, and the fingers."""
    spread = 1.0 if move.part == "fingers" or move.manner == "open" else pose.spread
    pose = replace(pose, spread=spread)
    near = move.manner != "stretch" and move.part not in ("foot", "leg", "knee")
    if move.size == "small" and near:
        pose = both_arms(
            pose,
            lambda arm: replace(arm, raised=arm.raised * 0.7, elbow=min(145, arm.elbow + 45)),
        )
    if move.size == "big" and pose.hips > 0.8 and move.part not in ("foot", "leg", "knee"):
        pose = both_feet(pose, lambda foot: replace(foot, across=0.15, out=18))
    return balanced(pose)


def still(move: Move) -> Keys:
    """A held shape."""
    return one_key(balanced(_held(move)))


def _held(move: Move) -> Pose:
    level, manner = move.end, move.manner
    if manner == "tall" and level == "low":
        manner = "curled"
    if move.part in AT_THE_HEAD and manner is None:
        stood = {"low": "crouch", "middle": "soft", "high": "stand"}[level]
        return at_the_head(shape(stood), move.part)
    if manner is None and level == "low":
        manner = "curled" if move.size == "small" else "low"
    if manner == "curled":
        return curled(level)
    if manner == "wide":
        return {
            "low": shape("low-wide", "side"),
            "middle": shape("wide", "side"),
            "high": replace(shape("wide", "spray"), spread=1.0),
        }[level]
    if manner == "twisted":
        base = {"low": shape("crouch"), "middle": shape("soft"), "high": shape("apart")}[level]
        base = with_arms(base, "twisted")
        return replace(base, trunk=replace(base.trunk, twist=42, look=30, lean=10))
    if manner == "balance":
        return _on_one_foot(move, "one-leg")
    if manner == "tall":
        if level != "high":
            return shape("half", "hug")
        # tall and narrow: with the arms round the body where it is told to be small
        if move.size == "small":
            return shape("narrow", "pressed-in")
        return shape("tall", "up-close")
    # a word that names no shape is drawn as nobody's in particular: children copy a picture
    return {
        "low": shape("crouch", "hands-low"),
        "middle": shape("soft", "rest"),
        "high": shape("stand", "rest"),
    }[level]
