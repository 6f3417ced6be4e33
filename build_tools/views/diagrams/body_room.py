"""What a picture of a body is made of, and how much room is left about it."""

from __future__ import annotations

from dataclasses import dataclass

EDGE, GAP = 6.0, 26.0
"""Room at either end of a picture, and between two bodies of it."""
LOW_VIEW = 40.0
"""From where, in degrees, what is low is seen at least, or its shape is hidden."""


@dataclass(frozen=True, slots=True)
class Scene:
    """A picture's bodies and strokes, its floor at 0, `width` units wide."""

    width: float
    pieces: tuple[str, ...]
