"""Small strokes inside an action's box: the pathway, the way, a turn, a jump."""

from __future__ import annotations

import math

from build_tools.model.dance import Action
from build_tools.views.diagrams.svg import el, num, path

_ANGLES = {"forwards": 0, "backwards": 180, "diagonal": 45}
"""Degrees clockwise from the top of the page, which is the front."""


def marks(action: Action, x: float, y: float) -> str:
    """The strokes for `action`, their middle at (x, y), about 34 units wide and 14 high."""
    pieces = []
    if "travel" in action.kinds:
        pieces.append(_pathway(action.pathway or "straight", x - 10, y))
        x += 12
    if "turn" in action.kinds:
        pieces.append(_loop(x, y, left=action.side == "left"))
        x += 15
    if "jump" in action.kinds:
        pieces.append(_arch(x - 4, y))
        x += 15
    if action.direction:
        pieces.append(arrow(_angle(action), x, y, action.direction in ("up", "down")))
    return "".join(pieces)


def _angle(action: Action) -> int:
    if action.direction == "sideways":
        return 270 if action.side == "left" else 90
    if action.direction in ("up", "down"):
        return 0 if action.direction == "up" else 180
    return _ANGLES.get(action.direction or "", 0) * (-1 if action.side == "left" else 1)


def arrow(angle: int, x: float, y: float, off_the_floor: bool = False) -> str:
    """An arrow with its middle at (x, y); up and down in the air have a floor line."""
    drawn = path("M0 6V-5M-4 -1L0 -6L4 -1" + ("M-5 6h10" if off_the_floor else ""), 1.6)
    return el("g", drawn, transform=f"translate({num(x)} {num(y)}) rotate({angle})")


def _pathway(pathway: str, x: float, y: float) -> str:
    start = f"M{num(x - 8)} {num(y)}"
    drawn = {
        "straight": "h16",
        "curved": "q8 -14 16 0",
        "zigzag": "l4 -4 4 8 4 -8 4 4",
    }[pathway]
    return path(start + drawn, 1.6)


def _loop(x: float, y: float, *, left: bool) -> str:
    """A turn seen from above: clockwise to the right, the other way to the left."""
    way = -1 if left else 1
    (x1, y1), (x2, y2) = (
        (x + way * 5 * math.sin(math.radians(a)), y - 5 * math.cos(math.radians(a)))
        for a in (40, 320)
    )
    d = f"M{num(x1)} {num(y1)}A5 5 0 1 {int(not left)} {num(x2)} {num(y2)}"
    head = f"M{num(x2 - way * 5)} {num(y2)}L{num(x2)} {num(y2)}V{num(y2 + 5)}"
    return path(d, 1.6) + path(head, 1.6)


def _arch(x: float, y: float) -> str:
    return path(f"M{num(x - 6)} {num(y + 5)}q6 -18 12 0", 1.6)
