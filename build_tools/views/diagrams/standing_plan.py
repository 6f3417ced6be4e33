"""Where a class stands as a section begins: the hall from above, everybody with their number.

Small, for the step in which they first stand so. The places are those of the dance from above;
numbers are places in a group, and roles have thick or thin rims, and grey inside.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.movement.roles import rows_marked
from build_tools.page_words.speaking import kept_by_language
from build_tools.page_words.words import _
from build_tools.paths.anywhere import stands_anywhere
from build_tools.paths.for_pages import roles_in
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import Point, metres
from build_tools.paths.legs import Moment
from build_tools.paths.model import Paths, StretchPaths
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.floor_hall import Frame, framed, hall
from build_tools.views.diagrams.floor_marks import marks
from build_tools.views.diagrams.svg import SMALL, drawing, el, path, text, text_width
from build_tools.views.lesson.standing_in_steps import plan_title
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.sides_named import sides_in_words
from build_tools.views.words.standing_said import (
    anywhere_in_words,
    larger_groups_in_words,
    sit_to_sound_in_words,
    standing_in_words,
)

WIDTH = 360
_BESIDE, _ABOVE, _LINE = 20, 22, 21
"""Units left and right of the hall and above it, and from one line of words to the next."""
_SIZES = ((20.0, 16), (15.0, 13), (11.0, 9))
"""Across a dancer and of the number in it; the first that keeps neighbours apart is taken."""
_BASELINE = 0.36
"""How far under the middle of a number its baseline is, in its sizes."""
_KINDS = 4
"""How many roles can be told apart: a thick rim, a thin one, and both round grey."""
_THICK, _THIN = 0.13, 0.05
"""Rims, in parts of a dancer across."""
_NUMBERED = ("number ", "dancer ", "ones", "twos")
"""Roles whose number says who they are."""


@dataclass(frozen=True, slots=True)
class _Dancer:
    """One dancer: where they are in the drawing, which way they face, number and role."""

    x: float
    y: float
    facing: float
    number: int
    role: int


@kept_by_language(maxsize=64)
def standing_plan(unit: Unit, letter: str) -> Figure:
    """How a class of the usual size stands where the section of that letter first begins."""
    paths = in_a_hall(unit)
    stretch = paths.first_of(letter)
    section = unit.dance.sections[letter]
    frame = framed(paths.hall, WIDTH, _BESIDE, _ABOVE)
    under = frame.bottom + (_LINE if "back" in unit.dance.sides else 8)
    legend = tuple(_legend(section, under))
    rows = _rows_below(section, anywhere=stands_anywhere(stretch))
    if stands_anywhere(stretch):
        top = under + _LINE * (rows - 1) + 16
        legend += (text(anywhere_in_words(groups_of(section).size), _BESIDE, top, SMALL),)
    title = plan_title(section)
    placed = _placed(paths, stretch, frame)
    svg = drawing(
        title,
        WIDTH,
        under + _LINE * rows,
        hall(paths, frame),
        *_groups(stretch, placed),
        *_dancers(placed),
        *legend,
        kind="floor standing part-" + letter.replace("'", "-changed"),
    )
    return Figure(title, svg, tuple(_words(unit, paths, stretch)))


def plan_height(unit: Unit, letter: str) -> float:
    """How high the plan is where it is one unit wide; it need not be drawn for that."""
    paths, section = in_a_hall(unit), unit.dance.sections[letter]
    stretch = paths.first_of(letter)
    bottom = framed(paths.hall, WIDTH, _BESIDE, _ABOVE).bottom
    rows = _rows_below(section, anywhere=stands_anywhere(stretch))
    below = (_LINE if "back" in unit.dance.sides else 8) + _LINE * rows
    return (bottom + below) / WIDTH


def _rows_below(section: Section, *, anywhere: bool) -> int:
    """Rows of words below the floor: the roles, and that it is one way of many."""
    return bool(_told_roles(section)) + anywhere


def _placed(paths: Paths, stretch: StretchPaths, frame: Frame) -> list[_Dancer]:
    x, y = frame.middle
    roles, numbers = roles_in(stretch), _numbers(stretch)
    return [
        _Dancer(
            x + one.x * frame.scale,
            y + one.y * frame.scale,
            one.facing,
            numbers.get(n, 0),
            max(role, 0),
        )
        for n, (one, role) in enumerate(zip(_everybody(paths, stretch), roles, strict=True))
    ]


def _everybody(paths: Paths, stretch: StretchPaths) -> tuple[Moment, ...]:
    return paths.everybody(stretch.begins)


def _numbers(stretch: StretchPaths) -> dict[int, int]:
    """Each dancer's number in the group; none where everybody dances alone."""
    return {
        dancer: place
        for group in stretch.together
        if len(group) > 1
        for place, dancer in enumerate(group, start=1)
    }


