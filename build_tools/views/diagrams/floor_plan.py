"""The floor from above in one section: every dancer of a class, where they go and where they end.

Dots and arrowheads, never figures with faces, in a hall to scale; drawn from the paths.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from build_tools.model.dance import Dance, Section, Standing
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.roles import rows_marked
from build_tools.movement.watchers import Watchers, watchers
from build_tools.page_words.words import N_, _, ngettext, of_schema
from build_tools.paths.anywhere import stands_anywhere
from build_tools.paths.for_pages import roles_in
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import LINED, Hall, Point, metres
from build_tools.paths.leaving import leaving_the_hall
from build_tools.paths.legs import CORNERS, Leg, Moment, point_of
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.whole import USUAL_AGE, USUAL_HALL, paths_of
from build_tools.sentences.staying_in_place import stays_on_one_spot
from build_tools.views.dance.on_the_floor import class_drawn, hall_drawn, middle_age
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.floor_hall import Frame, framed, hall
from build_tools.views.diagrams.floor_marks import SIZE, lines_on, marks, short, steps_on
from build_tools.views.diagrams.svg import SMALL, drawing, el, num, path, text, text_width
from build_tools.views.lesson.class_groups import joined_in_lessons
from build_tools.views.words.sections_called import title_of
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
_EDGE = 12
"""Units beyond a wall that are still drawn of who goes through it."""
_MOVED = 0.3
"""Metres by which a dancer must have moved to be drawn twice; less is a shift of the feet."""
_TURNED = 30.0
"""Degrees for the same."""
_JUST_BEFORE = 1e-6
"""Counts, or seconds."""
_SENTENCES: dict[Watchers, str] = {
    "at the front": N_("Watchers sit at the front, the top of the plan."),
    "all round": N_("Watchers sit all round."),
    "on two sides": N_("Watchers sit on two sides, the top and the bottom of the plan."),
    "at the short walls": N_("Watchers sit at both ends, the left and the right of the plan."),
    "at one short wall": N_("Watchers sit at one end, the left or the right of the plan."),
    "at the tables": N_("Watchers sit at the tables, round the cleared floor."),
    "front in the middle": N_("The front is the middle of the floor."),
}


def floor_plan(
    dance: Dance,
    section: Section,
    in_hall: Hall = USUAL_HALL,
    age: float = USUAL_AGE,
    joined: tuple[int, ...] = (),
    pupils: int = USUAL_CLASS,
) -> Figure:
    """The section where it first comes: pale where it starts, dark where it ends, and the ways.

    `age` and `joined` as in `paths_of`.
    """
    order = None if section.letter in dance.form else (section.letter,)
    paths = paths_of(dance, pupils, in_hall, age, order, joined)
    stretch = paths.first_of(section.letter)
    is_open = _ways_open(paths, stretch)
    twice = not is_open and _ends_elsewhere(paths, stretch)
    ends = paths.everybody(stretch.begins) if is_open else _at_its_end(paths, stretch)
    starts = paths.everybody(stretch.begins) if twice else ()
    frame = framed(in_hall, WIDTH, _BESIDE, _ABOVE)
    under = frame.bottom + (_LINE if "back" in dance.sides else _EDGE)
    legend = tuple(_legend(stretch, twice, under))
    title = title_of(section, _("where everybody stands and goes"))
    svg = drawing(
        title,
        WIDTH,
        under + _LINE * len(legend),
        hall(paths, frame),
        _window(frame, _ways(paths, stretch, frame), *_dancers(stretch, frame, starts, ends)),
        *legend,
        kind="floor",
    )
    return Figure(title, svg, tuple(_words(paths, stretch, twice, is_open=is_open)))


def unit_floor_plan(unit: Unit, section: Section) -> Figure:
    """A section of the unit's dance, by pupils of its age in the groups of its lessons."""
    joined = joined_in_lessons(unit)
    hall, pupils = hall_drawn(unit), class_drawn(unit)
    return floor_plan(unit.dance, section, hall, middle_age(unit), joined, pupils)


