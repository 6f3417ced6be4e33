"""A hall seen from above, its sides by name, and the strip where watchers sit.

Metres from the middle of the floor: x grows to the right of a dancer who faces the front, y grows
towards the back. Degrees go clockwise from the front: 90 is to the right.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from build_tools.movement.watchers import Watchers

Point = tuple[float, float]
_GRID = 999_983
SIDES: Mapping[str, float] = {"front": 0.0, "right": 90.0, "back": 180.0, "left": 270.0}
"""Which way each side lies, in degrees."""
WATCHERS_DEEP = 1.5
"""Metres of floor for pupils who sit and watch, legs crossed, in two rows; common practice, no
source."""
BORDER = 0.5
"""Metres along a wall into which nobody comes. Where dancers start it is as wide as arms held out
reach, if that is more: how far they do is published (`body/ages.json`); that they are free is
common practice, no source."""
LINED: Mapping[Watchers, frozenset[str]] = {
    "at the front": frozenset({"front"}),
    "all round": frozenset(SIDES),
    "on two sides": frozenset({"front", "back"}),
    "at the short walls": frozenset({"left", "right"}),
    "at one short wall": frozenset({"left", "right"}),
    "at the tables": frozenset(),
    "front in the middle": frozenset(),
}
"""The sides along which watchers sit."""


@dataclass(frozen=True, slots=True)
class Hall:
    """A floor in metres: `width` along the front, `depth` from front to back."""

    width: float = 18.0
    depth: float = 10.0


KNOWN_HALLS: Mapping[str, Hall] = {
    "full": Hall(14.0, 10.0),
    "half": Hall(7.0, 10.0),
    "classroom": Hall(9.0, 6.0),
}
"""What a floor that is only named is drawn as: of as many square metres as
`views/dance/recommended_metres.py` says, from the brief it names; the sides are common practice."""


@dataclass(frozen=True, slots=True)
class Area:
    """A part of the floor with straight sides, in metres."""

    left: float
    front: float
    right: float
    back: float

    @property
    def width(self) -> float:
        """Metres along the front."""
        return self.right - self.left

    @property
    def depth(self) -> float:
        """Metres from front to back."""
        return self.back - self.front

    @property
    def middle(self) -> Point:
        """The point in the middle."""
        return ((self.left + self.right) / 2, (self.front + self.back) / 2)

    def turned(self, quarters: int) -> Area:
        """The same turned round the middle of the floor by so many quarters, clockwise."""
        if quarters % 4 == 0:
            return self
        corners = [
            turned(corner, quarters)
            for corner in ((self.left, self.front), (self.right, self.back))
        ]
        (x1, y1), (x2, y2) = corners
        return Area(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2))

    def holds(self, point: Point, over: float = 0.0) -> bool:
        """Whether `point` is in it, or outside by no more than `over` metres."""
        x, y = point
        return (
            self.left - over <= x <= self.right + over
            and self.front - over <= y <= self.back + over
        )

    def nearest(self, point: Point) -> Point:
        """The point in it that is nearest to `point`."""
        x, y = point
        return (min(max(x, self.left), self.right), min(max(y, self.front), self.back))

    def farthest(self, point: Point) -> float:
        """Metres from `point` to the corner farthest from it."""
        x, y = point
        return math.hypot(
            max(abs(x - self.left), abs(x - self.right)),
            max(abs(y - self.front), abs(y - self.back)),
        )


def floor(hall: Hall) -> Area:
    """All of the floor, wall to wall."""
    return Area(-hall.width / 2, -hall.depth / 2, hall.width / 2, hall.depth / 2)


def dancing_area(
    hall: Hall,
    watching: Watchers,
    border: float = BORDER,
    free: Mapping[str, float] = MappingProxyType({}),
) -> Area:
    """Where dancers may be put down: the floor less the watchers' strip, or a border, each side.

    `free` are metres that a dance wants free at some of the sides. In a hall too small for all
    that, half of the hall is left free.
    """
    lined = LINED[watching]
    less = {
        side: max(WATCHERS_DEEP if side in lined else border, free.get(side, 0.0)) for side in SIDES
    }
    across = min(1.0, hall.width / 2 / (less["left"] + less["right"]))
    along = min(1.0, hall.depth / 2 / (less["front"] + less["back"]))
    whole = floor(hall)
    return Area(
        whole.left + less["left"] * across,
        whole.front + less["front"] * along,
        whole.right - less["right"] * across,
        whole.back - less["back"] * along,
    )


def side_named(name: str, sides: Mapping[str, str]) -> str | None:
    """front, back, left or right by that word or by the dance's own; None for another word."""
    said = name.casefold()
    if said in SIDES:
        return said
    return next((side for side, own in sides.items() if own.casefold() == said), None)


def ahead(degrees: float) -> Point:
    """One metre the way that `degrees` point."""
    turn = math.radians(degrees)
    return (math.sin(turn), -math.cos(turn))


def bearing(start: Point, end: Point) -> float:
    """Which way `end` lies from `start`, in degrees from 0 up to 360."""
    return math.degrees(math.atan2(end[0] - start[0], start[1] - end[1])) % 360


def turned(point: Point, quarters: int) -> Point:
    """A point turned round the middle of the floor by so many quarters, clockwise; exact."""
    x, y = point
    for _ in range(quarters % 4):
        x, y = -y, x
    return (x, y)


def fine(value: float) -> float:
    """A value to about a millionth, so that sums that differ in their last places are the same.

    The grid is a prime number to one, since lengths are whole steps and halves of them: they would
    lie half way between two places of a decimal grid, where the last places decide after all.
    """
    return math.floor(value * _GRID + 0.5) / _GRID if math.isfinite(value) else value


def metres(one: Point, other: Point) -> float:
    """How far two points are from one another."""
    return math.hypot(one[0] - other[0], one[1] - other[1])
