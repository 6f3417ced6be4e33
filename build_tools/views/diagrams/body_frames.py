"""A body's moves as a page's script plays them: sixteen places a frame, on the page and small.

A place is two letters, across and up, on a grid of `STEP` units (a standing child is 100). The
script goes straight from frame to frame, so a move has as many as it needs to stay near the way
the body goes (`NEAR`). `site_overrides/playing/bodies.js` does what `shown_at` does here; its
tests hold the two together.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache, lru_cache
from typing import NamedTuple, TypedDict

from build_tools.body.poses import Moved, by_steps, moved, way_at
from build_tools.body.skeleton import Skeleton, skeleton
from build_tools.body.tone import eased
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_lines import Point, View, far_limbs
from build_tools.views.diagrams.body_views import view_of

LETTERS = "".join(chr(code) for code in range(35, 126) if chr(code) not in "&'<>\\`")
PLACES = 16
STEP = 1.8
LEAST = (-75.0, -4.0)
"""The corner of the grid: furthest left, and lowest."""
NEAR = 3.0
_SPLITS = 2
_FEELS = {"strong": "s", "light": "l", "sudden": "q", "sustained": "e", "bound": "b", "free": "f"}
WHOLE = 1000


AtMoment = Callable[[float], list[Point]]
"""Where the places of a move are at a part of its way."""
MoveForm = tuple[str, int, list[int], list[int]]
"""One action. Its feel: a letter for each quality that changes the timing. The limbs drawn paler:
1 right arm, 2 left arm, 4 right leg, 8 left leg. The moments at which the feel begins again, in
thousandths of the way; none where it is once for the whole. When each frame is reached, and which:
at, frame, at, frame … from 0 to 1000."""


class BodyForm(TypedDict):
    """Moves with the frames that they share."""

    frames: str
    moves: list[MoveForm]


def body_form(pairs: Sequence[tuple[Action, Action | None]], body: str = "standing") -> BodyForm:
    """Each action, after the one before it, as `body` does it."""
    frames: dict[str, int] = {}
    moves: list[MoveForm] = []
    for action, before in pairs:
        drawn = _move(moved(action, before, body))
        way = [n for at, frame in drawn.way for n in (at, frames.setdefault(frame, len(frames)))]
        moves.append((drawn.feel, drawn.far, list(drawn.keys), way))
    return {"frames": "".join(frames), "moves": moves}


def shown_at(form: BodyForm, move: int, time: float) -> list[float]:
    """Where the sixteen places are, across and up by turns, when `time` (0 to 1) is over."""
    feel, _, keys, way = form["moves"][move]
    part = _way_done(feel, keys, time) * WHOLE
    n = 0
    while n + 4 < len(way) and way[n + 2] < part:
        n += 2
    share = (part - way[n]) / (way[n + 2] - way[n])
    first, last = (_places(form["frames"], way[at]) for at in (n + 1, n + 3))
    return [a + (b - a) * share for a, b in zip(first, last, strict=True)]


def places(body: Skeleton, view: View) -> list[Point]:
    """Head, loin, then shoulder, elbow and hand of each arm, hip, knee, ankle, toe of each leg."""
    arms, legs = (body.right_arm, body.left_arm), (body.right_leg, body.left_leg)
    joints = [body.head, body.loin]
    joints += [joint for arm in arms for joint in (arm.shoulder, arm.elbow, arm.tip)]
    joints += [joint for leg in legs for joint in (leg.hip, leg.knee, leg.ankle, leg.toe)]
    return [(x, -y) for x, y in map(view.at, joints)]


class _Drawn(NamedTuple):
    """One action apart from others: as `MoveForm` has it, with the frames themselves."""

    feel: str
    far: int
    keys: tuple[int, ...]
    way: tuple[tuple[int, str], ...]


@lru_cache(maxsize=4096)
def _move(done: Moved) -> _Drawn:
    view = View(view_of(done))

    @cache
    def at_moment(at: float) -> list[Point]:
        return places(skeleton(way_at(done, at)), view)

    way = tuple((round(at * WHOLE), _written(at_moment(at))) for at in _moments(done, at_moment))
    keys = tuple(round(one.at * WHOLE) for one in done.keys.moments if by_steps(done))
    feel = "".join(letter for name, letter in _FEELS.items() if name in done.move.feel)
    far = far_limbs(skeleton(done.shown), view)
    return _Drawn(feel, sum(1 << n for n in far), keys, way)


def _moments(done: Moved, at_moment: AtMoment) -> list[float]:
    """The parts of the way that need a frame: each key, and between them what bends."""
    found = [0.0]
    for key in done.keys.moments:
        found += _between(at_moment, found[-1], key.at, _SPLITS)
    return found


def _between(at_moment: AtMoment, first: float, last: float, splits: int) -> list[float]:
    """The moments after `first`, to `last`, that straight ways between frames need."""
    middle = (first + last) / 2
    a, b, c = (at_moment(at) for at in (first, middle, last))
    off = max(
        max(abs((p[n] + r[n]) / 2 - q[n]) for n in (0, 1)) for p, q, r in zip(a, b, c, strict=True)
    )
    if off <= NEAR or not splits:
        return [last]
    return [
        *_between(at_moment, first, middle, splits - 1),
        *_between(at_moment, middle, last, splits - 1),
    ]


def _written(at: list[Point]) -> str:
    return "".join(
        LETTERS[min(len(LETTERS) - 1, max(0, round((point[n] - LEAST[n]) / STEP)))]
        for point in at
        for n in (0, 1)
    )


def _places(frames: str, number: int) -> list[float]:
    start = number * 2 * PLACES
    return [
        LEAST[n % 2] + STEP * LETTERS.index(letter)
        for n, letter in enumerate(frames[start : start + 2 * PLACES])
    ]


def _way_done(letters: str, keys: list[int], time: float) -> float:
    feel = [name for name, letter in _FEELS.items() if letter in letters]
    first = 0.0
    for key in keys or [WHOLE]:
        last = key / WHOLE
        if time <= last or key == WHOLE:
            return first + (last - first) * eased((time - first) / (last - first), feel)
        first = last
    return 1.0
