"""Dancers who do not mean to touch pass one another by an arm's length or more.

Two pairs share a pool and stand opposite ways: the crab of one runs down the lane in which the
crab of the other is hiding. On paper nobody sees it; on the floor they collide on the fourth count.
It is reckoned from where the unit says they stand, how far apart, and where each move takes them;
curved ways are let be, since they go round whoever is there.

Bad:
    groups: {size: 4, roles: {ones: [1, 4], twos: [2, 3]}}
    start: {formation: small groups, facing: partner, within: face to face, apart: 1 1/2,
      columns: 4, groups_apart: 1, …}
Good:
    groups: {size: 4, roles: {ones: [1, 4], twos: [2, 3]}}
    start: {formation: small groups, facing: partner, within: face to face, apart: 5,
      columns: 4, groups_apart: 1, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.paths.model import Paths, StretchPaths
from build_tools.paths.nearness import Near, nearer_than
from build_tools.paths.partners import meetings
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import (
    called,
    class_in_a_hall,
    on_the_floor,
    passage_at,
    told,
)

GRADE: Grade = "question"
SOURCE = (
    "an arm's length for the age as in build_tools/body/ages.json; that nobody passes nearer is "
    "common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_MANY = 1 / 3
"""The part of the class from which on it is the dance, and not who stands at the edge."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the nearest two of each section who come nearer than an arm."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    near = nearer_than(paths, paths.body.arm)
    done: set[str] = set()
    for number, stretch, section in told(paths):
        if {section.letter, section.returns} & done or section.start.facing == "mixed":
            continue
        found = [one for one in near if one.stretch == number and _counts(paths, one)]
        inside = [one for one in found if _group(stretch, one) is not None]
        dancers = {dancer for one in found for dancer in one.dancers}
        if not inside and len(dancers) < paths.dancers * _MANY:
            continue
        done.add(section.letter)
        yield _finding(unit, paths, stretch, section, (inside or found)[0], len(found))


def _finding(
    unit: Unit, paths: Paths, stretch: StretchPaths, section: Section, one: Near, pairs: int
) -> Finding:
    group = _group(stretch, one)
    home = {dancer: group for group in stretch.together for dancer in group}
    first, second = (called(section, home[dancer], dancer) for dancer in one.dancers)
    who = f"{first} and {second} of a group" if group else f"{first} and {second} of two groups"
    return Finding(
        unit.file,
        ("sections", section.letter, "danced", passage_at(unit.dance, section, one.count)),
        f"{who} come within {one.metres:.1f} metres of one another on count {one.count:.0f} of "
        f"section {section.letter}, and an arm's length is {paths.body.arm:.1f}; they start "
        f"{one.at_start:.1f} apart, and {pairs} pairs do so among {class_in_a_hall(paths)}",
        "let them start farther apart, stand the same way round, or go one after the other",
    )


def _counts(paths: Paths, one: Near) -> bool:
    """Whether two who start apart meet by straight ways, and not as partners who end so."""
    if one.at_start < paths.body.arm or (one.stretch, one.dancers) in _meet(paths):
        return False
    moment = paths.stretches[one.stretch].begins + one.count
    return not any(
        leg.bend and leg.start <= moment <= leg.end
        for dancer in one.dancers
        for leg in paths.legs[dancer]
    )


def _meet(paths: Paths) -> frozenset[tuple[int, tuple[int, int]]]:
    """Partners who end a move nearer than an arm: partners-meet-nose-to-nose tells of those."""
    arm = paths.body.arm / paths.body.step
    return frozenset((one.stretch, one.dancers) for one in meetings(paths) if one.left < arm)


def _group(stretch: StretchPaths, one: Near) -> tuple[int, ...] | None:
    """The group that both are in; None where they are in two, or dance alone."""
    return next((group for group in stretch.together if set(one.dancers) <= set(group)), None)
