"""A body as lines: seen level, from behind or from the side, a hundred units tall.

Seen from behind, the dancer's right is the page's right, as it is for whoever copies it.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.body import seats
from build_tools.body.balance import inside
from build_tools.body.legs import Leg
from build_tools.body.skeleton import SEATED, ArmJoints, Skeleton
from build_tools.body.space import Frame, Vector
from build_tools.views.diagrams.svg import el

TALL = 100
"""A standing child, in units of the drawing."""
FAR = 0.06
"""A limb further away than its fellow by this part of height is drawn paler."""
LIMB = 6.5
"""How thick a limb is drawn."""
TRUNK, HEAD = 8, 8.3
"""How thick the outline of the trunk is, and half the head."""
EDGE = 3.0
"""How much of the paper is left round an arm that lies over the trunk or the head, both sides
together: dark on dark nobody sees a hand."""
_HANGING = 0.19
"""How far below its elbow, in parts of height, the hand is of an arm that hangs."""
_FAR_OPACITY = 0.5
PALE = 0.3
_SEAT_OPACITY = 0.6

PLACED = re.compile(
    r'<g transform="translate\((?P<right>[-\d.]+) 0\)"(?P<more>[^>]*)>'
    r"(?P<drawn>(?:<path [^>]*/>)+)</g>"
)
"""A body as `body_lines` writes it."""
_START = re.compile(r"(?<=M)-?[\d.]+")

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class View:
    """Where the drawing is seen from: `degrees` 0 is from behind, 90 from the dancer's right."""

    degrees: float
    x: float = 0.0
    """Where the middle of the body's floor is, in units of the drawing."""

    def at(self, place: Vector) -> Point:
        """A place of the room on the page; the floor is at 0, up is less."""
        c, s = self._cos_sin()
        return (self.x + TALL * (place.x * c + place.z * s), -TALL * place.y)

    def near(self, place: Vector) -> float:
        """How near to the eye a place is."""
        c, s = self._cos_sin()
        return place.x * s - place.z * c

    def _cos_sin(self) -> tuple[float, float]:
        angle = math.radians(self.degrees)
        return math.cos(angle), math.sin(angle)


def body_lines(body: Skeleton, view: View, pale: bool = False, hands: bool = True) -> str:
    """The body drawn, what is far off first; all of it pale where it is only the start, and
    without fists or fingers where these are nothing to be seen.

    The strokes are those of the group that it is drawn into. It is told from its own middle and put
    in its place as a whole, to half a unit, so that the same body is the same in every picture.
    """
    place, view = whole(view.x), View(view.degrees)
    limbs = _limbs(body)
    far = [limbs[n] for n in far_limbs(body, view)]
    drawn = [seat_lines(body, view, pale)] if body.pose.base in SEATED else []
    if far:
        drawn.append(el("path", d=_tracks(view, far), opacity=_FAR_OPACITY))
    drawn.append(_torso(body, view))
    before = [] if pale else arms_over(body, view, far)
    near = [one for one in limbs if one not in far and one not in before]
    drawn.append(el("path", d=_tracks(view, near)))
    x, y = view.at(body.head)
    drawn.append(el("path", d=f"M{_n(x)} {_n(y)}h0", stroke_width=2 * HEAD))
    if before:
        edge = _tracks(view, [one[1:] for one in before])
        drawn.append(el("path", d=edge, class_="e", stroke="#fff", stroke_width=LIMB + EDGE))
        drawn.append(el("path", d=_tracks(view, before)))
    drawn += _hands(body, view) if hands else []
    pale_too = {"opacity": PALE} if pale else {}
    return el("g", *drawn, transform=f"translate({_n(place)} 0)", **pale_too)


def in_place(pieces: str) -> str:
    """The pieces with every body told from the corner of the picture."""

    def told(found: re.Match[str]) -> str:
        right = float(found["right"])
        drawn = _START.sub(lambda start: f"{float(start[0]) + right:g}", found["drawn"])
        return f"<g{found['more']}>{drawn}</g>" if found["more"] else drawn

    return PLACED.sub(told, pieces)


def far_limbs(body: Skeleton, view: View) -> list[int]:
    """Which limbs are far off: 0 right arm, 1 left arm, 2 right leg, 3 left leg."""
    near = [_mean_near(view, one) for one in _limbs(body)]
    return [n for n in range(4) if near[n] < near[n ^ 1] - FAR]


