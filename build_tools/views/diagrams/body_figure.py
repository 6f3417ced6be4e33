"""An action as a picture: its start pale, what it comes to full, one stroke for the way there."""

from __future__ import annotations

from build_tools.body.poses import Moved, moved
from build_tools.model.dance import Action
from build_tools.page_words.speaking import kept_by_language
from build_tools.views.diagrams.body_lines import inked, track
from build_tools.views.diagrams.body_room import Scene
from build_tools.views.diagrams.body_scenes import scene
from build_tools.views.diagrams.body_words import body_in_words
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.svg import drawing, el

HEIGHT = 150
"""Of every picture of a body, in units; a standing child is 100 of them."""
_FLOOR = 144


def figure_of(action: Action, before: Action | None = None, body: str = "standing") -> str:
    """The picture of `action`, which starts where `before` ended, as SVG.

    `body` is standing, chair or wheels. Every picture has the same height and scale, so that low
    is low beside high; it is as wide as it must be.
    """
    return body_figure(action, before, body).svg


def body_figure(action: Action, before: Action | None = None, body: str = "standing") -> Figure:
    """The same with its text version."""
    return _figure(moved(action, before, body))


@kept_by_language(maxsize=4096)
def _figure(done: Moved) -> Figure:
    words = body_in_words(done)
    return Figure(words, drawing_of(scene(done), words), (words,))


def drawing_of(shown: Scene, words: str) -> str:
    """A scene as a whole drawing, on its floor."""
    floor = el("path", d=track([(2, 3), (shown.width - 2, 3)]), class_="rule", stroke_width=1.5)
    pieces = inked(floor, *shown.pieces, floor=_FLOOR)
    return drawing(words, round(shown.width), HEIGHT, pieces, kind="body")
