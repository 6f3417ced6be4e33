"""The hall has room for where dancers stand and for the way that all of them go.

Rows from wall to wall that all go eight steps forwards arrive among those who watch. It is the way
that counts, and not who happens to stand in front: what is told of is more than the floor has left
if the whole class is moved as far back as it can be.

Bad:
    start: {formation: rows, facing: front, within: line, columns: 2, apart: 2, groups_apart: 3, …}
    march: {actions: [{travel: 16, direction: forwards, steps: 16}], …}
Good:
    start: {formation: rows, facing: front, within: line, columns: 2, apart: 2, groups_apart: 3, …}
    march: {actions: [{travel: 2, direction: forwards, steps: 2}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.paths.leaving import Beyond, among_the_watchers, leaving_the_hall
from build_tools.paths.model import Paths, StretchPaths
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import class_in_a_hall, on_the_floor, passage_at, told

GRADE: Grade = "question"
SOURCE = (
    "lengths of steps for the age as in build_tools/body/ages.json; a strip of 1.5 metres for "
    "those who watch is common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_SLIGHT = 0.5
"""Metres that a class finds by standing a little closer; less than a step."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section whose way is longer than the floor that is left for it."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    done: set[str] = set()
    for number, stretch, section in told(paths):
        if {section.letter, section.returns} & done:
            continue
        for over, where in (
            (among_the_watchers(paths), "where those who watch sit"),
            (leaving_the_hall(paths), "beyond the wall"),
        ):
            here = [one for one in over if one.stretch == number]
            if not here:
                continue
            most = max(here, key=lambda one: one.metres)
            short = most.metres - _free_behind(paths, stretch, most.side)
            if short > _SLIGHT:
                done.add(section.letter)
                yield _finding(unit, paths, section, most, len(here), where, short)
                break


def _finding(
    unit: Unit,
    paths: Paths,
    section: Section,
    most: Beyond,
    many: int,
    where: str,
    short: float,
) -> Finding:
    return Finding(
        unit.file,
        ("sections", section.letter, "danced", passage_at(unit.dance, section, most.count)),
        f"section {section.letter} takes {many} of {class_in_a_hall(paths)} {where} (to the "
        f"{most.side}, {most.metres:.1f} metres over on count {most.count:.0f}), and moving all of "
        f"them the other way still leaves {short:.1f} metres too few",
        "let them go fewer steps, or not all one way, or come back within the section",
    )


_BEHIND = {"front": "back", "back": "front", "left": "right", "right": "left"}


def _free_behind(paths: Paths, stretch: StretchPaths, side: str) -> float:
    """Metres of floor that stay free on the other side of the class through the section."""
    area = paths.area
    first = paths.everybody(stretch.begins)
    points = [(place.x, place.y) for place in first] + [
        (leg.x1, leg.y1)
        for legs in paths.legs
        for leg in legs
        if stretch.begins <= leg.start < stretch.ends
    ]
    free = {
        "front": min(y for _, y in points) - area.front,
        "back": area.back - max(y for _, y in points),
        "left": min(x for x, _ in points) - area.left,
        "right": area.right - max(x for x, _ in points),
    }
    return max(0.0, free[_BEHIND[side]])
