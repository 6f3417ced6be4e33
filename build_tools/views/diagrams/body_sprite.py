"""Bodies that a page draws once and shows in many places: each has a name, others point to it."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from build_tools.body.poses import moved
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_lines import HEAD, LIMB, TRUNK
from build_tools.views.diagrams.body_scenes import scene
from build_tools.views.diagrams.svg import Number, el, num

HEIGHT, FLOOR = 150, 144
"""Of a picture of one body: a standing child is 100."""
_SHARED = (
    (f'fill="currentColor" stroke-width="{TRUNK}"', "t"),
    (f'stroke-width="{num(2 * HEAD)}"', "h"),
)
_LETTERS_OF_A_NAME = 6
"""Of the drawing's digest: sixteen million names, for some dozens of drawings on a page."""


@dataclass(frozen=True, slots=True)
class BodyDrawn:
    """A body in a move: its floor is at 0, `width` units wide, a standing child 100 high."""

    name: str
    """The same for the same drawing, on every page."""
    width: float
    pieces: str


@lru_cache(maxsize=4096)
def body_drawn(action: Action, before: Action | None = None, body: str = "standing") -> BodyDrawn:
    """The drawing of `action`, which starts where `before` ended."""
    shown = scene(moved(action, before, body))
    pieces = "".join(shown.pieces)
    digest = hashlib.sha256(pieces.encode()).hexdigest()
    return BodyDrawn(f"b{digest[:_LETTERS_OF_A_NAME]}", shown.width, pieces)


def body_shown(drawn: BodyDrawn, x: Number, y: Number, scale: float) -> str:
    """A body that the page's sprite draws, with its left edge at `x` and its floor at `y`.

    It stands in `bodies_inked`: what is shown by `use` takes its strokes from where it is shown.
    """
    place = f"translate({x:.4g} {y:.4g})scale({scale:.4g})"
    return el("use", href=f"#{drawn.name}", transform=place)


def body_picture(drawn: BodyDrawn) -> str:
    """A body of the sprite by itself, on its floor; what it does is said beside it."""
    way = f"M2 {FLOOR + 3}h{num(drawn.width - 4)}"
    floor = el("path", class_="rule", d=way, stroke="currentColor", stroke_width=1.5)
    shown = bodies_inked([body_shown(drawn, 0, FLOOR, 1)])
    return (
        f'<svg viewBox="0 0 {num(drawn.width)} {HEIGHT}" class="drawing body" fill="currentColor" '
        f'stroke-linecap="round" stroke-linejoin="round" aria-hidden="true">{floor}{shown}</svg>'
    )


def bodies_inked(shown: Iterable[str]) -> str:
    """Bodies with the strokes that they are drawn in."""
    return el("g", *shown, fill="none", stroke="currentColor", stroke_width=LIMB)


def _classed(pieces: str) -> str:
    """The pieces with what many share said by a class: the styles in look.css tell its strokes."""
    for written, name in _SHARED:
        pieces = pieces.replace(f" {written}", f' class="{name}"')
    return pieces


def sprite(bodies: Iterable[BodyDrawn]) -> str:
    """What a page that shows `bodies` draws them in, once; empty where it shows none."""
    drawn = {body.name: el("g", _classed(body.pieces), id=body.name) for body in bodies}
    if not drawn:
        return ""
    return (
        '<svg class="sprite" width="0" height="0" aria-hidden="true" focusable="false">'
        f"<defs>{''.join(drawn.values())}</defs></svg>"
    )