def _window(frame: Frame, *inside: str) -> str:
    """What is drawn of the floor and of a little around it; what lies farther out is cut off."""
    x, y = frame.left - _EDGE, frame.top - _EDGE
    wide, high = frame.right - x + _EDGE, frame.bottom - y + _EDGE
    view = f"{num(x)} {num(y)} {num(wide)} {num(high)}"
    return el("svg", *inside, x=x, y=y, width=wide, height=high, viewBox=view, aria_hidden="true")


def _ways_open(paths: Paths, stretch: StretchPaths) -> bool:
    """Whether nobody knows who goes where, and nobody is drawn going anywhere."""
    if stretch.counted or stretch.section is None:
        return False
    before, after = paths.everybody(stretch.begins), _at_its_end(paths, stretch)
    gone = any(metres(a[:2], b[:2]) > _MOVED for a, b in zip(before, after, strict=True))
    return not gone and not any(map(stays_on_one_spot, stretch.section.improvised_rules))


def _ends_elsewhere(paths: Paths, stretch: StretchPaths) -> bool:
    """Whether anybody ends in another place, or facing another way, than they start."""
    before, after = paths.everybody(stretch.begins), _at_its_end(paths, stretch)
    return any(
        metres(one[:2], other[:2]) > _MOVED
        or abs((one.facing - other.facing + 180) % 360 - 180) > _TURNED
        for one, other in zip(before, after, strict=True)
    )


def _ways(paths: Paths, stretch: StretchPaths, frame: Frame) -> str:
    """The way of every dancer, each piece once though it may be danced to and fro."""
    drawn: set[frozenset[Point]] = set()
    found: list[str] = []
    for legs in paths.legs:
        last = None
        for leg in legs:
            # who is put down anew as a section begins has no way: nobody knows how they came
            if not stretch.begins <= leg.start < stretch.ends or leg.end == leg.start:
                continue
            start, end = _at(frame, (leg.x0, leg.y0)), _at(frame, (leg.x1, leg.y1))
            if start == end or (frozenset((start, end)) in drawn and not leg.bend):
                continue
            drawn.add(frozenset((start, end)))
            moved = "" if start == last else f"M{short(start[0])} {short(start[1])}"
            found.append(moved + _line(leg, frame, start, end))
            last = end
    dash = "" if stretch.counted else "3 3"
    return path("".join(found), 1, "quiet", dash) if found else ""


def _line(leg: Leg, frame: Frame, start: Point, end: Point) -> str:
    if not leg.bend:
        return lines_on(start, end)
    if leg.zigzag:
        return lines_on(start, *(_at(frame, point_of(leg, part)) for part in CORNERS), end)
    half = point_of(leg, 0.5)
    over = _at(frame, (2 * half[0] - (leg.x0 + leg.x1) / 2, 2 * half[1] - (leg.y0 + leg.y1) / 2))
    return f"q{steps_on(start, over)} {steps_on(start, end)}"


def _at(frame: Frame, point: Point) -> Point:
    """Where a point of the floor is drawn, to a tenth."""
    x, y = frame.middle
    return (round(x + point[0] * frame.scale, 1), round(y + point[1] * frame.scale, 1))


def _dancers(
    stretch: StretchPaths, frame: Frame, starts: Sequence[Moment], ends: Sequence[Moment]
) -> Iterator[str]:
    """Everybody where they start, pale, if that is to be seen apart, and where they end."""
    roles = roles_in(stretch)
    if starts:
        yield from _of_roles(roles, starts, frame, pale=True)
    yield from _of_roles(roles, ends, frame, pale=False)


def _at_its_end(paths: Paths, stretch: StretchPaths) -> tuple[Moment, ...]:
    """Where all are as the section ends, before whoever goes on without a join stands anew."""
    return paths.everybody(max(stretch.begins, stretch.ends - _JUST_BEFORE))


