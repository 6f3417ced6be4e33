"""Bodies that a page draws once and shows in many places: each has a name, others point to it."""

from __future__ import annotations

import hashlib
import re
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from build_tools.body.poses import moved
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_lines import HEAD, LIMB, PLACED, TRUNK, in_place
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


def bodies_shown(
    placed: Iterable[tuple[BodyDrawn, float, float]], floor: Number, scale: float, **more: str
) -> str:
    """Bodies that the page's sprite draws, each with its left edge where it is told, and as dark;
    none, nothing.

    What is shown by `use` takes its strokes from where it is shown, which is said here once.
    """
    shown = [_at(body, left / scale, opacity) for body, left, opacity in placed]
    size = "" if scale == 1 else f"scale({scale:.4g})"
    place = f"translate(0 {num(floor)}){size}".replace("(0.", "(.")
    ink: dict[str, str | Number] = {"fill": "none", "stroke": "currentColor"}
    ink |= {"stroke_width": LIMB, "transform": place}
    return el("g", *shown, **more, **ink) if shown else ""


def _at(body: BodyDrawn, x: float, opacity: float) -> str:
    place = num(round(x, 1))
    more = {} if place == "0" else {"x": place}
    more |= {} if opacity == 1 else {"opacity": num(opacity)}
    return el("use", href=f"#{body.name}", **more)


def body_picture(drawn: BodyDrawn) -> str:
    """A body of the sprite by itself, on its floor; what it does is said beside it."""
    way = f"M2 {FLOOR + 3}h{num(drawn.width - 4)}"
    floor = el("path", class_="rule", d=way, stroke="currentColor", stroke_width=1.5)
    shown = bodies_shown([(drawn, 0, 1)], FLOOR, 1)
    return (
        f'<svg viewBox="0 0 {num(drawn.width)} {HEIGHT}" class="drawing body" fill="currentColor" '
        f'stroke-linecap="round" stroke-linejoin="round" aria-hidden="true">{floor}{shown}</svg>'
    )


def _classed(pieces: str) -> str:
    """The pieces with what many share said by a class: the styles in look.css tell its strokes."""
    for written, name in _SHARED:
        pieces = pieces.replace(f" {written}", f' class="{name}"')
    return pieces


def sprite(bodies: Iterable[BodyDrawn]) -> str:
    """What a page that shows `bodies` draws them in, once; empty where it shows none."""
    drawn = {body.name: body.pieces for body in bodies}
    if not drawn:
        return ""
    times = Counter(found["drawn"] for one in drawn.values() for found in PLACED.finditer(one))
    again = (shape for shape, many in times.items() if many > 1)
    poses = {shape: f"q{n}" for n, shape in enumerate(again, start=1)}
    shapes = [el("g", shape, id=name) for shape, name in poses.items()]
    shapes += [el("g", _posed(pieces, poses), id=name) for name, pieces in drawn.items()]
    return (
        '<svg class="sprite" width="0" height="0" aria-hidden="true" focusable="false">'
        f"<defs>{_classed(''.join(shapes))}</defs></svg>"
    )


def _posed(pieces: str, poses: Mapping[str, str]) -> str:
    """The pieces with what is in `poses` shown by its name, and the rest in its place."""

    def shown(found: re.Match[str]) -> str:
        name = poses.get(found["drawn"])
        return f'<use href="#{name}" x="{found["right"]}"{found["more"]}/>' if name else found[0]

    return in_place(PLACED.sub(shown, pieces))