def _limbs(body: Skeleton) -> list[list[Vector]]:
    arms, legs = (body.right_arm, body.left_arm), (body.right_leg, body.left_leg)
    return [*(_arm(arm) for arm in arms), *(_leg(leg) for leg in legs)]


def inked(*pieces: str, floor: float) -> str:
    """The pieces in one group of strokes, their 0 on the floor."""
    return el(
        "g",
        in_place("".join(pieces)),
        fill="none",
        stroke="currentColor",
        stroke_width=LIMB,
        transform=f"translate(0 {_n(floor)})",
    )


def _tracks(view: View, limbs: list[list[Vector]]) -> str:
    return "".join(track([view.at(one) for one in limb]) for limb in limbs)


def width_of(body: Skeleton, view: View) -> tuple[float, float]:
    """How far the body reaches to the left and the right of where it stands."""
    at_nought = View(view.degrees)
    places = [body.head, *_arm(body.right_arm), *_arm(body.left_arm)]
    places += [*_leg(body.right_leg), *_leg(body.left_leg)]
    xs = [at_nought.at(one)[0] for one in places]
    if body.pose.base in SEATED:
        xs += [at_nought.at(one)[0] for one in _corners(body)]
    return min(*xs, at_nought.at(body.head)[0] - 5) - 4, max(
        *xs, at_nought.at(body.head)[0] + 5
    ) + 4


def whole(value: float) -> float:
    """A number of the drawing, to half a unit: small files, and a line that does not tremble."""
    return round(value * 2) / 2


def track(points: list[Point]) -> str:
    """Points as the `d` of a path: the first as it is, each other from the one before it."""
    x, y = whole(points[0][0]), whole(points[0][1])
    text, steps = f"M{_n(x)} {_n(y)}", []
    for point in points[1:]:
        right, down = whole(point[0]) - x, whole(point[1]) - y
        if right or down:
            steps.append(f"{_n(right)} {_n(down)}")
            x, y = x + right, y + down
    text += f"l{' '.join(steps)}" if steps else "h0"
    return text.replace(" -", "-")


def _n(value: float) -> str:
    return f"{whole(value):g}"


def _arm(arm: ArmJoints) -> list[Vector]:
    return [arm.shoulder, arm.elbow, arm.wrist, arm.tip]


def _leg(leg: Leg) -> list[Vector]:
    return [leg.hip, leg.knee, leg.ankle, leg.toe]


def _mean_near(view: View, places: list[Vector]) -> float:
    return sum(map(view.near, places)) / len(places)


def arms_over(body: Skeleton, view: View, but: Sequence[list[Vector]] = ()) -> list[list[Vector]]:
    """The arms, but those, whose hand or forearm is over the trunk or the head and does not just
    hang there; one whose elbow is drawn back does not."""
    shape, head = torso(body, view), view.at(body.head)

    def over(arm: list[Vector]) -> bool:
        _, elbow, wrist, tip = arm
        places = [elbow.plus(wrist.minus(elbow), part) for part in (0.3, 0.6, 1.0)]
        shown = [view.at(one) for one in (*places, tip)]
        hangs = elbow.y - tip.y > _HANGING and inside(view.at(elbow), shape) > -TRUNK / 2
        return not hangs and any(
            inside(at, shape) > 0 or math.dist(at, head) < HEAD for at in shown
        )

    return [one for one in _limbs(body)[:2] if one not in but and over(one)]


def _torso(body: Skeleton, view: View) -> str:
    """Its outline as round as the limbs."""
    d = track(torso(body, view)) + "Z"
    return el("path", d=d, fill="currentColor", stroke_width=TRUNK)


def torso(body: Skeleton, view: View) -> list[Point]:
    """Shoulders, loins and hips as the corners of one shape."""
    chest, pelvis = body.chest.right, body.right_leg.hip.minus(body.left_leg.hip).unit
    mid = chest.plus(pelvis).unit
    sides = [
        (body.neck, chest, 0.075),
        (body.breast, chest, 0.062),
        (body.loin, mid, 0.045),
        (body.pelvis, pelvis, 0.048),
    ]
    right = [view.at(at.plus(way, wide)) for at, way, wide in sides]
    left = [view.at(at.plus(way, -wide)) for at, way, wide in reversed(sides)]
    return [*right, *left]


