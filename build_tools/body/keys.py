"""The moments that an action passes through, each a pose, from just after its start to its end."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from build_tools.body.moves import Move
from build_tools.body.pose import Pose, Trunk, both_feet, mirrored
from build_tools.body.shapes import balanced, shape
from build_tools.body.skeleton import raised_off_floor

STANCES = {"low": "crouch", "middle": "soft", "high": "tall"}


@dataclass(frozen=True, slots=True)
class Key:
    """A pose and the part of the action that is over when it is reached: more than 0, to 1."""

    at: float
    pose: Pose


@dataclass(frozen=True, slots=True)
class Keys:
    """An action's moments in order; the last is at 1. `shown` is the one a still picture shows."""

    moments: tuple[Key, ...]
    shown: int

    @property
    def end(self) -> Pose:
        """The pose it ends in."""
        return self.moments[-1].pose

    def changed(self, change: Callable[[Pose], Pose]) -> Keys:
        """The same with each pose changed."""
        return Keys(tuple(Key(one.at, change(one.pose)) for one in self.moments), self.shown)


def one_key(pose: Pose) -> Keys:
    """An action that goes straight to its end."""
    return Keys((Key(1.0, pose),), 0)


def there_and_again(poses: Iterable[Pose], times: int) -> Keys:
    """The poses one after another, so many times, evenly; the last pose is the end."""
    each = tuple(poses)
    whole = len(each) * times
    moments = tuple(Key((n + 1) / whole, each[n % len(each)]) for n in range(whole))
    return Keys(moments, whole - 1)


def stance(level: str, arms: str = "rest") -> Pose:
    """Standing at a level."""
    return balanced(shape(STANCES[level], arms))


def curled(level: str) -> Pose:
    """Folded round the arms."""
    return {
        "low": shape("curl", "hug"),
        "middle": replace(shape("half", "hug"), trunk=Trunk(tip=30, bend=58, nod=32), hips=0.76),
        "high": replace(shape("stand", "tucked"), trunk=Trunk(tip=6, bend=18, nod=20)),
    }[level]


def lowered(pose: Pose, hips: float) -> Pose:
    """The pose with the hips no higher than that."""
    return replace(pose, hips=min(pose.hips, hips))


def jump(flight: Pose, high: float, end: Pose, pops: bool = False) -> Keys:
    """Knees bend, the feet leave the floor by `high` parts of height, and knees bend again.

    Where it `pops` they bend less: from a crouch it would be no small jump.
    """
    take_off = balanced(shape("small-take-off", "ready") if pops else shape("take-off", "back"))
    landed = shape("small-landing" if pops else "landing")
    landing = balanced(replace(landed, right_arm=end.right_arm, left_arm=end.left_arm))
    pushed = both_feet(
        replace(flight, hips=1.06, base="feet"),
        lambda foot: replace(foot, across=0.07, along=0.0, up=0.0, heel=40, out=8),
    )
    touched = replace(pushed, hips=0.95, right_arm=end.right_arm, left_arm=end.left_arm)
    return Keys(
        (
            Key(0.26, take_off),
            Key(0.38, pushed),
            Key(0.52, raised_off_floor(flight, high)),
            Key(0.66, touched),
            Key(0.78, landing),
            Key(1.0, end),
        ),
        2,
    )


def stepped(stride: Pose, passing: Pose, end: Pose, steps: int, same_foot: bool = False) -> Keys:
    """So many steps, right and left by turns, each a stride and a passing of the feet."""
    moments = []
    for n in range(steps):
        left = n % 2 == 1 and not same_foot
        moments.append(Key((n + 0.5) / steps, mirrored(stride) if left else stride))
        if n < steps - 1:
            moments.append(Key((n + 1) / steps, mirrored(passing) if left else passing))
    return Keys((*moments, Key(1.0, end)), 0)


def again(keys: Keys, times: int) -> Keys:
    """The same moments so many times, one after the other, each as long as the others."""
    return Keys(
        tuple(Key((n + one.at) / times, one.pose) for n in range(times) for one in keys.moments),
        keys.shown,
    )


def sided(keys: Keys, move: Move) -> Keys:
    """To the left where the move goes to the left."""
    return keys.changed(mirrored) if move.left else keys
