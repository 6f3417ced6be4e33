"""A turn as a picture: an arrow round the feet, as long a part of the whole round as the turn is.

It is seen from behind at first. The front of the ring is where the dancer faces then, on the far
side, and the arrow ends where they face at last: a quarter at one side, a half towards the eye.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.views.diagrams.body_arrows import KIND, Shaft, arrow, stroke
from build_tools.views.diagrams.body_lines import Point, track, whole
from build_tools.views.diagrams.svg import el

WOUND = 44.0
"""How far to either side the arrow of winding goes."""
FLAT = 0.42
"""How high the ring is for its width: it lies on the floor and is seen from above."""
_MOST = 340.0
"""A whole round is drawn a little short, or its head would lie on its start."""
_CLEAR, _APART = 38.0, 15.0
"""How many degrees from its start a ring is clear of the legs, and how far outside it the way back
is."""
_NEAR = 12.0
"""How many degrees before its tip the way is taken from which the head points."""


def ring(
    x: float, y: float, wide: float, degrees: float, feel: Collection[str], back: bool = False
) -> str:
    """The arrow of a turn by `degrees` (less than 0 is to the left), on the whole round, drawn
    thin; `back` has another arrow outside it that comes back.

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

    def at(turned: float, out: float = 0.0) -> Point:
        a = math.radians(turned)
        right, back = (wide + out) * math.sin(a), (high + out * FLAT) * math.cos(a)
        return (middle[0] + right, middle[1] - back)

    near, clear = math.copysign(_NEAR, far), math.copysign(_CLEAR, far)
    first, tip = (clear, at(far + clear * 0.7)) if back else (0.0, at(far))
    beside = math.copysign(min(90.0, abs(far) / 2), far) + (clear if back else 0.0)
    # the tail of a turn is behind the legs, where nobody would see a curl
    places = at(clear), at(clear + near), at(beside), at(beside + near)
    last = far + clear * 0.7 if back else far
    d = _arc(at(first), tip, (wide, high), far)
    out = Shaft(d, *places, at(last - near), tip)
    if not back:
        return arrow([out], feel)
    ends = (at(last, _APART), at(last - near, _APART), at(beside, _APART), at(beside, _APART))
    d = _arc(ends[0], at(clear, _APART), (wide + _APART, high + _APART * FLAT), -far)
    again = Shaft(d, *ends, at(clear + near, _APART), at(clear, _APART))
    return arrow([out, again], feel - {"sudden"})


def _arc(start: Point, tip: Point, half: Point, far: float) -> str:
    """Along an ellipse so wide and high, from one place to the other; to the right is clockwise."""
    flags = f"{int(abs(far) > 180)} {int(far > 0)}"
    way = f"{whole(tip[0] - start[0]):g} {whole(tip[1] - start[1]):g}"
    first = f"M{whole(start[0]):g} {whole(start[1]):g}a{half[0]:g} {half[1]:g}"
    return f"{first} 0 {flags} {way}".replace(" -", "-")


def wound_back(x: float, y: float, left: bool, feel: Collection[str]) -> str:
    """The arrow of arms and body that wind back: round the far side, from before the body to
    behind it, where its head stands free."""
    way = -1 if left else 1
    turns = [math.radians(-28 + 212 * n / 8) for n in range(9)]
    points = [
        (x - way * WOUND * math.cos(a), y - 0.36 * WOUND * math.sin(a) * (1 if n < 8 else 0.4))
        for n, a in enumerate(turns)
    ]
    return stroke(points, set(feel) - {"indirect"})


def eyes(at: Point) -> str:
    """Two eyes, of the paper: whoever is drawn with them faces the reader."""
    d = "".join(track([(at[0] + aside, at[1] - 1)]) for aside in (-3, 3))
    return el("path", d=d, class_="e", stroke="#fff", stroke_width=2.6)
