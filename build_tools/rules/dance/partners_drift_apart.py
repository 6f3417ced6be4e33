"""Partners who face each other, and end so, are opposite one another still.

To go to your own right and let your partner go to theirs takes the two apart by twice the way,
since they face each other. A mirror takes both the same way. What each partner goes to a side is
added up over the section.

Bad:
    crab: {actions: [{travel: 2, direction: sideways, side: right}], …}
    start: {formation: pairs, facing: partner, …}
    end: {formation: pairs, facing: partner, …}
    danced: [{what: [crab, crab], as: question and answer}]
Good:
    crab: {actions: [{travel: 2, direction: sideways, side: right}], …}
    crab-mirrored: {of: crab, device: mirror}
    start: {formation: pairs, facing: partner, …}
    end: {formation: pairs, facing: partner, …}
    danced: [{what: [crab, crab-mirrored], as: question and answer}]
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.movement.way_travelled import way_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "Ontario Arts Curriculum, 2010, glossary: in a mirror, left and right are exchanged between "
    "partners who face each other"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that starts and ends face to face and drifts apart."""
    for letter, section in unit.dance.sections.items():
        ends = (section.start, section.end)
        if any(end.formation != "pairs" or end.facing != "partner" for end in ends):
            continue
        apart = _apart(unit.dance, section)
        if not apart:
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "danced"),
            f"section {letter} starts and ends facing a partner, but by its end partners are "
            f"{figures(abs(apart))} counts of travelling out of line: to one's right is to the "
            "other's left",
            "let one of the two dance a mirror, or let both come back the same way in the section",
        )


def _apart(dance: Dance, section: Section) -> Fraction:
    """How far partners are out of line at the end, in counts; 0 where a way is not known.

    Face to face, each partner's way to the right takes the two apart, whoever of them goes it.
    """
    apart = Fraction(0)
    for passage in section.danced:
        ways = [way_of(actions_of(dance, name)) for name in passage.what]
        across = [way.right for way in ways if way is not None]
        if len(across) < len(ways):
            return Fraction(0)
        if passage.fit in ("question and answer", "side by side"):
            if len(ways) != 2:
                return Fraction(0)
            apart += sum(across, Fraction(0)) * passage.times
        else:
            apart += 2 * sum(across, Fraction(0)) * passage.times
    return apart