def _groups(stretch: StretchPaths, placed: Sequence[_Dancer]) -> Iterator[str]:
    """A thin line round each group, so that its dancers are seen to belong together."""
    found = []
    for group in stretch.together:
        if len(group) > 1:
            first, *others = _round([(placed[n].x, placed[n].y) for n in group])
            found.append(f"M{_at(*first)}L{' '.join(_at(*one) for one in others)}z")
    if found:
        yield path("".join(found), 1, "rule")


def _round(places: Sequence[Point]) -> list[Point]:
    """The places in the order in which one meets them going round their middle."""
    x = sum(place[0] for place in places) / len(places)
    y = sum(place[1] for place in places) / len(places)
    return sorted(places, key=lambda p: (round(math.atan2(p[1] - y, p[0] - x), 6), p))


def _dancers(placed: Sequence[_Dancer]) -> Iterator[str]:
    """Everybody: arrowheads first, numbers last, so that no mark lies on a neighbour's number."""
    near = min(
        (
            metres((one.x, one.y), (other.x, other.y))
            for n, one in enumerate(placed)
            for other in placed[:n]
        ),
        default=WIDTH,
    )
    roles = sorted({one.role for one in placed})
    size = next((one for one in _SIZES if one[0] <= near + 0.5), None)
    if size is None or not any(one.number for one in placed):
        for role in roles:
            yield marks(role, [(d.x, d.y, d.facing) for d in placed if d.role == role])
        return
    across, letters = size
    yield el("path", d="".join(_tip(one, across / 2) for one in placed))
    for role in roles:
        dots = "".join(f"M{_at(one.x, one.y)}h0" for one in placed if one.role == role)
        yield from _ring(dots, role, across)
    yield el(
        "text",
        "".join(str(min(one.number, 9)) for one in placed),
        x=" ".join(str(round(one.x)) for one in placed),
        y=" ".join(str(round(one.y + letters * _BASELINE)) for one in placed),
        font_size=letters,
        font_weight=700,
        text_anchor="middle",
    )


def _at(x: float, y: float) -> str:
    """A place to a whole unit, which is a hand's breadth on the floor."""
    return f"{round(x)} {round(y)}"


def _ring(dots: str, kind: int, across: float) -> Iterator[str]:
    """A rim, thick or thin, round paper or grey: numbers in it are always ink."""
    inside = across * (1 - 2 * (_THIN if kind % 2 else _THICK))
    yield _dot(dots, across)
    yield _dot(dots, inside, class_="hollow")
    if kind % _KINDS > 1:
        yield _dot(dots, inside, opacity=0.2)


def _dot(dots: str, across: float, **more: str | float) -> str:
    return el("path", d=dots, fill="none", stroke="currentColor", stroke_width=across, **more)


def _tip(one: _Dancer, radius: float) -> str:
    """An arrowhead on the rim of the dot."""
    turn = math.radians(one.facing)
    dx, dy = math.sin(turn), -math.cos(turn)
    tip = (one.x + dx * (radius + 6), one.y + dy * (radius + 6))
    base, half = radius - 1, radius * 0.6
    left = (one.x + dx * base - dy * half, one.y + dy * base + dx * half)
    right = (one.x + dx * base + dy * half, one.y + dy * base - dx * half)
    return f"M{_at(*left)}L{_at(*tip)} {_at(*right)}"


def _told_roles(section: Section) -> tuple[tuple[int, str], ...]:
    """The roles that a number does not name, with the kind of their mark."""
    names = [name for name, _places in rows_marked(section)]
    own = section.groups.roles if section.groups else {}
    if all(name.startswith(_NUMBERED) or name not in own for name in names):
        return ()
    return tuple(enumerate(names))


def _legend(section: Section, top: float) -> Iterator[str]:
    x = float(_BESIDE)
    for kind, name in _told_roles(section):
        yield from _ring(f"M{_at(x + 7, top + 12)}h0", kind, 13)
        yield text(name, x + 19, top + 16, SMALL)
        x += 29 + text_width(name, SMALL) * 1.25


def _words(unit: Unit, paths: Paths, stretch: StretchPaths) -> Iterator[str]:
    """The same in words."""
    section = stretch.section
    assert section is not None
    at, sides = section.start, unit.dance.sides
    yield f"{capital(standing_in_words(at, sides))}. {sentence(at.place)}"
    yield from larger_groups_in_words(at)
    if named := sides_in_words(sides):
        yield named
    if stands_anywhere(stretch):
        yield anywhere_in_words(groups_of(section).size)
    yield from sit_to_sound_in_words(unit.dance)
    yield _(
        "Drawn for {pupils} pupils on a floor of {wide} by {deep} metres, the front at the top.",
        pupils=paths.dancers,
        wide=f"{paths.hall.width:g}",
        deep=f"{paths.hall.depth:g}",
    )
