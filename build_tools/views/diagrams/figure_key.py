"""How the figures are read: each mark that they have, drawn as they have it, with what it says."""

from __future__ import annotations

from build_tools.page_words.words import _
from build_tools.views.diagrams import body_arrows as arrows
from build_tools.views.diagrams.body_lines import HEAD, PALE
from build_tools.views.diagrams.body_part_ways import SQUEEZE, on_toes, thought_of
from build_tools.views.diagrams.body_phrases import WAYS
from build_tools.views.diagrams.body_turns import eyes
from build_tools.views.diagrams.body_ways import humps
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.svg import el

_WIDE, _HIGH = 56.0, 30.0
_ENDS = (5.0, 47.0)
_LEVEL = 15.0


def figure_key() -> tuple[Figure, ...]:
    """Each mark with what it says as its title, those of bodies first. Ink and round ends are in
    the styles."""
    return (
        _mark(_heads(), _("pale: where a move starts; dark: what it comes to")),
        _mark(_eyed(), _("no eyes: seen from behind, its right is yours; eyes: faces you")),
        _mark(
            el("g", humps((2.0, 54.0), 3, 9.0, ()), transform="translate(0 26)"),
            _("a hump for each step, or their number"),
        ),
        _mark(on_toes(28, 24), _("by a heel: on tiptoe")),
        _mark(thought_of("M8 15H48"), _("something to knock or pat, thought of")),
        _mark(arrows.hold(24, 10), _("still")),
        _mark(_pressed(), _("arrows in to the body: pressed in, tight")),
        *(_mark(_way(feel), _(words)) for feel, words in WAYS.items() if feel != "direct"),
    )


def _heads() -> str:
    pale = el("path", d="M14 9h0M14 20v6", stroke_width=12, opacity=PALE)
    return pale + el("path", d="M40 9h0M40 20v6", stroke_width=12)


def _pressed() -> str:
    """A narrow body between two arrows."""
    body = el("path", d=f"M28 {_LEVEL - 6:g}v12", stroke_width=12)
    ends = ((18.0, -1.0), (38.0, 1.0))
    ways = [[(at + way * SQUEEZE, _LEVEL), (at, _LEVEL)] for at, way in ends]
    return body + arrows.strokes(ways, ())


def _eyed() -> str:
    heads = el("path", d=f"M14 {_LEVEL:g}h0M42 {_LEVEL:g}h0", stroke_width=2 * HEAD)
    return heads + eyes((42, _LEVEL))


def _way(feel: str) -> str:
    return arrows.stroke([(_ENDS[0], _LEVEL), (_ENDS[1] - 5, _LEVEL)], {feel})


def _mark(pieces: str, words: str) -> Figure:
    svg = el("svg", pieces, viewBox=f"0 0 {_WIDE:g} {_HIGH:g}", aria_hidden="true")
    return Figure(words, svg, (words,))
