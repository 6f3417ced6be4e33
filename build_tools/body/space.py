"""Vectors in three dimensions: x to the dancer's right, y up, z forwards."""

from __future__ import annotations

import math
from typing import NamedTuple


class Vector(NamedTuple):
    """A place or a direction; lengths are parts of the dancer's height."""

    x: float
    y: float
    z: float

    def plus(self, other: Vector, times: float = 1.0) -> Vector:
        """This and `times` the other."""
        return Vector(self.x + other.x * times, self.y + other.y * times, self.z + other.z * times)

    def minus(self, other: Vector) -> Vector:
        """From the other to this."""
        return self.plus(other, -1.0)

    def times(self, factor: float) -> Vector:
        """The same way, longer or shorter."""
        return Vector(self.x * factor, self.y * factor, self.z * factor)

    def dot(self, other: Vector) -> float:
        """The product that is 0 at right angles."""
        return self.x * other.x + self.y * other.y + self.z * other.z

    def cross(self, other: Vector) -> Vector:
        """The direction at right angles to both."""
        return Vector(
            self.y * other.z - self.z * other.y,
            self.z * other.x - self.x * other.z,
            self.x * other.y - self.y * other.x,
        )

    @property
    def length(self) -> float:
        """How long it is."""
        return math.sqrt(self.dot(self))

    @property
    def unit(self) -> Vector:
        """The same way, of length 1; straight up where it has no length."""
        long = self.length
        return self.times(1 / long) if long > 1e-9 else UP


RIGHT, UP, FORWARDS = Vector(1, 0, 0), Vector(0, 1, 0), Vector(0, 0, 1)


class Frame(NamedTuple):
    """Which way right, up and forwards are for a part of the body."""

    right: Vector
    up: Vector
    forwards: Vector

    def out(self, local: Vector) -> Vector:
        """A direction of this part, as a direction of the room."""
        return self.right.times(local.x).plus(self.up, local.y).plus(self.forwards, local.z)

    def into(self, direction: Vector) -> Vector:
        """A direction of the room, as this part has it."""
        return Vector(
            direction.dot(self.right), direction.dot(self.up), direction.dot(self.forwards)
        )

    def bent(self, forwards: float = 0, right: float = 0, turned: float = 0) -> Frame:
        """This bent forwards, then to the right, then turned to the right about itself; degrees."""
        frame = self
        if forwards:
            c, s = _cos_sin(forwards)
            frame = Frame(
                frame.right,
                frame.up.times(c).plus(frame.forwards, s),
                frame.forwards.times(c).plus(frame.up, -s),
            )
        if right:
            c, s = _cos_sin(right)
            frame = Frame(
                frame.right.times(c).plus(frame.up, -s),
                frame.up.times(c).plus(frame.right, s),
                frame.forwards,
            )
        if turned:
            c, s = _cos_sin(turned)
            frame = Frame(
                frame.right.times(c).plus(frame.forwards, -s),
                frame.up,
                frame.forwards.times(c).plus(frame.right, s),
            )
        return frame


ROOM = Frame(RIGHT, UP, FORWARDS)


def _cos_sin(degrees: float) -> tuple[float, float]:
    angle = math.radians(degrees)
    return math.cos(angle), math.sin(angle)
