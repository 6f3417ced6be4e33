"""The floor from above at the start and the end of a section: dots, never figures with faces."""

from __future__ import annotations

from build_tools.model.dance import Dance, Section, Standing
from build_tools.movement.watchers import Watchers, watchers
from build_tools.views.diagrams.figure import Figure
from build_tools.views.diagrams.formation_places import facing, places
from build_tools.views.diagrams.svg import SMALL, drawing, el, line, num, text
from build_tools.views.words.plain_words import standing_in_words

WIDTH = 360
_ROOM, _HIGH = 170, 118
_TOP = 40
_SIGNS: dict[Watchers, str] = {
    "at the front": "front: watchers",
    "all round": "watchers all round",
    "on two sides": "watchers on two sides",
    "front in the middle": "front: the middle",
}
_SENTENCES: dict[Watchers, str] = {
    "at the front": "Watchers sit at the front, the top of each plan.",
    "all round": "Watchers sit all round.",
    "on two sides": "Watchers sit on two sides, the top and the bottom of each plan.",
    "front in the middle": "The front is the middle of the floor.",
}


def floor_plan(dance: Dance, section: Section) -> Figure:
    """Two plans side by side, a thick line along each side where watchers sit."""
    sit = watchers(dance)
    title = f"Section {section.letter}: where they stand at the start and at the end"
    svg = drawing(
        title,
        WIDTH,
        _TOP + _HIGH + 4,
        _room("Start", section.start, 4, sit),
        _room("End", section.end, WIDTH - _ROOM - 4, sit),
        kind="floor",
    )
    words = (_sentence("At the start", section.start), _sentence("At the end", section.end))
    return Figure(title, svg, (*words, _SENTENCES[sit]))


def _sentence(when: str, standing: Standing) -> str:
    return f"{when}: {standing_in_words(standing)}. {standing.place.rstrip('.')}."


def _room(label: str, standing: Standing, x: float, sit: Watchers) -> str:
    middle_x, middle_y = x + _ROOM / 2, _TOP + _HIGH / 2
    dots = [
        _dot(
            middle_x + px * (_ROOM / 2 - 14),
            middle_y + py * (_HIGH / 2 - 14),
            facing(standing, n, (px, py)),
        )
        for n, (px, py) in enumerate(places(standing.formation))
    ]
    walls = el(
        "rect",
        x=x,
        y=_TOP,
        width=_ROOM,
        height=_HIGH,
        fill="none",
        stroke="currentColor",
        stroke_width=1,
    )
    return el(
        "g",
        text(label, x, 14, bold=True),
        text(_SIGNS[sit], middle_x, 33, SMALL, "middle", kind="quiet"),
        _sides(x, sit),
        walls,
        *dots,
    )


def _sides(x: float, sit: Watchers) -> str:
    right, bottom = x + _ROOM, _TOP + _HIGH
    top = line(x, _TOP, right, _TOP, 4)
    opposite = line(x, bottom, right, bottom, 4)
    if sit == "all round":
        across = line(x, _TOP, x, bottom, 4) + line(right, _TOP, right, bottom, 4)
        return el("g", top, opposite, across)
    if sit == "on two sides":
        return el("g", top, opposite)
    return top if sit == "at the front" else ""


def _dot(x: float, y: float, angle: float) -> str:
    return el(
        "g",
        el("circle", r=3.6, fill="currentColor"),
        line(0, 0, 0, -8.5, 1.6),
        transform=f"translate({num(x)} {num(y)}) rotate({num(angle)})",
    )
