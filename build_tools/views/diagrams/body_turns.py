"""A turn as a picture: an arrow round the feet, as long a part of the whole round as the turn is.

It is seen from behind at first. The front of the ring is where the dancer faces then, on the far
side, and the arrow ends where they face at last: a quarter at one side, a half towards the eye.
"""

from __future__ import annotations

import math
from collections.abc import Collection

from build_tools.views.diagrams.body_arrows import KIND, stroke
from build_tools.views.diagrams.body_lines import Point, track, whole
from build_tools.views.diagrams.svg import el

FLAT = 0.42
"""How high the ring is for its width: it lies on the floor and is seen from above."""
_MOST = 340.0
"""A whole round is drawn a little short, or its head would lie on its start."""


def ring(
    x: float, y: float, wide: float, degrees: float, feel: Collection[str], back: bool = False
) -> str:
    """The arrow of a turn by `degrees` (less than 0 is to the left), on the whole round, drawn
    thin; `back` has a head at both ends.

    What lies lower is nearer: a turn to the right, which is clockwise from above, starts at the
    far side and comes down by the right.
    """
    points = round_part(x, y, wide, degrees)
    feel = set(feel) - {"indirect", "bound"}
    high = whole(wide * FLAT)
    half = f"a{whole(wide):g} {high:g} 0 1 0 "
    thin = f"M{whole(x):g} {whole(y) - high:g}{half}0 {2 * high:g}{half}0-{2 * high:g}"
    whole_round = el("path", d=thin, class_=KIND, stroke_width=1, opacity=0.5)
    return whole_round + stroke(points, feel, both_ways=back)


def round_part(x: float, y: float, wide: float, degrees: float) -> list[Point]:
    """The places of the arrow, from the far side, each twentieth degree or less."""
    way, far = (1 if degrees > 0 else -1), min(_MOST, abs(degrees))
    many = max(4, round(far / 18))
    return [
        (x + way * wide * math.sin(a), y - wide * FLAT * math.cos(a))
        for a in (math.radians(far * n / many) for n in range(many + 1))
    ]


def eyes(at: Point) -> str:
    """Two eyes, of the paper: whoever is drawn with them faces the reader."""
    d = "".join(track([(at[0] + aside, at[1] - 1)]) for aside in (-3, 3))
    return el("path", d=d, class_="e", stroke="#fff", stroke_width=2.6)
