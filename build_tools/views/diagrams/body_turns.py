"""A turn as a picture: an arrow round the feet, as long a part of the whole round as the turn is.

It is seen from behind at first. The front of the ring is where the dancer faces then, on the far
side, and the arrow ends where they face at last: a quarter at one side, a half towards the eye.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.views.diagrams.body_arrows import KIND, drawn, head, rays, thick
from build_tools.views.diagrams.body_lines import EDGE, Point, track, whole
from build_tools.views.diagrams.svg import el

SPIRAL = 36.0
"""How far to either side the arrow of winding goes."""
FLAT = 0.42
"""How high the ring is for its width: it lies on the floor and is seen from above."""
_MOST = 340.0
"""A whole round is drawn a little short, or its head would lie on its start."""
_NEAR = 12.0
"""How many degrees before its tip the way is taken from which the head points."""


def ring(
    x: float, y: float, wide: float, degrees: float, feel: Collection[str], back: bool = False
) -> str:
    """The arrow of a turn by `degrees` (less than 0 is to the left), on the whole round, drawn
    thin; `back` has a head at both ends.

    What lies lower is nearer: a turn to the right, which is clockwise from above, starts at the
    far side and comes down by the right.
    """
    wide, high = whole(wide), whole(wide * FLAT)
    thin = f"M{whole(x) - 0.5:g} {whole(y) - high:g}a{wide:g} {high:g} 0 1 0 1 0z"
    whole_round = el("path", d=thin, class_=KIND, stroke_width=1, opacity=0.5)
    return whole_round + _part_of_it((whole(x), whole(y)), wide, high, degrees, set(feel), back)


def _part_of_it(
    middle: Point, wide: float, high: float, degrees: float, feel: set[str], back: bool
) -> str:
    far = math.copysign(min(_MOST, abs(degrees)), degrees)

    def at(turned: float) -> Point:
        a = math.radians(turned)
        return (middle[0] + wide * math.sin(a), middle[1] - high * math.cos(a))

    start, tip, width = at(0), at(far), thick(feel)
    before, after = at(far - math.copysign(_NEAR, far)), at(math.copysign(_NEAR, far))
    flags = f"{int(abs(far) > 180)} {int(far > 0)}"
    way = f"{whole(tip[0] - start[0]):g} {whole(tip[1] - start[1]):g}"
    d = f"M{start[0]:g} {start[1]:g}a{wide:g} {high:g} 0 {flags} {way}".replace(" -", "-")
    d += head(before, tip, width) + (head(after, start, width) if back else "")
    return drawn(d + (rays(before, tip, width) if "sudden" in feel else ""), width)


def spiral(x: float, y: float, left: bool, feel: Collection[str]) -> tuple[str, str]:
    """The arrow of arms and body that wind back, behind the body and before it: from one side, on
    the far side, round by the other to the back, which is near, and wider as it goes."""
    x, y, way, width = whole(x), whole(y), (-1 if left else 1), thick(feel)
    side = (x + way * (SPIRAL - 2), y)
    tip = (x - way * (SPIRAL - 4), y + 9)
    far = f"M{x - way * 22:g} {y - 2:g}a28 12 0 0 {int(not left)} {way * (SPIRAL + 20):g} 2"
    near = f"M{side[0]:g} {side[1]:g}a{SPIRAL:g} 15 0 0 {int(not left)} {tip[0] - side[0]:g} 9"
    edge = el("path", d=near, class_="e", stroke="#fff", stroke_width=width + EDGE)
    end = head((tip[0] + way * 12, tip[1] + 4), tip, width)
    if "sudden" in feel:
        end += rays((tip[0] + way * 12, tip[1] + 4), tip, width)
    return drawn(far, width), edge + drawn(near + end, width)


def eyes(at: Point) -> str:
    """Two eyes, of the paper: whoever is drawn with them faces the reader."""
    d = "".join(track([(at[0] + aside, at[1] - 1)]) for aside in (-3, 3))
    return el("path", d=d, class_="e", stroke="#fff", stroke_width=2.6)
