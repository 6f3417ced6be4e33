"""The floor from above at the start and the end of a section: dots, never figures with faces."""

from __future__ import annotations

from build_tools.model.dance import Section, Standing
from build_tools.views.diagrams.figure import Figure
from build_tools.views.diagrams.formations import facing, places
from build_tools.views.diagrams.svg import SMALL, drawing, el, line, num, text
from build_tools.views.plain_words import standing_in_words

WIDTH = 360
_ROOM, _HIGH = 170, 118
_TOP = 40


def floor_plan(section: Section) -> Figure:
    """Two plans side by side, the front at the top where watchers sit."""
    title = f"Section {section.letter}: where they stand at the start and at the end"
    svg = drawing(
        title,
        WIDTH,
        _TOP + _HIGH + 4,
        _room("Start", section.start, 4),
        _room("End", section.end, WIDTH - _ROOM - 4),
        kind="floor",
    )
    words = (_sentence("At the start", section.start), _sentence("At the end", section.end))
    return Figure(title, svg, words)


def _sentence(when: str, standing: Standing) -> str:
    return f"{when}: {standing_in_words(standing)}. {standing.place.rstrip('.')}."


def _room(label: str, standing: Standing, x: float) -> str:
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
        text("front: watchers", middle_x, 33, SMALL, "middle", kind="quiet"),
        line(x, _TOP, x + _ROOM, _TOP, 4),
        walls,
        *dots,
    )


def _dot(x: float, y: float, angle: float) -> str:
    return el(
        "g",
        el("circle", r=3.6, fill="currentColor"),
        line(0, 0, 0, -8.5, 1.6),
        transform=f"translate({num(x)} {num(y)}) rotate({num(angle)})",
    )