def _of_roles(
    roles: Sequence[int], everybody: Sequence[Moment], frame: Frame, *, pale: bool
) -> Iterator[str]:
    x, y = frame.middle
    for role in sorted({max(role, 0) for role in roles}):
        places = [
            (x + one.x * frame.scale, y + one.y * frame.scale, one.facing)
            for one, its in zip(everybody, roles, strict=True)
            if max(its, 0) == role
        ]
        yield marks(role, places, pale=pale)


def _legend(stretch: StretchPaths, twice: bool, top: float) -> Iterator[str]:
    """What the marks mean, line by line; nothing where there is only one kind."""
    entries = [(n, name, False) for n, (name, _places) in enumerate(_roles(stretch))]
    if twice:
        entries += [(0, _("start"), True), (0, _("end"), False)]
    x = float(_BESIDE)
    row: list[str] = []
    for kind, words, pale in entries:
        wide = 2 * SIZE + 8 + text_width(words, SMALL) * 1.25
        if row and x + wide > WIDTH:
            yield "".join(row)
            x, row, top = float(_BESIDE), [], top + _LINE
        sample = marks(kind, [(x + SIZE, top + 12, 90.0)], pale=pale)
        row += [sample, text(words, x + 2 * SIZE + 6, top + 16, SMALL)]
        x += wide
    if row:
        yield "".join(row)
        top += _LINE
    if stands_anywhere(stretch) and stretch.section is not None:
        words = anywhere_in_words(groups_of(stretch.section).size)
        yield text(words, _BESIDE, top + 16, SMALL)


def _roles(stretch: StretchPaths) -> tuple[tuple[str, tuple[int, ...]], ...]:
    return rows_marked(stretch.section) if stretch.section is not None else ()


def _words(paths: Paths, stretch: StretchPaths, twice: bool, *, is_open: bool) -> Iterator[str]:
    """The same in words: how they stand, where watchers sit, for whom it is drawn, who is out."""
    section = stretch.section
    assert section is not None
    sides = paths.dance.sides
    yield _("At the start: {standing}. {place}.", **_standing(section.start, sides))
    yield from larger_groups_in_words(section.start)
    yield _("At the end: {standing}. {place}.", **_standing(section.end, sides))
    if named := sides_in_words(sides):
        yield named
    if stands_anywhere(stretch):
        yield anywhere_in_words(groups_of(section).size)
    if is_open:
        yield _("The ways are open and are not drawn; the marks show where they start.")
    elif not stretch.counted:
        yield _("One way it may look. Pupils find their own, and end where it takes them.")
    elif not twice:
        yield _("All end where they start, and are drawn once.")
    yield _(_SENTENCES[watchers(paths.dance)])
    if LINED[watchers(paths.dance)]:
        yield _("The dotted line is the edge of their place.")
    yield from sit_to_sound_in_words(paths.dance)
    yield _(
        "Drawn for {pupils} pupils on a floor of {wide} by {deep} metres.",
        pupils=paths.dancers,
        wide=f"{paths.hall.width:g}",
        deep=f"{paths.hall.depth:g}",
    )
    yield from _walls(paths, stretch)


def _walls(paths: Paths, stretch: StretchPaths) -> Iterator[str]:
    """Who would go through which wall, and where they start so that they do not."""
    out = [one for one in leaving_the_hall(paths) if paths.stretches[one.stretch] is stretch]
    for side in dict.fromkeys(one.side for one in out):
        over = [one.metres for one in out if one.side == side]
        further = math.ceil(max(over) * 2) / 2
        form = 1 if further == 1 else 2
        yield _(
            "{many} of {all} would go through the {side} wall. Let whoever stands nearest to it "
            "start {metres} further in, or let everyone take smaller steps.",
            many=len(over),
            all=paths.dancers,
            side=paths.dance.sides.get(side) or of_schema(side),
            metres=ngettext("{number} metre", "{number} metres", form, number=f"{further:g}"),
        )


def _standing(standing: Standing, sides: Mapping[str, str]) -> dict[str, str]:
    """How they stand and where, as places of a sentence."""
    said = standing_in_words(standing, sides)
    return {"standing": said, "place": standing.place.rstrip(".")}
