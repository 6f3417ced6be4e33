"""The chair and the wheelchair that a body sits on. Lengths are parts of standing height.

The seat is as high as the child's own knee is; the driving wheel of a child's wheelchair measures
24 inches (0.61 m) across, as the common sizes have it, by a child of 1.27 m.
"""

from __future__ import annotations

from build_tools.body.segments import LENGTHS

THIGH_ABOVE_SEAT = 0.035
FOOTREST = 0.05
WHEEL = 0.305 / 1.27
"""Half the driving wheel's width across."""
CASTOR = 0.05
AXLE = -0.03
"""Of the driving wheels, forwards of the hips."""
CASTOR_AT = 0.26
TRACK = 0.17
"""From the middle line to a driving wheel."""
SEAT_WIDTH = 0.13
BACK = 0.24
"""How high the back is above the seat."""
SEAT_BEHIND, SEAT_BEFORE = -0.07, 0.17


def seat_height(base: str) -> float:
    """How high the seat is."""
    on_foot = LENGTHS.ankle + LENGTHS.shank - 0.03
    return on_foot + (FOOTREST if base == "wheels" else 0.0)


def seated_hips(base: str) -> float:
    """How high the hip joints of one who sits are."""
    return seat_height(base) + THIGH_ABOVE_SEAT
