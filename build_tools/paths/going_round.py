"""How far out a curved way sideways goes where it passes a partner: an arm's length, or more.

`site_overrides/sums/floor-dancing.js` does the same for the class of the day.
"""

from __future__ import annotations

from build_tools.paths.hall import Point, metres
from build_tools.paths.legs import Leg

_ON_THE_WAY = 0.1
"""Who stands before this part of a way, or after all but this part, is not passed."""
_OVER = 1.1
"""A way is nearest not where it is level with who is passed, but where it leaves them or comes:
so a tenth is added."""
_MOST = 0.5
"""How far out at most, in lengths of the way: a half round and no loop."""


def passing(leg: Leg, partner: Point, arm: float) -> Leg:
    """The same way, bent further out where it would pass `partner` nearer than `arm` metres.

    A way that does not go round the partner stays as it is.
    """
    start, end = (leg.x0, leg.y0), (leg.x1, leg.y1)
    long = metres(start, end)
    if not leg.bend or not long:
        return leg
    dx, dy = (end[0] - start[0]) / long, (end[1] - start[1]) / long
    to_x, to_y = partner[0] - start[0], partner[1] - start[1]
    part = (to_x * dx + to_y * dy) / long
    if not _ON_THE_WAY <= part <= 1 - _ON_THE_WAY:
        return leg
    out = 4 * part * (1 - part)
    side = 1.0 if leg.bend > 0 else -1.0
    aside = side * (to_x * dy - to_y * dx)
    goes = abs(leg.bend) * out
    if goes <= aside or goes >= aside + _OVER * arm:
        return leg
    return leg._replace(bend=side * min((aside + _OVER * arm) / out, _MOST * long))
