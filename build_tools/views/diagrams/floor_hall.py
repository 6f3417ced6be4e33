"""A hall from above, to scale: its walls, where watchers sit, and what its sides are called."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from build_tools.movement.watchers import Watchers, watchers
from build_tools.page_words.words import N_, _
from build_tools.paths.hall import LINED, Hall
from build_tools.paths.model import Paths
from build_tools.views.diagrams.floor_marks import short
from build_tools.views.diagrams.svg import SMALL, el, line, num, path, text

_SIGNS: dict[Watchers, str] = {
    "at the front": N_("front: watchers"),
    "all round": N_("watchers all round"),
    "on two sides": N_("watchers on two sides"),
    "at the short walls": N_("front; watchers at both ends"),
    "at one short wall": N_("front; watchers at one end"),
    "at the tables": N_("front; watchers at the tables"),
    "front in the middle": N_("front: the middle"),
}


_HIGHEST = Hall().depth / Hall().width
"""How high a floor is drawn at the most, where it may be 1 wide."""


@dataclass(frozen=True, slots=True)
class Frame:
    """Where the hall lies in a drawing, in drawing units; `scale` is units a metre."""

    left: float
    top: float
    right: float
    bottom: float
    scale: float

    @property
    def middle(self) -> tuple[float, float]:
        """The middle of the floor."""
        return ((self.left + self.right) / 2, (self.top + self.bottom) / 2)


def framed(floor: Hall, width: float, beside: float, above: float) -> Frame:
    """Where a floor lies in a drawing so wide: as large as it fits, no higher than a usual hall.

    A square room would take a page else.
    """
    wide = width - 2 * beside
    scale = min(wide / floor.width, wide * _HIGHEST / floor.depth)
    aside = (width - floor.width * scale) / 2
    return Frame(aside, above, width - aside, above + floor.depth * scale, scale)


def hall(paths: Paths, frame: Frame) -> str:
    """The walls, thick where watchers sit, the edge of their strip, and the sides' names."""
    sit, f = watchers(paths.dance), frame
    own = paths.dance.sides
    walls = {
        "front": (f.left, f.top, f.right, f.top),
        "back": (f.left, f.bottom, f.right, f.bottom),
        "left": (f.left, f.top, f.left, f.bottom),
        "right": (f.right, f.top, f.right, f.bottom),
    }
    named = [own["front"]] if "front" in own else []
    sign = ", ".join((_(_SIGNS[sit]), *named))
    if named and sit == "at the tables":
        sign = _("{front}; watchers at the tables", front=named[0])
    return el(
        "g",
        text(sign, f.middle[0], f.top - 7, SMALL, "middle", kind="quiet"),
        el(
            "rect",
            x=f.left,
            y=f.top,
            width=f.right - f.left,
            height=f.bottom - f.top,
            fill="none",
            stroke="currentColor",
        ),
        _strip(paths, sit, frame),
        *(line(*walls[side], 4) for side in walls if side in LINED[sit]),
        *_names(own, frame),
    )


def _strip(paths: Paths, sit: Watchers, f: Frame) -> str:
    """A broken line along the edge of the floor that watchers take."""
    (x, y), area = f.middle, paths.area
    across = {"front": area.front, "back": area.back}
    along = {"left": area.left, "right": area.right}
    found = [
        f"M{short(f.left)} {short(y + edge * f.scale)}H{short(f.right)}"
        for side, edge in across.items()
        if side in LINED[sit]
    ] + [
        f"M{short(x + edge * f.scale)} {short(f.top)}V{short(f.bottom)}"
        for side, edge in along.items()
        if side in LINED[sit]
    ]
    return path("".join(found), 1, "quiet", "2 4") if found else ""


def _names(named: Mapping[str, str], f: Frame) -> Iterator[str]:
    """The dance's own names of the back, left and right, along those walls."""
    x, y = f.middle
    if "back" in named:
        yield text(named["back"], x, f.bottom + 15, SMALL, "middle", kind="quiet")
    for side, at, turn in (("left", f.left - 7, -90), ("right", f.right + 7, 90)):
        if side in named:
            words = text(named[side], 0, 0, SMALL, "middle", kind="quiet")
            yield el("g", words, transform=f"translate({num(at)} {num(y)}) rotate({turn})")
