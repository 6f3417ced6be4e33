"""How a body looks that goes somewhere: strides, side-steps, skips, runs, crawls."""

from __future__ import annotations

from dataclasses import replace

from build_tools.body.keys import Keys, sided, stance, stepped
from build_tools.body.moves import Move, held_out, slashes
from build_tools.body.pose import Pose
from build_tools.body.shapes import balanced, shape, with_arms
from build_tools.body.skeleton import raised_off_floor

_AIR = {"skip": 0.05, "hop": 0.06, "run": 0.02, "gallop": 0.04}
"""How far off the floor these ways of going are at their highest, in parts of height."""
_PART_ARMS = {
    "elbow": "elbows",
    "hand": "forwards",
    "fingers": "ripple",
    "arm": "side",
    "shoulder": "back",
    "chest": "back",
}


def travel(move: Move) -> Keys:
    """Steps in the move's own way, ending on its level."""
    manner = _manner(move)
    end = stance(move.end, "rest")
    if held_out(move):
        # what is held out is still out when the feet have come to rest
        end = with_arms(shape("linked") if move.end == "middle" else end, "linked")
    if manner == "roll":
        return _rolled(end)
    if manner == "side":
        return sided(stepped(*_side_step(move), end, move.steps, same_foot=True), move)
    stride, passing = _steps(move, manner)
    keys = stepped(stride, passing, end, move.steps, same_foot=manner in ("hop", "gallop"))
    return sided(keys, move)


def _manner(move: Move) -> str | None:
    if move.direction == "sideways" and move.manner in (None, "run", "float", "pull", "push"):
        return "side"
    return move.manner


def _rolled(end: Pose) -> Keys:
    tucked = shape("curl", "hug")
    return stepped(tucked, tucked, end, 2)


def _side_step(move: Move) -> tuple[Pose, Pose]:
    low, arms = move.end == "low" or move.manner == "side", _arms(move, "low-side")
    apart, closing = shape("side-step", arms), shape("side-close", arms)
    if low:
        apart = replace(apart, hips=0.78 if move.end != "low" else 0.62)
        closing = replace(closing, hips=0.8 if move.end != "low" else 0.64)
    if move.manner in ("float", "gallop", "skip"):
        apart, closing = with_arms(apart, "side"), with_arms(closing, "side")
    return balanced(apart), closing


def _steps(move: Move, manner: str | None) -> tuple[Pose, Pose]:
    if manner == "crawl":
        return shape("crawl", "crawl-hands"), shape("all-fours", "on-hands")
    name, arms = _stride_of(move, manner)
    stride = shape(name, _arms(move, arms))
    passing = with_arms(shape("passing"), _arms(move, "rest"))
    if manner == "pull":
        stride = replace(stride, spread=-1.0, trunk=replace(stride.trunk, twist=28.0))
        # a hand reaches out in front while the feet pass, and is pulled back with the next step
        passing = replace(with_arms(passing, "reached"), spread=-1.0)
    if held_out(move):
        stride, passing = with_arms(stride, "linked"), with_arms(passing, "linked")
    if move.end == "middle" and move.start == "high" and manner not in _AIR:
        # who comes down in steps is seen to
        sunk = min(stride.hips, 0.88)
        stride = replace(stride, hips=sunk, trunk=replace(stride.trunk, tip=stride.trunk.tip + 12))
    passing = replace(passing, hips=min(passing.hips, stride.hips + 0.02), trunk=stride.trunk)
    if manner == "stamp":
        passing = shape("soft", arms)
    if manner in _AIR:
        stride = raised_off_floor(stride, _AIR[manner])
        passing = replace(passing, hips=0.9)
    return stride, passing


def _stride_of(move: Move, manner: str | None) -> tuple[str, str]:
    named = {
        "run": ("run", "run"),
        "skip": ("skip", "swing"),
        "hop": ("hop", "ready"),
        "gallop": ("big-stride", "low-side"),
        "tiptoe": ("tiptoe-step", "low-side"),
        "creep": ("low-stride", "ready"),
        "stamp": ("stamp", "ready"),
        "pull": ("stride", "hauled"),
        "push": ("stride", "forwards"),
        "float": ("stride", "side-soft"),
    }
    if manner in named:
        name, arms = named[manner]
        if move.end == "low" and name == "stride":
            name = "low-stride"
        return name, arms
    if move.end == "low":
        return "low-stride", "ready"
    if move.size == "small":
        return "small-stride", "rest"
    if move.size == "big":
        return "big-stride", "swing"
    return "stride", "low-side" if move.end == "high" else "swing"


def _arms(move: Move, else_: str) -> str:
    if slashes(move):
        return "one-up-one-down"
    return _PART_ARMS.get(move.part or "", else_)
