"""From an action, and the one before it, to its poses: the start, the moments, the end."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

from build_tools.body.gesturing import gesture, still
from build_tools.body.holding import holds
from build_tools.body.jumping import jumped, turn
from build_tools.body.keys import Key, Keys, one_key, stance
from build_tools.body.moves import Move, held_out, move_of, reaches, shares_weight
from build_tools.body.pose import Pose, blended, mirrored
from build_tools.body.shapes import balanced, shape
from build_tools.body.sitting import seated, seated_keys
from build_tools.body.tone import eased, toned, wound
from build_tools.body.transferring import transfer
from build_tools.body.travelling import travel
from build_tools.model.dance import Action

BODIES = ("standing", "chair", "wheels")
"""How a dancer dances: on the feet, sitting on a chair, or in a wheelchair."""


@dataclass(frozen=True, slots=True)
class Moved:
    """An action as a body does it: its start, then its moments to the end."""

    move: Move
    body: str
    start: Pose
    keys: Keys
    holding: Move | None = None
    """The move before it, where it is still in the shape of that."""

    @property
    def held(self) -> bool:
        """Whether it is still in the shape of the move before it."""
        return self.holding is not None

    @property
    def end(self) -> Pose:
        """The pose it ends in, from which the next begins."""
        return self.keys.end

    @property
    def shown(self) -> Pose:
        """The pose that a still picture shows."""
        return self.keys.moments[self.keys.shown].pose


@lru_cache(maxsize=4096)
def moved(action: Action, before: Action | None = None, body: str = "standing") -> Moved:
    """`action` as a `body` (of `BODIES`) does it, starting where `before` ended.

    Without one before it, it starts at the level it says it starts on.
    """
    return _moved(move_of(action, before), move_of(before) if before else None, body)


@lru_cache(maxsize=4096)
def _moved(move: Move, before: Move | None, body: str) -> Moved:
    """The same of a move: actions with other words may be one and the same to a body."""
    start = replace(
        _keys(before, body).end if before else _opening(move, body),
        turned=0.0,
    )
    holding = before if holds(move, before) else None
    return Moved(move, body, start, one_key(start) if holding else _keys(move, body), holding)


def _keys(move: Move, body: str) -> Keys:
    keys = _standing(move)
    if body != "standing":
        keys = seated_keys(keys, move, body)
    return Keys(
        tuple(Key(one.at, _settled(_felt(one.pose, move), move)) for one in keys.moments),
        keys.shown,
    )


def _felt(pose: Pose, move: Move) -> Pose:
    """The pose with its feel; to the left it is the mirror of what it is to the right."""
    return mirrored(_toned(mirrored(pose), move)) if move.left else _toned(pose, move)


def _toned(pose: Pose, move: Move) -> Pose:
    """The pose with its feel; an arm that is held out stays level, and who leans on it straight."""
    felt = toned(pose, move.feel)
    if held_out(move) or reaches(move):
        felt = replace(felt, right_arm=pose.right_arm)
    return replace(felt, trunk=pose.trunk) if shares_weight(move) else felt


def _settled(pose: Pose, move: Move) -> Pose:
    """Balanced again where it stands; a step or a jump is on its way, and need not be."""
    on_way = "travel" in move.kinds or "jump" in move.kinds
    if pose.base != "feet" or (on_way and max(pose.right_foot.up, pose.left_foot.up) > 0):
        return pose
    return replace(balanced(replace(pose, turned=0.0)), turned=pose.turned)


def _standing(move: Move) -> Keys:
    if "jump" in move.kinds:
        return jumped(move)
    if move.kind == "turn":
        return turn(move)
    if move.kind == "travel":
        return travel(move)
    if move.kind == "gesture":
        return gesture(move)
    if move.kind == "transfer":
        return transfer(move)
    return still(move)


def _opening(move: Move, body: str) -> Pose:
    pose = stance(move.start, "hands-low" if move.start == "low" else "rest")
    if move.kind == "stillness":
        pose = _standing(move).end
    elif move.start == "low" and move.grows:
        pose = balanced(shape("curl", "hug"))
    return pose if body == "standing" else seated(pose, body)


def pose_at(done: Moved, time: float) -> Pose:
    """The pose when `time` (0 to 1) of the action is over, by the action's feel."""
    feel = done.move.feel
    if not by_steps(done):
        return way_at(done, eased(time, feel))
    ends = [0.0, *(one.at for one in done.keys.moments)]
    for first, last in pairwise(ends):
        if time <= last:
            part = (time - first) / (last - first)
            return way_at(done, first + (last - first) * eased(part, feel))
    return way_at(done, 1.0)


def by_steps(done: Moved) -> bool:
    """Whether the feel comes again in each moment: of steps, and of a jump, whose flight no
    feel can stretch."""
    return "jump" in done.move.kinds or "travel" in done.move.kinds or len(_beats(done)) > 1


def _beats(done: Moved) -> tuple[Key, ...]:
    """The moments of a gesture done again and again; else only the end."""
    return done.keys.moments if done.move.kind == "gesture" else done.keys.moments[-1:]


def way_at(done: Moved, part: float) -> Pose:
    """The pose when `part` (0 to 1) of the way is behind, whatever the time."""
    last = Key(0.0, done.start)
    for key in done.keys.moments:
        if part <= key.at:
            share = (part - last.at) / (key.at - last.at)
            if share in (0.0, 1.0):
                return key.pose if share else last.pose
            pose = blended(last.pose, key.pose, share)
            return wound(pose, share, done.move.feel)
        last = key
    return done.end