def _hands(body: Skeleton, view: View) -> list[str]:
    """Fingers spread as three short lines, a fist as a dot; a hand at rest is the arm's end."""
    spread = body.pose.spread
    if abs(spread) < 0.5:
        return []
    d = ""
    for arm in (body.right_arm, body.left_arm):
        x, y = view.at(arm.tip)
        if spread < 0:
            d += f"M{_n(x)} {_n(y)}h0"
            continue
        wx, wy = view.at(arm.wrist)
        along = math.atan2(y - wy, x - wx)
        for turn in (-0.9, 0, 0.9):
            end = (x + 8 * math.cos(along + turn), y + 8 * math.sin(along + turn))
            d += track([(x, y), end])
    return [el("path", d=d, stroke_width=2.8 if spread > 0 else 9.5)]


def seat_lines(body: Skeleton, view: View, pale: bool) -> str:
    """The chair, or the wheelchair: plain, and behind the one who sits on it; pale, with the
    nearer wheel alone."""
    if body.pose.base == "chair":
        return _chair(body.facing, view)
    return _wheelchair(body.facing, view, pale)


def _place(facing: Frame, across: float, up: float, along: float) -> Vector:
    return facing.out(Vector(across, up, along))


def _corners(body: Skeleton) -> list[Vector]:
    if body.pose.base == "chair":
        return [_place(body.facing, 0, 0, z) for z in (seats.SEAT_BEHIND - 0.03, seats.SEAT_BEFORE)]
    back = seats.AXLE - seats.WHEEL
    return [_place(body.facing, 0, 0, z) for z in (back, seats.CASTOR_AT + seats.CASTOR)]


def _chair(facing: Frame, view: View) -> str:
    high, d = seats.seat_height("chair"), ""
    back_at, top = seats.SEAT_BEHIND - 0.03, high + seats.BACK
    for side in (-seats.SEAT_WIDTH, seats.SEAT_WIDTH):
        line = [(0, back_at), (top, back_at - 0.01)]
        seat = [(high, back_at), (high, seats.SEAT_BEFORE), (0, seats.SEAT_BEFORE)]
        for places in (line, seat):
            d += track([view.at(_place(facing, side, y, z)) for y, z in places])
    wide = seats.SEAT_WIDTH
    d += track([view.at(_place(facing, side, top, back_at - 0.01)) for side in (-wide, wide)])
    return el("path", d=d, stroke_width=2, opacity=_SEAT_OPACITY)


def _wheelchair(facing: Frame, view: View, pale: bool) -> str:
    high = seats.seat_height("wheels")
    rest = seats.FOOTREST - 0.01
    frame = [
        (high + seats.BACK, seats.SEAT_BEHIND - 0.1),
        (high + seats.BACK, seats.SEAT_BEHIND - 0.05),
        (high, seats.SEAT_BEHIND - 0.03),
        (high, seats.SEAT_BEFORE + 0.02),
        (rest, seats.CASTOR_AT + 0.02),
        (rest, seats.CASTOR_AT + 0.1),
    ]
    # How wide a wheel is seen: a line from before or behind, a circle from the side.
    angle = math.radians(view.degrees)
    turn = abs(facing.right.x * math.sin(angle) - facing.right.z * math.cos(angle))
    near = seats.TRACK if angle >= 0 else -seats.TRACK
    d = track([view.at(_place(facing, 0.8 * near, y, z)) for y, z in frame])
    for side in (near,) if pale else (-near, near):
        d += _wheel(_place(facing, side, seats.WHEEL, seats.AXLE), seats.WHEEL, turn, view)
    d += _wheel(_place(facing, 0.8 * near, seats.CASTOR, seats.CASTOR_AT), seats.CASTOR, turn, view)
    return el("path", d=d, stroke_width=2.2, opacity=_SEAT_OPACITY)


def _wheel(middle: Vector, radius: float, turn: float, view: View) -> str:
    x, y = view.at(middle)
    wide, high = max(0.5, TALL * radius * turn), TALL * radius
    half = f"a{_n(wide)} {_n(high)} 0 1 0 "
    d = f"M{_n(x)} {_n(y - high)}{half}0 {_n(2 * high)}{half}0 {_n(-2 * high)}"
    return d.replace(" -", "-")
