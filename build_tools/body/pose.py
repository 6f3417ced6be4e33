"""A pose: what a body is asked to do with its pelvis, trunk, head, arms and feet.

Lengths are parts of the dancer's height, angles degrees. Legs are told by where the feet are and
how high the hips: their angles follow (`legs.py`), so that a foot that stands stays where it is.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields, replace
from typing import TypeVar

Part = TypeVar("Part", "Arm", "Foot", "Trunk")


@dataclass(frozen=True, slots=True)
class Arm:
    """`raised` from hanging (0) to straight up (180), in the `plane` that is 0 out to the side,
    90 forwards and -90 backwards; `roll` turns the forearm outwards about the upper arm."""

    raised: float = 8
    plane: float = 20
    elbow: float = 10
    roll: float = 0
    wrist: float = 0


@dataclass(frozen=True, slots=True)
class Foot:
    """Where the ankle is: `across` from the middle to its own side, `along` forwards, `up` off
    the floor. `out` is how far toes and knee point outwards, `heel` how far the heel is lifted,
    `pressed` how much further than by itself the ankle bends under weight before the heel lifts."""

    across: float = 0.06
    along: float = 0.0
    up: float = 0.0
    out: float = 8
    heel: float = 0
    pressed: float = 0


@dataclass(frozen=True, slots=True)
class Trunk:
    """`tip` and `tilt` carry the pelvis forwards and to the right, `bend`, `lean` and `twist` the
    spine above it, `nod`, `cock` and `look` the head. `shrug` lifts the shoulders."""

    tip: float = 0
    tilt: float = 0
    bend: float = 0
    lean: float = 0
    twist: float = 0
    nod: float = 0
    cock: float = 0
    look: float = 0
    shrug: float = 0


@dataclass(frozen=True, slots=True)
class Pose:
    """A whole body. `hips` is how high they are, 1 being the height of straight legs."""

    right_arm: Arm = Arm()
    left_arm: Arm = Arm()
    right_foot: Foot = Foot()
    left_foot: Foot = Foot()
    trunk: Trunk = Trunk()
    hips: float = 1.0
    shift: float = 0.0
    """Of the hips to the right."""
    drift: float = 0.0
    """Of the hips forwards."""
    turned: float = 0.0
    """Of the whole body, to the right."""
    spread: float = 0.0
    """Of the fingers: 0 at rest, 1 wide open, -1 a fist."""
    base: str = "feet"
    """What carries the weight: feet, knees, all fours, lying, air, chair or wheels."""


_MIRRORED = ("tilt", "lean", "twist", "cock", "look")


def mirrored(pose: Pose) -> Pose:
    """Left and right changed over."""
    trunk = replace(pose.trunk, **{name: -getattr(pose.trunk, name) for name in _MIRRORED})
    return replace(
        pose,
        right_arm=pose.left_arm,
        left_arm=pose.right_arm,
        right_foot=pose.left_foot,
        left_foot=pose.right_foot,
        trunk=trunk,
        shift=-pose.shift,
        turned=-pose.turned,
    )


def blended(one: Pose, other: Pose, part: float) -> Pose:
    """The pose `part` of the way from one to the other, each number by itself; the base of the
    nearer one."""
    return Pose(
        right_arm=_mixed(one.right_arm, other.right_arm, part),
        left_arm=_mixed(one.left_arm, other.left_arm, part),
        right_foot=_mixed(one.right_foot, other.right_foot, part),
        left_foot=_mixed(one.left_foot, other.left_foot, part),
        trunk=_mixed(one.trunk, other.trunk, part),
        hips=_mean(one.hips, other.hips, part),
        shift=_mean(one.shift, other.shift, part),
        drift=_mean(one.drift, other.drift, part),
        turned=_mean(one.turned, other.turned, part),
        spread=_mean(one.spread, other.spread, part),
        base=(one if part < 0.5 else other).base,
    )


def _mean(one: float, other: float, part: float) -> float:
    return one + (other - one) * part


def _mixed(one: Part, other: Part, part: float) -> Part:
    return type(one)(
        *(_mean(getattr(one, f.name), getattr(other, f.name), part) for f in fields(one))
    )


def both_arms(pose: Pose, change: Callable[[Arm], Arm]) -> Pose:
    """The pose with both arms changed."""
    return replace(pose, right_arm=change(pose.right_arm), left_arm=change(pose.left_arm))


def both_feet(pose: Pose, change: Callable[[Foot], Foot]) -> Pose:
    """The pose with both feet changed."""
    return replace(pose, right_foot=change(pose.right_foot), left_foot=change(pose.left_foot))
