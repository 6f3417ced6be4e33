"""Partners who go towards one another have an arm's length left when they meet.

Six steps apart, three steps each: 6 - 3 - 3 leaves nothing, and two faces meet. How far apart they
start, less the steps that each takes, is what is left; partners who mean to pass or to change
places go along a curve, and are let be.

Bad:
    start: {formation: pairs, facing: partner, within: face to face,
      columns: 3, apart: 6, groups_apart: 1, …}
    meet: {actions: [{travel: 4, step: walk, steps: 3, towards: partner}], …}
Good:
    start: {formation: pairs, facing: partner, within: face to face,
      columns: 3, apart: 8, groups_apart: 1, …}
    meet: {actions: [{travel: 4, step: walk, steps: 3, towards: partner}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.nearness import nearer_than
from build_tools.paths.partners import Meeting, meetings
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import on_the_floor, passage_at, told

GRADE: Grade = "question"
SOURCE = (
    "an arm's length and a step for the age as in build_tools/body/ages.json; that partners leave "
    "an arm's length is common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section in which partners meet nearer than an arm's length."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    arm = paths.body.arm / paths.body.step
    close = {one.stretch for one in nearer_than(paths, paths.body.arm)}
    done: set[str] = set()
    for number, stretch, section in told(paths):
        if {section.letter, section.returns} & done or section.start.facing == "mixed":
            continue
        near = [
            one
            for one in (meetings(paths) if number in close else ())
            if one.stretch == number
            and one.left < arm <= one.apart
            and not _curved(paths, stretch, one)
        ]
        if not near:
            continue
        done.add(section.letter)
        one = min(near, key=lambda meeting: meeting.left)
        first, second = (f"{steps:.1f}".removesuffix(".0") for steps in one.taken)
        each = f"{first} each" if first == second else f"{first} and {second}"
        yield Finding(
            unit.file,
            ("sections", section.letter, "danced", passage_at(unit.dance, section, one.count)),
            f"in section {section.letter} partners start {one.apart:.1f} steps apart and have gone "
            f"{each} towards one another by count {one.count:.0f}, which leaves {one.left:.1f} "
            f"steps; an arm's length is {arm:.1f} of a step",
            "let them start farther apart, take fewer or smaller steps, or pass along a curve",
        )


def _curved(paths: Paths, stretch: StretchPaths, one: Meeting) -> bool:
    """Whether one of the two comes along a curve or a zigzag."""
    last = stretch.begins + one.count
    return any(
        leg.bend and stretch.begins <= leg.start < last
        for dancer in one.dancers
        for leg in paths.legs[dancer]
    )
